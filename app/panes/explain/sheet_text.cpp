// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/explain/sheet_text.h"

#include <QCoreApplication>

namespace drawercast::app::explain {

namespace {

class Sheet {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::explain::Sheet)

  public:
    explicit Sheet(const std::vector<FoamFigure>& figures) : figures_(figures) {}

    QString of(const FoamFigure& figure) const {
        const auto& why = figure.why;
        QString html;
        if (!why.rule.isEmpty()) html += paragraph(why.rule.toHtmlEscaped());
        for (const auto& line : why.lines) html += formula(line);
        html += headed(tr("Where from"), why.source) + headed(tr("Limits and use"), why.limits);
        return html + paragraph(link(QStringLiteral("guide:") + figure.id, tr("More in the guide")));
    }

  private:
    static QString paragraph(const QString& html) {
        return QStringLiteral("<p style='margin:0 0 8px 0'>%1</p>").arg(html);
    }

    static QString headed(const QString& head, const QString& words) {
        if (words.isEmpty()) return {};
        return paragraph(QStringLiteral("<b>%1</b><br>%2").arg(head.toHtmlEscaped(), words.toHtmlEscaped()));
    }

    QString formula(const Line& line) const {
        const auto shown = line.result.text().toHtmlEscaped();
        QString html = QStringLiteral("<b>%1</b><br>= %2")
                           .arg(line.name.toHtmlEscaped(), in_words(line).toHtmlEscaped());
        html += QStringLiteral("<br>= %1<br>= <b>%2</b>").arg(in_numbers(line).toHtmlEscaped(), shown);
        QString rows;
        for (const auto& term : line.terms) rows += row(term, line);
        return paragraph(html) +
               QStringLiteral("<table cellspacing='0' cellpadding='2' style='margin:0 0 10px 0'>%1</table>")
                   .arg(rows);
    }

    QString row(const Term& term, const Line& line) const {
        return QStringLiteral("<tr><td>%1&nbsp;</td><td align='right'>%2&nbsp;</td><td>%3</td></tr>")
            .arg(term.name.toHtmlEscaped(),
                 printed(term, line).toHtmlEscaped().replace(u' ', QStringLiteral("&nbsp;")), origin(term));
    }

    /// Where a term comes from, and the way to where it is changed.
    QString origin(const Term& term) const {
        if (term.input == Input::figure) {
            const auto* other = find_figure(figures_, term.note);
            return other == nullptr ? QString()
                                    : link(QStringLiteral("figure:") + other->id, tr("how it comes about"));
        }
        QStringList parts;
        if (!term.note.isEmpty()) parts << term.note.toHtmlEscaped();
        const QString action = action_of(term.input);
        if (!action.isEmpty())
            parts << link(QStringLiteral("action:") + action, place_of(term.input));
        else if (term.input != Input::constant)
            parts << tr("changed by %1").arg(place_of(term.input)).toHtmlEscaped();
        return parts.join(QStringLiteral(", "));
    }

    static QString link(const QString& to, const QString& words) {
        return QStringLiteral("<a href='%1'>%2</a>").arg(to, words.toHtmlEscaped());
    }

    const std::vector<FoamFigure>& figures_;
};

} // namespace

QString sheet_html(const FoamFigure& figure, const std::vector<FoamFigure>& figures) {
    return Sheet(figures).of(figure);
}

} // namespace drawercast::app::explain
