// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/filler_marks.h"

#include "language/spoken.h"
#include "sheets/length_words.h"

#include <string>

namespace drawercast::sheets {

namespace {

constexpr double screw_ring_mm = 3.5; ///< kept free of words around a screw

} // namespace

QString filler_name(const casting::Filler& filler) { return QStringLiteral("F%1").arg(filler.number); }

LabelMark filler_label(const casting::Filler& filler, const job::Job& job, theme::TextRole role,
                       std::optional<double> with_height_mm) {
    const std::string name = filler_name(filler).toStdString();
    LabelMark label;
    if (with_height_mm) {
        const std::string height = "h " + length_words(job, *with_height_mm);
        label.tries = {{TextLine{name + " " + language::tr("filler").toStdString(), role},
                        TextLine{height, theme::TextRole::depth}},
                       {TextLine{name + " " + language::tr("filler").toStdString() + "  " + height,
                                 theme::TextRole::name_small}},
                       {TextLine{name + "  " + height, theme::TextRole::name_small}}};
    } else
        label.tries = {{TextLine{name + " " + language::tr("filler").toStdString(), role}},
                       {TextLine{name, role}}};
    label.within = path_of(shape::Region{{shape::Patch{filler.outline, {}}}});
    for (const Vec at : filler.screws) label.uncovered.push_back(circle(at, screw_ring_mm));
    label.outside = !filler.screws.empty(); // a sliver in a corner is seen without a name
    return label;
}

} // namespace drawercast::sheets
