// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/welcome.h"

#include "document/preferences.h"
#include "theme/lettering.h"
#include "window/actions.h"

#include <QEvent>
#include <QFileInfo>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

QToolButton* wide_button(QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    button->setIconSize({40, 40});
    button->setMinimumWidth(320);
    return button;
}

} // namespace

Welcome::Welcome(const Actions& actions, const Preferences& preferences, QWidget* parent)
    : QWidget(parent), preferences_(preferences), name_(new QLabel(QStringLiteral("Drawercast"), this)),
      recent_(new QWidget(this)), recent_column_(new QVBoxLayout(recent_)) {
    setBackgroundRole(QPalette::Base);
    setAutoFillBackground(true);
    auto* words =
        new QLabel(tr("Plan cast foam inserts for drawers: measure the drawer and the objects, arrange them, "
                      "mend what the checks say, and print templates at true size."),
                   this);
    words->setWordWrap(true);
    words->setMaximumWidth(440);
    auto* column = new QVBoxLayout;
    column->addStretch(1);
    column->addWidget(name_);
    column->addWidget(words);
    column->addSpacing(16);
    for (const char* id :
         {"job.new", "job.open", "job.quick_quote", "job.demo", "job.demo_standard", "help.guide"}) {
        auto* button = wide_button(this);
        button->setDefaultAction(actions[id]);
        button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
        column->addWidget(button);
    }
    column->addSpacing(16);
    recent_column_->setContentsMargins(0, 0, 0, 0);
    column->addWidget(recent_);
    column->addStretch(2);
    auto* row = new QHBoxLayout(this);
    row->addStretch(1);
    row->addLayout(column);
    row->addStretch(1);
    connect(&preferences_, &Preferences::changed, this, &Welcome::show_recent);
    show_recent();
    set_fonts();
}

void Welcome::set_fonts() {
    const QFont large =
        theme::font_of(theme::Face::drafting, qRound(QFontInfo(font()).pixelSize() * 27.0 / 13.0));
    if (name_->font() != large) name_->setFont(large);
}

void Welcome::show_recent() {
    while (auto* item = recent_column_->takeAt(0)) {
        if (item->widget() != nullptr) item->widget()->deleteLater();
        delete item;
    }
    const auto paths = preferences_.recent();
    recent_->setVisible(!paths.isEmpty());
    if (paths.isEmpty()) return;
    recent_column_->addWidget(new QLabel(tr("Last used"), recent_));
    for (const auto& path : paths) {
        auto* button = new QToolButton(recent_);
        button->setText(QFileInfo(path).fileName());
        button->setToolTip(path);
        button->setAutoRaise(true);
        connect(button, &QToolButton::clicked, this, [this, path] { emit recent_wanted(path); });
        recent_column_->addWidget(button);
    }
}

void Welcome::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) set_fonts();
    QWidget::changeEvent(event);
}

} // namespace drawercast::app
