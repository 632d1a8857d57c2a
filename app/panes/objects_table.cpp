// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/objects_table.h"

#include "panes/object_delegate.h"
#include "panes/objects_model.h"
#include "panes/sketch.h"
#include "theme/theme_of.h"

#include <QDrag>
#include <QHeaderView>
#include <QMimeData>
#include <QPainter>

namespace drawercast::app {

ObjectsTable::ObjectsTable(QWidget* parent) : QTableView(parent) {
    setItemDelegate(new ObjectDelegate(this));
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setShowGrid(false);
    setDragEnabled(true);
    setDragDropMode(QAbstractItemView::DragOnly);
    setTabKeyNavigation(false);
    setFrameShape(QFrame::NoFrame);
    setContextMenuPolicy(Qt::CustomContextMenu);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("Objects"));
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionsClickable(false);
    connect(horizontalHeader(), &QHeaderView::sectionResized, this, [this](int column) {
        if (column == ObjectsModel::name_column)
            verticalHeader()->resizeSections(QHeaderView::ResizeToContents); // sizes may take another line
    });
}

void ObjectsTable::setModel(QAbstractItemModel* model) {
    QTableView::setModel(model);
    horizontalHeader()->setSectionResizeMode(ObjectsModel::name_column, QHeaderView::Stretch);
    horizontalHeader()->setSectionResizeMode(ObjectsModel::mass_column, QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(ObjectsModel::placed_column, QHeaderView::ResizeToContents);
}

void ObjectsTable::startDrag(Qt::DropActions actions) {
    const QModelIndex row = currentIndex();
    const auto* object = object_of(row);
    if (object == nullptr) return;
    constexpr QSize size(96, 72);
    QPixmap picture(size * devicePixelRatioF());
    picture.setDevicePixelRatio(devicePixelRatioF());
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    paint_sketch(painter, QRectF(QPointF(2, 2), QSizeF(size) - QSizeF(4, 4)), *object, true,
                 theme::theme_of(this));
    painter.end();
    auto* drag = new QDrag(this); // Qt deletes it
    drag->setMimeData(model()->mimeData({row}));
    drag->setPixmap(picture);
    drag->setHotSpot({size.width() / 2, size.height() / 2});
    drag->exec(actions, Qt::CopyAction);
}

} // namespace drawercast::app
