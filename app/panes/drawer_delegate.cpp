// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/drawer_delegate.h"

#include "panes/drawers_model.h"
#include "sheets/badge.h"
#include "sheets/paint.h"
#include "theme/icons.h"
#include "theme/theme_of.h"

#include <QApplication>
#include <QPainter>

namespace drawercast::app {

namespace {
constexpr int icon_px = 20;
constexpr int pad = 12;
} // namespace

void DrawerDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    row.text.clear();
    const QStyle* style = row.widget != nullptr ? row.widget->style() : QApplication::style();
    style->drawPrimitive(QStyle::PE_PanelItemViewItem, &row, painter, row.widget);
    const auto& theme = theme::theme_of(row.widget);
    painter->save();
    const QRect icon(row.rect.left() + pad, row.rect.center().y() - icon_px / 2, icon_px, icon_px);
    theme::icon(QStringLiteral("drawer")).paint(painter, icon);
    QRect words = row.rect.adjusted(pad + icon_px + 8, 3, -pad, -3);
    if (const int mends = index.data(DrawersModel::mends_role).toInt(); mends > 0) {
        sheets::CheckTag tag;
        tag.number = mends;
        tag.severity = layout::Severity::mend;
        sheets::Inks inks;
        sheets::write_badge(inks, {words.right() - 8.0, row.rect.center().y() + 0.5}, 1, tag,
                            {theme::Face::bold, 12}, theme);
        painter->setRenderHint(QPainter::Antialiasing);
        sheets::paint(inks, *painter);
        words.setRight(words.right() - 24);
    }
    const int line = words.height() / 2;
    QFont bold = row.font;
    bold.setBold(true);
    painter->setFont(bold);
    painter->setPen(theme.ink);
    painter->drawText(
        QRect(words.left(), words.top(), words.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
        painter->fontMetrics().elidedText(index.data().toString(), Qt::ElideRight, words.width()));
    painter->setFont(row.font);
    painter->setPen(theme.ink2);
    painter->drawText(QRect(words.left(), words.top() + line, words.width(), line),
                      Qt::AlignLeft | Qt::AlignVCenter,
                      painter->fontMetrics().elidedText(index.data(DrawersModel::size_role).toString(),
                                                        Qt::ElideRight, words.width()));
    painter->setPen(theme.rule);
    painter->drawLine(row.rect.bottomLeft(), row.rect.bottomRight());
    painter->restore();
}

QSize DrawerDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {160, 2 * option.fontMetrics.height() + 8};
}

} // namespace drawercast::app
