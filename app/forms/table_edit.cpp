// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/table_edit.h"

#include "forms/row_note.h"
#include "theme/icons.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

namespace drawercast::app {

TableEdit::TableEdit(std::vector<NumberColumn> columns, const Words& words, int least_rows, int most_rows,
                     QWidget* parent)
    : QWidget(parent), table_(new NumberTable(std::move(columns), this)), view_(new QTableView(this)),
      add_(new QToolButton(this)), take_(new QToolButton(this)), note_(new RowNote(this)),
      least_rows_(least_rows), most_rows_(most_rows) {
    view_->setModel(table_);
    view_->setAccessibleName(words.name);
    view_->setTabKeyNavigation(false); // Tab leaves the table, arrows move in it
    view_->setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::DoubleClicked |
                           QAbstractItemView::EditKeyPressed | QAbstractItemView::SelectedClicked);
    view_->setSelectionMode(QAbstractItemView::SingleSelection);
    view_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    view_->horizontalHeader()->setHighlightSections(false);
    view_->verticalHeader()->setDefaultSectionSize(26);
    view_->verticalHeader()->setHighlightSections(false);
    view_->installEventFilter(this);
    setFocusProxy(view_);
    for (auto [button, icon, text] : {std::tuple{add_, "object", words.add}, {take_, "delete", words.take}}) {
        button->setIcon(theme::icon(QString::fromLatin1(icon)));
        button->setToolTip(text);
        button->setAccessibleName(text);
        button->setAutoRaise(true);
        button->setFocusPolicy(Qt::StrongFocus);
    }
    auto* foot = new QHBoxLayout;
    foot->addWidget(add_);
    foot->addWidget(take_);
    foot->addWidget(note_, 1);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(2);
    all->addWidget(view_, 1);
    all->addLayout(foot);

    const bool fixed = least_rows_ == most_rows_; // then there is nothing to press
    add_->setVisible(!fixed), take_->setVisible(!fixed);
    connect(add_, &QToolButton::clicked, this, &TableEdit::add);
    connect(take_, &QToolButton::clicked, this, &TableEdit::take);
    connect(table_, &NumberTable::refused, note_, [this](const QString& why) { note_->set_problem(why); });
    connect(table_, &NumberTable::edited, this, [this] {
        refresh();
        emit edited();
    });
    connect(table_, &NumberTable::modelReset, this, &TableEdit::refresh);
    refresh();
}

void TableEdit::refresh() {
    add_->setEnabled(table_->rowCount() < most_rows_);
    take_->setEnabled(table_->rowCount() > least_rows_);
}

/// A corner between this one and the next starts as this one, so that the outline stays as it is.
void TableEdit::add() {
    if (table_->rowCount() >= most_rows_) return;
    const int current = view_->currentIndex().row();
    const int at = current < 0 ? table_->rowCount() : current + 1;
    NumberRow row = current < 0 ? table_->new_row() : table_->rows()[std::size_t(current)];
    row.origin = -1;
    table_->insert_row(at, std::move(row));
    view_->setCurrentIndex(table_->index(at, 0));
    view_->setFocus();
}

void TableEdit::take() {
    const int current = view_->currentIndex().row();
    if (current < 0 || table_->rowCount() <= least_rows_) return;
    table_->remove_row(current);
    view_->setFocus();
}

bool TableEdit::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Insert || key == Qt::Key_Delete) {
            key == Qt::Key_Insert ? add() : take();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace drawercast::app
