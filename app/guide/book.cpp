// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/book.h"

#include "base/demand.h"

#include <QFile>
#include <QRegularExpression>

#include <algorithm>
#include <array>

// Resources of a library are known once this has run; it must stand outside of any namespace.
static void load_guide() { Q_INIT_RESOURCE(guide); }

namespace drawercast::app::guide {

namespace {

/// As the job goes.
constexpr std::array chapter_names{"start", "measure",  "lay-out", "foam",     "mold", "air",   "plate",
                                   "cuts",  "pour-day", "as-cast", "printing", "keys", "safety"};

QString path_of(const QString& language, const QString& name) {
    return QStringLiteral(":/guide/%1/%2.md").arg(language, name);
}

} // namespace

Chapter chapter_of(const QString& name, const QString& markdown) {
    static const QRegularExpression heading(QStringLiteral("^(#{1,3}) +(.*?) *(?:\\{(#[^}]*)\\})?$"));
    Chapter chapter{name, {}};
    for (const QString& line : markdown.split(u'\n')) {
        const auto found = heading.match(line);
        if (!found.hasMatch()) {
            if (!chapter.sections.empty()) chapter.sections.back().lines << line;
            continue;
        }
        Section section{found.captured(2), {}, static_cast<int>(found.capturedLength(1)), {}};
        for (const QString& id : found.captured(3).split(u' ', Qt::SkipEmptyParts))
            section.ids << id.mid(1); // without its #
        if (chapter.sections.empty()) section.ids.prepend(name);
        chapter.sections.push_back(std::move(section));
    }
    DRAWERCAST_DEMAND(!chapter.sections.empty(), "a chapter begins with its heading");
    return chapter;
}

Book Book::in(const QString& language) {
    load_guide();
    const QString english = QStringLiteral("en");
    Book book;
    for (const char* latin : chapter_names) {
        const QString name = QString::fromLatin1(latin);
        const QString translated = path_of(language, name);
        QFile file(QFile::exists(translated) ? translated : path_of(english, name));
        const bool opened = file.open(QIODevice::ReadOnly);
        DRAWERCAST_DEMAND(opened, "each chapter is part of the program");
        book.chapters_.push_back(chapter_of(name, QString::fromUtf8(file.readAll())));
    }
    return book;
}

const Chapter* Book::chapter(const QString& name) const {
    const auto found = std::find_if(chapters_.begin(), chapters_.end(),
                                    [&](const Chapter& chapter) { return chapter.name == name; });
    return found == chapters_.end() ? nullptr : &*found;
}

Book::Place Book::find(const QString& id) const {
    for (const auto& chapter : chapters_)
        for (const auto& section : chapter.sections)
            if (section.ids.contains(id)) return {&chapter, &section};
    return {};
}

} // namespace drawercast::app::guide
