// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/figure_table.h"

#include <QLabel>

namespace drawercast::app {

QString FigureTable::cell(const QString& rich, const char* attributes, bool last) const {
    return QStringLiteral("<td%1 style='padding:%2px %3px %2px 0'>")
               .arg(QLatin1String(attributes))
               .arg(leading_px_)
               .arg(last ? 0 : gap_px_) +
           rich + QStringLiteral("</td>");
}

void FigureTable::row(const QStringList& cells) {
    body_ += QStringLiteral("<tr>");
    for (qsizetype i = 0; i < cells.size(); ++i)
        body_ += cell(cells[i], i == 0 ? "" : " align='right'", i + 1 == cells.size());
    body_ += QStringLiteral("</tr>");
    ++rows_;
}

void FigureTable::remark(const QString& name, const QString& words, int columns) {
    body_ += QStringLiteral("<tr>") + cell(name, "", false) +
             QStringLiteral("<td colspan='%1'>").arg(columns) + words + QStringLiteral("</td></tr>");
    ++rows_;
}

QString FigureTable::html() const { return QStringLiteral("<table>") + body_ + QStringLiteral("</table>"); }

QString bold(const QString& rich) { return QStringLiteral("<b>") + rich + QStringLiteral("</b>"); }

QLabel* figures_label() {
    auto* label = new QLabel;
    label->setTextFormat(Qt::RichText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

} // namespace drawercast::app
