// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/small_screen.h"

#include <QDialog>
#include <QDialogButtonBox>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

constexpr double most_of_screen = 0.92; // its frame and the desktop's bars left out
constexpr int button_margin_px = 12;

void put_into_view(QDialog& dialog) {
    auto* contents = dialog.layout();
    auto* buttons = dialog.findChild<QDialogButtonBox*>({}, Qt::FindDirectChildrenOnly);
    if (buttons != nullptr && contents->indexOf(buttons) >= 0)
        contents->removeWidget(buttons);
    else
        buttons = nullptr;
    auto* body = new QWidget;
    body->setLayout(contents); // takes it off the dialog, widgets and all
    auto* view = new QScrollArea(&dialog);
    view->setFrameShape(QFrame::NoFrame);
    view->setWidgetResizable(true);
    view->setFocusPolicy(Qt::NoFocus);
    view->setWidget(body);
    auto* column = new QVBoxLayout(&dialog);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(view, 1);
    if (buttons == nullptr) return;
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(button_margin_px, 8, button_margin_px, button_margin_px);
    foot->addWidget(buttons);
    column->addLayout(foot);
}

} // namespace

void fit_screen(QDialog& dialog, QSize wanted) {
    const auto* screen = dialog.screen();
    fit_screen(dialog, wanted, screen != nullptr ? screen->availableSize() : QSize(1366, 768));
}

void fit_screen(QDialog& dialog, QSize wanted, QSize screen) {
    const QSize most = screen * most_of_screen;
    const QSize least = dialog.minimumSizeHint().expandedTo(wanted); // it may grow once it wears its letters
    if (least.width() > most.width() || least.height() > most.height()) put_into_view(dialog);
    dialog.resize(wanted.boundedTo(most));
}

} // namespace drawercast::app
