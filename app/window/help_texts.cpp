// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/help_texts.h"

#include "language/spoken.h"
#include "summary/cautions.h"
#include "window/actions.h"

#include <array>

namespace drawercast::app {

namespace {

using language::tr;

QString row(const QString& keys, const QString& what) {
    return QStringLiteral("<tr><td><b>%1</b>&nbsp;&nbsp;</td><td>%2</td></tr>")
        .arg(keys.toHtmlEscaped(), what.toHtmlEscaped());
}

QString plain(QString text) { return text.remove(QLatin1Char('&')).remove(QStringLiteral("…")); }

} // namespace

QString keys_html(const Actions& actions) {
    const std::array sheet{
        std::pair{QT_TRANSLATE_NOOP("Help", "Arrows"),
                  QT_TRANSLATE_NOOP("Help", "Move by 1 mm, with Shift by 0.1 mm")},
        std::pair{QT_TRANSLATE_NOOP("Help", "Tab"), QT_TRANSLATE_NOOP("Help", "Next pocket")},
        std::pair{QT_TRANSLATE_NOOP("Help", "Esc"),
                  QT_TRANSLATE_NOOP("Help", "Put back what is being moved")},
        std::pair{QT_TRANSLATE_NOOP("Help", "Ctrl, held"),
                  QT_TRANSLATE_NOOP("Help", "No snapping while moving")},
        std::pair{QT_TRANSLATE_NOOP("Help", "Menu key, or Shift+F10"),
                  QT_TRANSLATE_NOOP("Help", "The menu of what is chosen")},
        std::pair{QT_TRANSLATE_NOOP("Help", "Wheel"), QT_TRANSLATE_NOOP("Help", "Zoom about the pointer")},
        std::pair{QT_TRANSLATE_NOOP("Help", "Space, held"),
                  QT_TRANSLATE_NOOP("Help", "Drag the sheet about")},
    };
    QStringList rows;
    for (const auto& [keys, what] : sheet) rows << row(tr(keys), tr(what));
    for (const auto* action : actions.all())
        if (!action->shortcut().isEmpty())
            rows << row(action->shortcut().toString(QKeySequence::NativeText), plain(action->text()));
    const auto half = (rows.size() + 1) / 2;
    const QString left = rows.mid(0, half).join(QString()), right = rows.mid(half).join(QString());
    return QStringLiteral("<table><tr><td><table>%1</table></td><td>&nbsp;&nbsp;&nbsp;</td><td><table>%2</"
                          "table></td></tr></table>")
        .arg(left, right);
}

QString cautions_html() {
    QString html = QStringLiteral("<ul>");
    for (const auto& caution : summary::cautions())
        html += QStringLiteral("<li>%1</li>").arg(caution.toHtmlEscaped());
    return html + QStringLiteral("</ul>");
}

QString about_html() {
    return QStringLiteral("<h3>Drawercast %1</h3><p>%2</p><p>%3</p>")
        .arg(QStringLiteral(DRAWERCAST_VERSION),
             tr("Plans cast foam inserts for drawers: layout, checks, foam, templates."),
             tr("Free software under the GNU General Public License, version 3 or later. It comes with no "
                "warranty."));
}

} // namespace drawercast::app
