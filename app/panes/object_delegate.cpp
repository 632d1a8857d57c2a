// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/object_delegate.h"

#include "panes/objects_model.h"
#include "panes/sketch.h"
#include "panes/theme_of.h"

#include <QApplication>
#include <QPainter>
#include <QSortFilterProxyModel>

#include <cmath>

namespace drawercast::app {

namespace {

constexpr int sketch_width = 30;
constexpr int sketch_height = 22;
constexpr int pad = 6;

/// The object behind a row, whether or not the list is searched.
const job::Object* object_of(const QModelIndex& index) {
    const QAbstractItemModel* model = index.model();
    QModelIndex source = index;
    if (const auto* proxy = qobject_cast<const QSortFilterProxyModel*>(model)) {
        source = proxy->mapToSource(index);
        model = proxy->sourceModel();
    }
    const auto* objects = qobject_cast<const ObjectsModel*>(model);
    return objects != nullptr ? objects->object(source) : nullptr;
}

QFont bold(QFont font) {
    font.setBold(true);
    return font;
}

void paint_name(QPainter& painter, const QRect& rect, const QModelIndex& index, const theme::Theme& theme) {
    const auto* object = object_of(index);
    if (object == nullptr) return;
    const QRectF sketch(rect.left() + pad, rect.center().y() - sketch_height / 2.0, sketch_width,
                        sketch_height);
    paint_sketch(painter, sketch, *object, index.data(ObjectsModel::placed_role).toInt() > 0, theme);
    const QRect words = rect.adjusted(sketch_width + 2 * pad + 2, 2, -2, -2);
    const QFontMetrics metrics = painter.fontMetrics();
    const int line = words.height() / 2;
    painter.setPen(theme.ink);
    painter.drawText(QRect(words.left(), words.top(), words.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(index.data().toString(), Qt::ElideRight, words.width()));
    painter.setPen(theme.ink2);
    painter.drawText(
        QRect(words.left(), words.top() + line, words.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
        metrics.elidedText(index.data(ObjectsModel::size_role).toString(), Qt::ElideRight, words.width()));
}

} // namespace

void ObjectDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    row.text.clear();
    const QStyle* style = row.widget != nullptr ? row.widget->style() : QApplication::style();
    style->drawPrimitive(QStyle::PE_PanelItemViewItem, &row, painter, row.widget);
    const auto& theme = theme_of(row.widget);
    painter->save();
    painter->setFont(row.font);
    if (index.column() == ObjectsModel::name_column) {
        paint_name(*painter, row.rect, index, theme);
    } else {
        const bool missing =
            index.column() == ObjectsModel::placed_column &&
            index.data(ObjectsModel::placed_role).toInt() < index.data(ObjectsModel::count_role).toInt();
        if (missing) painter->setFont(bold(row.font));
        painter->setPen(missing ? theme.ochre : theme.ink);
        painter->drawText(row.rect.adjusted(2, 0, -pad, 0), Qt::AlignRight | Qt::AlignVCenter,
                          index.data().toString());
    }
    painter->setPen(theme.rule);
    painter->drawLine(row.rect.bottomLeft(), row.rect.bottomRight());
    painter->restore();
}

QSize ObjectDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const int two_lines = 2 * option.fontMetrics.height() + 6;
    const int width = option.fontMetrics.horizontalAdvance(index.data().toString()) + 2 * pad;
    return {width, two_lines};
}

} // namespace drawercast::app
