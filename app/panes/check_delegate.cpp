// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/check_delegate.h"

#include "panes/checks_model.h"
#include "panes/theme_of.h"
#include "sheets/badge.h"
#include "sheets/paint.h"

#include <QApplication>
#include <QPainter>

namespace drawercast::app {

namespace {

constexpr int badge_room = 32;
constexpr int pad = 8;

QString severity_word(layout::Severity severity, bool left) {
    if (left) return CheckDelegate::tr("left as is");
    switch (severity) {
    case layout::Severity::mend:
        return CheckDelegate::tr("mend");
    case layout::Severity::look:
        return CheckDelegate::tr("look");
    case layout::Severity::note:
        return CheckDelegate::tr("note");
    }
    return {};
}

QColor severity_color(layout::Severity severity, bool left, const theme::Theme& theme) {
    if (left) return theme.ink2;
    if (severity == layout::Severity::mend) return theme.red;
    return severity == layout::Severity::look ? theme.ochre : theme.ink2;
}

void paint_badge(QPainter& painter, QPointF center, const QModelIndex& index, layout::Severity severity,
                 bool left, const theme::Theme& theme) {
    sheets::CheckTag tag;
    tag.number = index.data(ChecksModel::number_role).toInt();
    tag.severity = severity;
    tag.left_as_is = left;
    sheets::Inks inks;
    sheets::write_badge(inks, {center.x(), center.y()}, 1.15, tag, {theme::Face::bold, 12}, theme);
    painter.setRenderHint(QPainter::Antialiasing);
    sheets::paint(inks, painter);
}

} // namespace

void CheckDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    row.text.clear();
    const QStyle* style = row.widget != nullptr ? row.widget->style() : QApplication::style();
    style->drawPrimitive(QStyle::PE_PanelItemViewItem, &row, painter, row.widget);
    const auto& theme = theme_of(row.widget);
    const auto severity = static_cast<layout::Severity>(index.data(ChecksModel::severity_role).toInt());
    const bool left = index.data(ChecksModel::left_role).toBool();

    painter->save();
    paint_badge(*painter, QPointF(row.rect.left() + badge_room / 2.0 + 2, row.rect.center().y() + 0.5), index,
                severity, left, theme);
    const QRect words = row.rect.adjusted(badge_room + 6, 4, -pad, -4);
    const int line = words.height() / 2;
    const QString word = severity_word(severity, left);
    QFont bold = row.font;
    bold.setBold(true);
    painter->setFont(row.font);
    const int word_width = painter->fontMetrics().horizontalAdvance(word) + pad;
    painter->setPen(severity_color(severity, left, theme));
    painter->drawText(QRect(words.left(), words.top() + line, words.width(), line),
                      Qt::AlignRight | Qt::AlignVCenter, word);
    painter->setPen(theme.ink2);
    const int room = words.width() - word_width;
    painter->drawText(QRect(words.left(), words.top() + line, room, line), Qt::AlignLeft | Qt::AlignVCenter,
                      painter->fontMetrics().elidedText(index.data(ChecksModel::subjects_role).toString(),
                                                        Qt::ElideRight, room));
    painter->setFont(left ? row.font : bold);
    painter->setPen(left ? theme.ink2 : theme.ink);
    painter->drawText(QRect(words.left(), words.top(), words.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
                      painter->fontMetrics().elidedText(index.data(ChecksModel::title_role).toString(),
                                                        Qt::ElideRight, words.width()));
    painter->setPen(theme.rule);
    painter->drawLine(row.rect.bottomLeft(), row.rect.bottomRight());
    painter->restore();
}

QSize CheckDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {160, 2 * option.fontMetrics.height() + 12};
}

} // namespace drawercast::app
