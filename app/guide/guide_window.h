// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "guide/book.h"
#include "guide/markup.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QToolButton;
class QTreeWidget;

namespace drawercast::app::guide {

class GuideText;

/// The guide in a window of its own, beside the job: contents, the open chapter, back and forth, find. It
/// stays open while one works.
class GuideWindow final : public QWidget {
    Q_OBJECT
  public:
    /// `answers`: actions and lists; pictures are the guide's own. `language`: the program's, as in Book.
    explicit GuideWindow(const Answers& answers, const QString& language = QStringLiteral("en"));

    /// At a check code, figure or chapter; empty: where it was left.
    void open(const QString& id);
    void set_units(job::DisplayUnits units);
    void say(const QString& sentence);
    void find_next(const QString& words); ///< in all chapters, from where one reads, around once

    GuideText& text() { return *text_; }
    QTreeWidget& contents() { return *contents_; }
    QLineEdit& find_field() { return *find_; }
    QString found() const; ///< what is said of the search

  signals:
    void action_wanted(const QString& id);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void fill_contents();
    void lay_out();
    QToolButton* button(const char* icon, const QString& words, const QKeySequence& key);
    void show_place(const QUrl& shown); ///< of the text, in the contents

    Book book_;
    GuideText* text_;
    QTreeWidget* contents_;
    QLineEdit* find_;
    QLabel* said_;
    QToolButton* back_ = nullptr;
    QToolButton* forth_ = nullptr;
};

} // namespace drawercast::app::guide
