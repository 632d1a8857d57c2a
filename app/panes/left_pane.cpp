// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/left_pane.h"

#include "document/document.h"
#include "document/selection.h"
#include "panes/drawer_delegate.h"
#include "panes/drawers_model.h"
#include "panes/head.h"
#include "panes/object_delegate.h"
#include "panes/objects_model.h"

#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

void set_up(QTableView& table) {
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setSelectionMode(QAbstractItemView::SingleSelection);
    table.setShowGrid(false);
    table.setDragEnabled(true);
    table.setDragDropMode(QAbstractItemView::DragOnly);
    table.setTabKeyNavigation(false);
    table.setFrameShape(QFrame::NoFrame);
    table.setContextMenuPolicy(Qt::CustomContextMenu);
    table.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table.verticalHeader()->hide();
    table.verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table.horizontalHeader()->setSectionResizeMode(ObjectsModel::name_column, QHeaderView::Stretch);
    table.horizontalHeader()->setSectionResizeMode(ObjectsModel::mass_column, QHeaderView::ResizeToContents);
    table.horizontalHeader()->setSectionResizeMode(ObjectsModel::placed_column,
                                                   QHeaderView::ResizeToContents);
    table.horizontalHeader()->setHighlightSections(false);
}

} // namespace

LeftPane::LeftPane(const Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), drawers_(new DrawersModel(document, this)),
      objects_(new ObjectsModel(document, this)), found_(new QSortFilterProxyModel(this)),
      drawers_head_(new Head("drawer", tr("Drawers"), this)),
      objects_head_(new Head("object", tr("Objects"), this)), drawers_list_(new QListView(this)),
      objects_table_(new QTableView(this)), find_(new QLineEdit(this)), nothing_(new QLabel(this)) {
    found_->setSourceModel(objects_);
    found_->setFilterCaseSensitivity(Qt::CaseInsensitive);
    found_->setFilterKeyColumn(ObjectsModel::name_column);
    found_->setDynamicSortFilter(false); // the job's own order

    drawers_list_->setModel(drawers_);
    drawers_list_->setItemDelegate(new DrawerDelegate(drawers_list_));
    drawers_list_->setFrameShape(QFrame::NoFrame);
    drawers_list_->setAccessibleName(tr("Drawers"));
    drawers_list_->setUniformItemSizes(true);
    objects_table_->setModel(found_);
    objects_table_->setItemDelegate(new ObjectDelegate(objects_table_));
    objects_table_->setAccessibleName(tr("Objects"));
    set_up(*objects_table_);
    find_->setPlaceholderText(tr("Find an object"));
    find_->setAccessibleName(tr("Find an object"));
    find_->setClearButtonEnabled(true);
    nothing_->setWordWrap(true);
    nothing_->setMargin(12);
    nothing_->hide();

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(drawers_head_);
    column->addWidget(drawers_list_);
    column->addWidget(objects_head_);
    auto* room = new QVBoxLayout;
    room->setContentsMargins(12, 2, 12, 6);
    room->addWidget(find_);
    column->addLayout(room);
    column->addWidget(nothing_);
    column->addWidget(objects_table_, 1);
    setMinimumWidth(200);
    connect_views();
    show_counts();
    show_choice();
}

void LeftPane::connect_views() {
    connect(find_, &QLineEdit::textChanged, this, [this](const QString& text) {
        found_->setFilterFixedString(text);
        show_counts();
    });
    connect(drawers_list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& now) {
                if (now.isValid())
                    selection_.choose_drawer(now.data(DrawersModel::id_role).toString().toStdString());
            });
    connect(objects_table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& now) {
                if (now.isValid())
                    selection_.choose_object(now.data(ObjectsModel::id_role).toString().toStdString());
            });
    connect(objects_table_, &QTableView::activated, this, [this](const QModelIndex& at) {
        emit object_activated(at.data(ObjectsModel::id_role).toString());
    });
    connect(objects_table_, &QTableView::customContextMenuRequested, this, [this](const QPoint& at) {
        if (objects_table_->indexAt(at).isValid())
            emit menu_wanted(objects_table_->viewport()->mapToGlobal(at));
    });
    connect(&selection_, &Selection::changed, this, &LeftPane::show_choice);
    connect(&document_, &Document::shown_changed, this, [this] {
        show_counts();
        show_choice();
    });
}

void LeftPane::set_drawer_actions(const QList<QAction*>& actions) { drawers_head_->set_actions(actions); }
void LeftPane::set_object_actions(const QList<QAction*>& actions) { objects_head_->set_actions(actions); }

void LeftPane::show_counts() {
    const int drawers = drawers_->rowCount();
    const int row = drawers_list_->sizeHintForRow(0);
    constexpr int most_rows = 5;
    drawers_list_->setFixedHeight(row > 0 ? row * qBound(1, drawers, most_rows) + 2 : 0);
    drawers_head_->set_remark(QString::number(drawers));
    objects_head_->set_remark(
        objects_->rowCount() == 0
            ? QString()
            : tr("%1 of %2 placed").arg(objects_->placed_in_all()).arg(objects_->count_in_all()));
    const bool searched = !find_->text().isEmpty();
    const bool nothing = found_->rowCount() == 0;
    nothing_->setVisible(nothing);
    nothing_->setText(searched ? tr("No object is named “%1”.").arg(find_->text())
                               : tr("No objects yet. Each thing that gets a pocket is an object here."));
}

void LeftPane::show_choice() {
    const int drawer = drawers_->row_of(selection_.drawer());
    if (drawer != drawers_list_->currentIndex().row())
        drawers_list_->setCurrentIndex(drawers_->index(drawer));
    const int object = objects_->row_of(selection_.object());
    const QModelIndex row = found_->mapFromSource(objects_->index(object, 0));
    if (object < 0)
        objects_table_->clearSelection();
    else if (row.isValid() && row.row() != objects_table_->currentIndex().row())
        objects_table_->setCurrentIndex(row);
}

} // namespace drawercast::app
