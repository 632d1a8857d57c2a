// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/check_delegate.h"

#include "panes/checks_model.h"
#include "sheets/badge.h"
#include "sheets/check_words.h"
#include "sheets/paint.h"
#include "theme/theme_of.h"

#include <QApplication>
#include <QPainter>

namespace drawercast::app {

namespace {

constexpr int badge_room = 32;
constexpr int pad = 8;

QString severity_word(layout::Severity severity, bool left) {
    if (left) return CheckDelegate::tr("left as is");
    return sheets::severity_words(severity);
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

struct Text {
    QString words;
    QFont font;
    QColor ink;
};

/// `left` gives way to `right`.
void paint_line(QPainter& painter, const QRect& line, const Text& left, const Text& right) {
    painter.setFont(right.font);
    painter.setPen(right.ink);
    painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, right.words);
    const int room = line.width() -
                     (right.words.isEmpty() ? 0 : painter.fontMetrics().horizontalAdvance(right.words) + pad);
    painter.setFont(left.font);
    painter.setPen(left.ink);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(left.words, Qt::ElideRight, room));
}

/// The name of the section below.
void paint_section(QPainter& painter, const QStyleOptionViewItem& row, const QString& words,
                   const theme::Theme& theme) {
    painter.save();
    painter.fillRect(row.rect, theme.pane);
    painter.setFont(row.font);
    painter.setPen(theme.ink2);
    painter.drawText(row.rect.adjusted(12, 0, -pad, 0), Qt::AlignLeft | Qt::AlignVCenter, words);
    painter.setPen(theme.rule);
    painter.drawLine(row.rect.bottomLeft(), row.rect.bottomRight());
    painter.restore();
}

} // namespace

void CheckDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    row.text.clear();
    const auto& theme = theme::theme_of(row.widget);
    if (index.data(ChecksModel::section_role).toBool())
        return paint_section(*painter, row, index.data().toString(), theme);
    const QStyle* style = row.widget != nullptr ? row.widget->style() : QApplication::style();
    style->drawPrimitive(QStyle::PE_PanelItemViewItem, &row, painter, row.widget);
    const auto severity = static_cast<layout::Severity>(index.data(ChecksModel::severity_role).toInt());
    const bool left = index.data(ChecksModel::left_role).toBool();

    painter->save();
    paint_badge(*painter, QPointF(row.rect.left() + badge_room / 2.0 + 2, row.rect.center().y() + 0.5), index,
                severity, left, theme);
    const QRect words = row.rect.adjusted(badge_room + 6, 4, -pad, -4);
    const QRect above(words.left(), words.top(), words.width(), words.height() / 2);
    QFont bold = row.font;
    bold.setBold(true);
    paint_line(*painter, above,
               {index.data(ChecksModel::title_role).toString(), left ? row.font : bold,
                left ? theme.ink2 : theme.ink},
               {severity_word(severity, left), row.font, severity_color(severity, left, theme)});
    paint_line(*painter, above.translated(0, above.height()),
               {index.data(ChecksModel::subjects_role).toString(), row.font, theme.ink2},
               {index.data(ChecksModel::zone_role).toString(), row.font, theme.ink2});
    painter->setPen(theme.rule);
    painter->drawLine(row.rect.bottomLeft(), row.rect.bottomRight());
    painter->restore();
}

QSize CheckDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    if (index.data(ChecksModel::section_role).toBool()) return {160, option.fontMetrics.height() + 8};
    return {160, 2 * option.fontMetrics.height() + 12};
}

} // namespace drawercast::app
