// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/guide_window.h"

#include "guide/guide_text.h"
#include "theme/icons.h"
#include "theme/splitter.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScreen>
#include <QShortcut>
#include <QTextCursor>
#include <QToolButton>
#include <QTreeWidget>
#include <QUrl>
#include <QVBoxLayout>

namespace drawercast::app::guide {

namespace {

constexpr QSize usual_size{980, 700};
constexpr int contents_px = 250;
constexpr int id_role = Qt::UserRole;

} // namespace

GuideWindow::GuideWindow(const Answers& answers, const QString& language)
    : book_(Book::in(language)), text_(new GuideText(book_, answers, this)), contents_(new QTreeWidget(this)),
      find_(new QLineEdit(this)), said_(new QLabel(this)) {
    setWindowTitle(tr("Guide – Drawercast"));
    setAttribute(Qt::WA_QuitOnClose, false); // the job's window alone ends the program
    setObjectName("guide");
    fill_contents();
    lay_out();
    connect(text_, &GuideText::action_wanted, this, &GuideWindow::action_wanted);
    connect(text_, &QTextBrowser::sourceChanged, this, &GuideWindow::show_place);
    connect(text_, &QTextBrowser::backwardAvailable, back_, &QToolButton::setEnabled);
    connect(text_, &QTextBrowser::forwardAvailable, forth_, &QToolButton::setEnabled);
    connect(contents_, &QTreeWidget::itemActivated, this,
            [this](QTreeWidgetItem* item) { text_->open(item->data(0, id_role).toString()); });
    connect(contents_, &QTreeWidget::itemClicked, this,
            [this](QTreeWidgetItem* item) { text_->open(item->data(0, id_role).toString()); });
    connect(find_, &QLineEdit::returnPressed, this, [this] { find_next(find_->text()); });
    connect(find_, &QLineEdit::textChanged, said_, &QLabel::clear);
    const auto key = [this](const QKeySequence& keys, auto act) {
        connect(new QShortcut(keys, this), &QShortcut::activated, this, act);
    };
    key(QKeySequence::Find, [this] {
        find_->setFocus();
        find_->selectAll();
    });
    key(QKeySequence(Qt::Key_F3), [this] { find_next(find_->text()); });
    resize(usual_size.boundedTo(screen()->availableSize() - QSize(0, 40)));
}

void GuideWindow::fill_contents() {
    contents_->setHeaderHidden(true);
    contents_->setFrameShape(QFrame::NoFrame);
    contents_->setAccessibleName(tr("Contents of the guide"));
    for (const auto& chapter : book_.chapters()) {
        auto* top = new QTreeWidgetItem(contents_, {chapter.title()});
        top->setData(0, id_role, chapter.name);
        for (std::size_t i = 1; i < chapter.sections.size(); ++i) {
            const auto& section = chapter.sections[i];
            if (section.ids.isEmpty()) continue;
            auto* item = new QTreeWidgetItem(top, {section.title});
            item->setData(0, id_role, section.ids.front());
            item->setToolTip(0, section.title); // where there is no room for all of it
        }
    }
}

QToolButton* GuideWindow::button(const char* icon, const QString& words, const QKeySequence& key) {
    auto* made = new QToolButton(this);
    made->setIcon(theme::icon(QString::fromLatin1(icon)));
    made->setAutoRaise(true);
    made->setEnabled(false);
    made->setAccessibleName(words);
    made->setToolTip(tr("%1 (%2)").arg(words, key.toString(QKeySequence::NativeText)));
    connect(new QShortcut(key, this), &QShortcut::activated, made, &QToolButton::click);
    return made;
}

void GuideWindow::lay_out() {
    back_ = button("back", tr("Back"), QKeySequence(Qt::ALT | Qt::Key_Left));
    forth_ = button("forward", tr("Forth"), QKeySequence(Qt::ALT | Qt::Key_Right));
    connect(back_, &QToolButton::clicked, text_, &QTextBrowser::backward);
    connect(forth_, &QToolButton::clicked, text_, &QTextBrowser::forward);
    find_->setPlaceholderText(tr("Find in the guide (Ctrl+F), next: Enter"));
    find_->setAccessibleName(tr("Find in the guide"));
    find_->setClearButtonEnabled(true);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(8, 6, 8, 6);
    row->addWidget(back_);
    row->addWidget(forth_);
    row->addSpacing(12);
    row->addWidget(find_, 2);
    row->addSpacing(12);
    row->addWidget(said_, 3);
    auto* halves = new theme::Splitter(Qt::Horizontal, this);
    halves->addWidget(contents_);
    halves->addWidget(text_);
    halves->setStretchFactor(1, 1);
    halves->setSizes({contents_px, usual_size.width() - contents_px});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(row);
    column->addWidget(halves, 1);
}

void GuideWindow::open(const QString& id) {
    const bool first = !text_->source().isValid();
    show();
    raise();
    activateWindow();
    text_->setFocus();
    if (!id.isEmpty())
        text_->open(id);
    else if (first)
        text_->open(book_.chapters().front().name);
}

void GuideWindow::set_units(job::DisplayUnits units) { text_->set_units(units); }

/// The text itself knows its new place a moment later.
void GuideWindow::show_place(const QUrl& shown) {
    const auto place = book_.find(shown.fragment());
    for (int i = 0; i < contents_->topLevelItemCount(); ++i) {
        auto* top = contents_->topLevelItem(i);
        const bool here = top->data(0, id_role) == shown.path();
        top->setExpanded(here);
        if (!here) continue;
        QTreeWidgetItem* at = top;
        for (int k = 0; k < top->childCount(); ++k)
            if (place.section != nullptr &&
                place.section->ids.contains(top->child(k)->data(0, id_role).toString()))
                at = top->child(k);
        contents_->setCurrentItem(at);
    }
}

void GuideWindow::find_next(const QString& words) {
    if (words.isEmpty()) return;
    const auto& chapters = book_.chapters();
    const auto count = chapters.size();
    const auto now = static_cast<std::size_t>(&text_->chapter() - chapters.data());
    if (text_->source().isValid() && text_->find(words)) return said_->clear();
    for (std::size_t step = 1; step <= count; ++step) { // the open one last: what stands above
        const auto& chapter = chapters[(now + step) % count];
        if (!text_->plain_text(chapter).contains(words, Qt::CaseInsensitive)) continue;
        text_->open(chapter.name);
        text_->moveCursor(QTextCursor::Start);
        text_->find(words);
        return said_->setText(step == count ? tr("From the head of the chapter again")
                                            : tr("In the chapter “%1”").arg(chapter.title()));
    }
    said_->setText(tr("“%1” is not in the guide").arg(words));
}

void GuideWindow::say(const QString& sentence) { said_->setText(sentence); }

QString GuideWindow::found() const { return said_->text(); }

void GuideWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        close();
        return;
    }
    QWidget::keyPressEvent(event);
}

} // namespace drawercast::app::guide
