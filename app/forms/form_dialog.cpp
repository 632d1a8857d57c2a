// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/form_dialog.h"

#include "forms/dialog_buttons.h"
#include "forms/part_tabs.h"
#include "theme/icons.h"
#include "theme/theme_of.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QShortcut>
#include <QStackedWidget>
#include <QTabWidget>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace drawercast::app {

namespace {

/// How much of a screen a form may take, its frame left out.
constexpr double most_of_screen = 0.94;

/// Else the buttons would come first, which were made before the fields.
void focus_first_of(QWidget& body) {
    for (auto* one = body.nextInFocusChain(); one != &body; one = one->nextInFocusChain())
        if (body.isAncestorOf(one) && (one->focusPolicy() & Qt::TabFocus) && one->isEnabledTo(&body) &&
            one->isVisibleTo(&body))
            return one->setFocus();
}

} // namespace

FormDialog::FormDialog(const QString& title, const QString& take_words, const FormContext& context,
                       QWidget* parent)
    : QDialog(parent), context_(context), view_(new QScrollArea(this)), to_mend_(new QToolButton(this)) {
    setWindowTitle(title);
    view_->setWidgetResizable(true);
    view_->setFrameShape(QFrame::NoFrame);
    view_->setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    view_->setFocusPolicy(Qt::NoFocus); // it follows its fields' focus

    to_mend_->setIcon(theme::icon(QStringLiteral("to-check")));
    to_mend_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    to_mend_->setAutoRaise(true);
    to_mend_->setAccessibleName(tr("What is still to do")); // its words go when nothing is
    to_mend_->setFocusPolicy(Qt::StrongFocus);
    to_mend_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    connect(to_mend_, &QToolButton::clicked, this, &FormDialog::go_to_problem);

    auto* buttons = dialog_buttons(*this, QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    take_ = buttons->button(QDialogButtonBox::Ok);
    take_->setText(take_words);
    take_->setDefault(true);

    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(12, 8, 12, 12);
    foot->addWidget(to_mend_, 1);
    foot->addWidget(buttons);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(0);
    all->addWidget(view_, 1);
    all->addLayout(foot);
}

void FormDialog::set_body(QWidget* body) {
    view_->setWidget(body);
    focus_first_of(*body);
    resize(0, 0);
    refresh();
    make_room();
}

/// As large as the body wants to be while the screen allows it; never smaller than the maker left it.
void FormDialog::make_room() {
    const QSize wanted = view_->widget()->sizeHint() + QSize(16, to_mend_->sizeHint().height() + 40);
    const auto* screen = this->screen();
    const QSize most = screen ? screen->availableSize() * most_of_screen : wanted;
    resize(size().expandedTo(wanted.boundedTo(most)));
    if (isVisible() && screen) keep_on_screen(screen->availableGeometry());
}

/// A dialog that grew downwards is pulled up until its buttons are on the screen, never its title off it.
void FormDialog::keep_on_screen(const QRect& screen) {
    const QRect frame = frameGeometry();
    const int up = std::max(0, frame.bottom() - screen.bottom()),
              aside = std::max(0, frame.right() - screen.right());
    const QPoint to(std::max(screen.left(), frame.left() - aside), std::max(screen.top(), frame.top() - up));
    if (to != frame.topLeft()) move(to);
}

void FormDialog::refresh() {
    problems_ = show_problems();
    take_->setEnabled(problems_.empty());
    to_mend_->setEnabled(!problems_.empty());
    QString words;
    if (!problems_.empty()) {
        const FieldProblem& first = problems_.front();
        words = tr("%1 still to do. ").arg(problems_.size());
        words += first.label.isEmpty() ? first.words : tr("%1: %2").arg(first.label, first.words);
    }
    to_mend_->setText(words);
    to_mend_->setToolTip(words);
    to_mend_->setVisible(!words.isEmpty());
    QTimer::singleShot(0, this, &FormDialog::make_room); // once what came or went is laid out
}

QToolButton* FormDialog::tool(const QString& icon, const QString& words, const QKeySequence& key,
                              std::function<void()> act) {
    auto* button = new QToolButton;
    if (icon.isEmpty())
        button->setText(words);
    else
        button->setIcon(theme::icon(icon));
    button->setAutoRaise(true);
    button->setAccessibleName(words);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setToolTip(key.isEmpty() ? words
                                     : tr("%1 (%2)").arg(words, key.toString(QKeySequence::NativeText)));
    connect(button, &QToolButton::clicked, this, std::move(act));
    if (!key.isEmpty()) connect(new QShortcut(key, this), &QShortcut::activated, button, &QToolButton::click);
    return button;
}

void FormDialog::go_to_problem() {
    if (problems_.empty() || !problems_.front().field) return;
    QWidget* field = problems_.front().field;
    bring_to_view(field);
    field->setFocus(Qt::TabFocusReason);
    view_->ensureWidgetVisible(field);
}

void bring_to_view(QWidget* widget) {
    for (QWidget* child = widget; child->parentWidget(); child = child->parentWidget()) {
        auto* stack = qobject_cast<QStackedWidget*>(child->parentWidget());
        if (!stack) continue;
        if (auto* parts = qobject_cast<PartTabs*>(stack->parentWidget()))
            parts->show_page(child);
        else if (auto* tabs = qobject_cast<QTabWidget*>(stack->parentWidget()))
            tabs->setCurrentWidget(child);
    }
}

} // namespace drawercast::app
