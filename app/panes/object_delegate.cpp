// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/object_delegate.h"

#include "panes/objects_model.h"
#include "panes/sketch.h"
#include "theme/theme_of.h"

#include <QApplication>
#include <QPainter>
#include <QTableView>

#include <cmath>

namespace drawercast::app {

namespace {

constexpr int sketch_width = 30;
constexpr int sketch_height = 22;
constexpr int pad = 6;

QFont bold(QFont font) {
    font.setBold(true);
    return font;
}

QRect words_rect(const QRect& cell) { return cell.adjusted(sketch_width + 2 * pad + 2, 2, -2, -2); }

/// Fractions of an inch take more room than there may be on one line.
QStringList size_lines(const QString& size, const QFontMetrics& metrics, int width) {
    const QString times = QStringLiteral(" × ");
    QStringList lines{QString()};
    for (const QString& part : size.split(times)) {
        QString& line = lines.back();
        const QString longer = line.isEmpty() ? part : line + times + part;
        if (line.isEmpty() || metrics.horizontalAdvance(longer) <= width)
            line = longer;
        else
            lines << times.mid(1) + part;
    }
    return lines;
}

void paint_name(QPainter& painter, const QRect& rect, const QModelIndex& index, const theme::Theme& theme) {
    const auto* object = object_of(index);
    if (object == nullptr) return;
    const QRectF sketch(rect.left() + pad, rect.center().y() - sketch_height / 2.0, sketch_width,
                        sketch_height);
    paint_sketch(painter, sketch, *object, index.data(ObjectsModel::placed_role).toInt() > 0, theme);
    const QRect words = words_rect(rect);
    const QFontMetrics metrics = painter.fontMetrics();
    const auto sizes = size_lines(index.data(ObjectsModel::size_role).toString(), metrics, words.width());
    const int line = words.height() / static_cast<int>(1 + sizes.size());
    painter.setPen(theme.ink);
    painter.drawText(QRect(words.left(), words.top(), words.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(index.data().toString(), Qt::ElideRight, words.width()));
    painter.setPen(theme.ink2);
    for (int i = 0; i < sizes.size(); ++i)
        painter.drawText(QRect(words.left(), words.top() + (i + 1) * line, words.width(), line),
                         Qt::AlignLeft | Qt::AlignVCenter,
                         metrics.elidedText(sizes[i], Qt::ElideRight, words.width()));
}

constexpr int tally_px = 8;
constexpr int tally_gap = 3;
constexpr int most_tallies = 5; // more are told in figures

bool tallied(const QModelIndex& index) {
    return index.data(ObjectsModel::count_role).toInt() <= most_tallies;
}

int tally_width(const QModelIndex& index) {
    return index.data(ObjectsModel::count_role).toInt() * (tally_px + tally_gap) - tally_gap;
}

/// A square for each that there is: filled where it is placed, open where it is not yet.
void paint_tally(QPainter& painter, const QRect& rect, const QModelIndex& index, const theme::Theme& theme) {
    const int placed = index.data(ObjectsModel::placed_role).toInt();
    const int count = index.data(ObjectsModel::count_role).toInt();
    QRectF square(rect.right() - tally_width(index) + 0.5, rect.center().y() - tally_px / 2 + 0.5,
                  tally_px - 1, tally_px - 1);
    painter.setPen(QPen(theme.ink, theme.line(1), Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    for (int i = 0; i < count; ++i) {
        painter.setBrush(i < placed ? QBrush(theme.ink) : QBrush(Qt::NoBrush));
        painter.drawRect(square);
        square.translate(tally_px + tally_gap, 0);
    }
}

} // namespace

void ObjectDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    row.text.clear();
    const QStyle* style = row.widget != nullptr ? row.widget->style() : QApplication::style();
    style->drawPrimitive(QStyle::PE_PanelItemViewItem, &row, painter, row.widget);
    const auto& theme = theme::theme_of(row.widget);
    painter->save();
    painter->setFont(row.font);
    if (index.column() == ObjectsModel::name_column) {
        paint_name(*painter, row.rect, index, theme);
    } else {
        const bool placed = index.column() == ObjectsModel::placed_column;
        const QRect words = row.rect.adjusted(2, 0, -pad, 0);
        if (placed && tallied(index)) {
            paint_tally(*painter, words, index, theme);
        } else {
            const bool missing = placed && index.data(ObjectsModel::placed_role).toInt() <
                                               index.data(ObjectsModel::count_role).toInt();
            if (missing) painter->setFont(bold(row.font));
            painter->setPen(theme.ink);
            painter->drawText(words, Qt::AlignRight | Qt::AlignVCenter, index.data().toString());
        }
    }
    painter->fillRect(QRect(row.rect.left(), row.rect.bottom(), row.rect.width(), 1), theme.rule);
    painter->restore();
}

QSize ObjectDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    int lines = 2;
    const auto* table = qobject_cast<const QTableView*>(option.widget);
    if (table != nullptr && index.column() == ObjectsModel::name_column) {
        const QRect cell(0, 0, table->columnWidth(index.column()), 1);
        const auto size = index.data(ObjectsModel::size_role).toString();
        lines = 1 + static_cast<int>(size_lines(size, option.fontMetrics, words_rect(cell).width()).size());
    }
    const bool tally = index.column() == ObjectsModel::placed_column && tallied(index);
    const int words =
        tally ? tally_width(index) : option.fontMetrics.horizontalAdvance(index.data().toString());
    const int width = words + 2 * pad;
    return {width, lines * option.fontMetrics.height() + 6};
}

} // namespace drawercast::app
