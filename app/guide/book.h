// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

/// The guide's text, kept as Markdown in resources/guide, one file a chapter. Of Markdown it knows headings,
/// paragraphs, lists, bold words, links, pictures, quotes and indented lines; see markup.h for what is ours.
namespace drawercast::app::guide {

/// A heading with what stands below it, up to the next one.
struct Section {
    QString title;
    QStringList ids; ///< what leads here: check codes ("wall-thin"), figures ("plate.bow"), names of its own
    int level = 1;   ///< 1: the chapter's own
    QStringList lines;
};

struct Chapter {
    QString name; ///< of its file: "air"
    std::vector<Section> sections;

    const QString& title() const { return sections.front().title; }
};

/// A chapter's file taken apart. A heading is "## Words {#id #id}".
Chapter chapter_of(const QString& name, const QString& markdown);

class Book {
  public:
    /// In that language ("de"), or in English where there is no such translation.
    static Book in(const QString& language);

    const std::vector<Chapter>& chapters() const { return chapters_; }
    const Chapter* chapter(const QString& name) const;
    /// Where a check code, a figure or a link leads; a chapter's name leads to its head. Null: nowhere.
    struct Place {
        const Chapter* chapter = nullptr;
        const Section* section = nullptr;
    };
    Place find(const QString& id) const;

  private:
    std::vector<Chapter> chapters_;
};

} // namespace drawercast::app::guide
