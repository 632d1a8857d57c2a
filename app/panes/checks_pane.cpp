// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/checks_pane.h"

#include "document/document.h"
#include "document/selection.h"
#include "panes/check_delegate.h"
#include "panes/checks_model.h"
#include "panes/head.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QToolButton>
#include <QVBoxLayout>

namespace drawercast::app {

ChecksPane::ChecksPane(const Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent), selection_(selection), model_(new ChecksModel(document, selection, this)),
      head_(new Head("check", tr("Checks"), this)), list_(new QListView(this)), nothing_(new QLabel(this)),
      advice_(new QLabel(this)), buttons_(new QWidget(this)) {
    list_->setModel(model_);
    list_->setItemDelegate(new CheckDelegate(list_));
    list_->setFrameShape(QFrame::NoFrame);
    list_->setAccessibleName(tr("Checks"));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    nothing_->setContentsMargins(12, 0, 12, 8);
    nothing_->setText(tr("Nothing to mend"));
    advice_->setWordWrap(true);
    advice_->setContentsMargins(12, 6, 12, 6);
    auto* row = new QHBoxLayout(buttons_);
    row->setContentsMargins(8, 0, 12, 6);
    row->addStretch(1);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(head_);
    column->addWidget(nothing_);
    column->addWidget(list_, 1);
    column->addWidget(advice_);
    column->addWidget(buttons_);
    column->addStretch(0); // takes the room only where there is no list
    connect(list_, &QListView::clicked, this, &ChecksPane::choose);
    connect(list_, &QListView::activated, this, &ChecksPane::choose);
    list_->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(list_, &QListView::customContextMenuRequested, this, [this](const QPoint& at) {
        const auto* check = model_->check(list_->indexAt(at));
        if (check == nullptr) return;
        selection_.choose_check(layout::Check(*check));
        emit menu_wanted(list_->viewport()->mapToGlobal(at));
    });
    connect(&document, &Document::shown_changed, this, &ChecksPane::show_choice);
    connect(&selection, &Selection::changed, this, &ChecksPane::show_choice);
    show_choice();
}

void ChecksPane::add_action(QAction* action) {
    auto* button = new QToolButton(buttons_);
    button->setDefaultAction(action);
    button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    button->setVisible(action->isEnabled());
    connect(action, &QAction::changed, button, [action, button] { button->setVisible(action->isEnabled()); });
    static_cast<QHBoxLayout*>(buttons_->layout())->insertWidget(buttons_->layout()->count() - 1, button);
}

void ChecksPane::choose(const QModelIndex& at) {
    const auto* check = model_->check(at);
    if (check == nullptr) return;
    const layout::Check chosen = *check; // the choice refreshes the model
    selection_.choose_check(chosen);
    emit check_chosen(chosen);
}

void ChecksPane::choose_next() {
    if (model_->rowCount() == 0) return;
    int row = selection_.check() ? model_->row_of(*selection_.check()) : -1;
    for (int step = 0; step < model_->rowCount(); ++step) {
        row = (row + 1) % model_->rowCount();
        if (model_->check(model_->index(row)) != nullptr) return choose(model_->index(row));
    }
}

void ChecksPane::show_choice() {
    QStringList counts;
    const auto add = [&](layout::Severity severity, const QString& words) {
        if (const int count = model_->count(severity); count > 0) counts << words.arg(count);
    };
    add(layout::Severity::mend, tr("%1 to mend"));
    add(layout::Severity::look, tr("%1 to look at"));
    add(layout::Severity::note, tr("%1 to note"));
    head_->set_remark(counts.join(QStringLiteral(", ")));
    const bool none = model_->rowCount() == 0;
    nothing_->setVisible(model_->count(layout::Severity::mend) == 0);
    list_->setVisible(!none);
    const int row = selection_.check() ? model_->row_of(*selection_.check()) : -1;
    if (row != list_->currentIndex().row()) {
        if (row < 0) {
            list_->selectionModel()->clear();
        } else {
            list_->setCurrentIndex(model_->index(row));
        }
    }
    advice_->setVisible(row >= 0);
    if (row >= 0) advice_->setText(model_->index(row).data(ChecksModel::advice_role).toString());
}

} // namespace drawercast::app
