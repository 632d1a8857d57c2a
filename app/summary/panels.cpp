// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/panels.h"

#include "casting/band.h"
#include "plan/as_built.h"
#include "plan/pour_steps.h"
#include "plan/sentences.h"

#include "language/goods.h"
#include "language/in_words.h"
#include "language/say.h"
#include "language/spoken.h"
#include "print/title_block.h"
#include "sheets/table.h"
#include "sheets/text.h"
#include "summary/dose_mass.h"
#include "summary/gauge.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace drawercast::summary {

using sheets::Align;
using theme::Face;
using theme::Lettering;

namespace {

constexpr double pad = 10;

using sheets::fixed;

void write_head(sheets::Inks& inks, const Box& box, const QString& name, const QString& aside,
                const theme::Theme& theme) {
    const Lettering bold{Face::bold, 15}, plain{Face::regular, 10};
    sheets::write(inks, name, {box.min.x, box.min.y + 15}, bold, theme.ink);
    const double room = box.width() - sheets::written_width(name, bold) - 8;
    sheets::write(inks, sheets::elided(aside, plain, room), {box.max.x, box.min.y + 15}, plain, theme.ink2,
                  Align::right);
}

double write_line(sheets::Inks& inks, const Box& box, double y, const QString& words,
                  const theme::Theme& theme) {
    const Lettering plain{Face::regular, 10};
    for (const QString& line : sheets::broken(words, plain, box.width())) {
        sheets::write(inks, line, {box.min.x, y + 10}, plain, theme.ink2);
        y += 13.5;
    }
    return y;
}

/// Why there is no dose, in the words of the check that says so.
QString missing(const Summary& summary, const plan::DrawerPlan& drawer) {
    for (const auto& check : drawer.checks)
        if (check.severity == layout::Severity::mend)
            return language::tr("Not yet: ") + in_words(plan::title(check, summary.job));
    return language::tr("Not worked out");
}

void write_foam(sheets::Inks& inks, const Box& box, const Summary& summary, const plan::DrawerPlan& drawer) {
    const theme::Theme& theme = summary.theme;
    const job::Foam& foam = *summary.job.foam;
    const auto units = summary.job.display_units;
    if (!drawer.dose) {
        write_head(inks, box, language::tr("Foam"), language::goods_name(foam.name), theme);
        write_line(inks, box, box.min.y + 24, missing(summary, drawer), theme);
        return;
    }
    const casting::Dose dose =
        plan::dose_to_pour(summary.job, drawer).value_or(*drawer.dose); // one for all pages
    const bool built = plan::last_built(summary.job, drawer.id) != nullptr;
    write_head(inks, box, built ? language::tr("Foam, mold as built") : language::tr("Foam"),
               language::goods_name(foam.name) +
                   language::tr(", %1 % over").arg(fixed(dose.overpack * 100, 0)),
               theme);
    const double third = box.width() / 3, y = box.min.y + 24;
    write_key_figure(inks, {box.min.x, y}, language::tr("part A"), dose_mass(dose.a_g, units), theme);
    write_key_figure(inks, {box.min.x + third, y}, language::tr("part B"), dose_mass(dose.b_g, units), theme);
    write_key_figure(inks, {box.min.x + 2 * third, y}, language::tr("mixed"),
                     dose_mass(dose.a_g + dose.b_g, units), theme);
    double line = y + 38;
    const QString batches = dose.batches == 1 ? language::tr("1 batch")
                                              : language::tr("%1 batches side by side").arg(dose.batches);
    line = write_line(inks, box, line,
                      language::say_volume_ml(dose.mixed_ml, units) + language::tr(" mixed in ") + batches +
                          QStringLiteral(", ") + language::say_volume_ml(dose.poured_ml, units) +
                          language::tr(" poured"),
                      theme);
    if (dose.pigment_ml > 0)
        line = write_line(inks, box, line,
                          language::tr("pigment on top: ") + language::say_volume_ml(dose.pigment_ml, units),
                          theme);
    line = write_line(inks, box, line,
                      language::tr("insert ") + language::say_mass_g(dose.insert_g, units) +
                          QStringLiteral(", ") + language::say_density_kg_m3(dose.molded_kg_m3, units),
                      theme);
    write_line(inks, box, line,
               language::tr("rise ×%1, %2")
                   .arg(fixed(dose.expansion, 1),
                        dose.by_cup ? language::tr("by the test cup") : language::tr("by the label")),
               theme);
}

void write_band_row(sheets::Inks& inks, const Box& box, double y, const std::array<QString, 4>& cells,
                    bool head, const theme::Theme& theme) {
    const Lettering plain{Face::regular, head ? 9.5 : 10.5}, bold{Face::bold, 10.5};
    sheets::write(inks, cells[0], {box.min.x, y}, plain, theme.ink2);
    for (int i = 1; i < 4; ++i)
        sheets::write(inks, cells[static_cast<std::size_t>(i)],
                      {box.min.x + box.width() * (0.28 + 0.24 * i), y}, !head && i == 2 ? bold : plain,
                      head ? theme.ink3 : theme.ink, Align::right);
}

void write_pressure(sheets::Inks& inks, const Box& box, const Summary& summary,
                    const plan::DrawerPlan& drawer) {
    const theme::Theme& theme = summary.theme;
    const auto units = summary.job.display_units;
    write_head(inks, box, language::tr("Pressure"), language::tr("estimate"), theme);
    if (!drawer.band || !drawer.pressure) return;
    const casting::Band& band = *drawer.band;
    const casting::Pressure& pressure = *drawer.pressure;
    const double half = box.width() / 2, y = box.min.y + 24;
    write_key_figure(inks, {box.min.x, y}, language::tr("when closed"),
                     language::say_pressure_kpa(pressure.closed_kpa, units), theme);
    write_key_figure(inks, {box.min.x + half, y}, language::tr("to build for"),
                     language::say_pressure_kpa(pressure.build_for_kpa, units), theme);
    double row = y + 45;
    const std::array ends{band.low, band.expected, band.high};
    write_band_row(inks, box, row,
                   {QString(), language::tr("low"), language::tr("expected"), language::tr("high")}, true,
                   theme);
    std::array<QString, 4> rises{language::tr("rise")}, kpas{language::tr("pressure")};
    for (std::size_t i = 0; i < 3; ++i) {
        rises[i + 1] = QStringLiteral("×") + fixed(ends[i].expansion, 2);
        kpas[i + 1] = language::say_pressure_kpa(std::max(0.0, ends[i].closed_kpa), units);
    }
    write_band_row(inks, box, row += 13.5, rises, false, theme);
    write_band_row(inks, box, row += 13.5, kpas, false, theme);
    // the dose is what lies between the two: the nearer one decides
    const double low_spare = band.low.fill / casting::flow_index - 1,
                 high_spare = 1 - band.high.fill / casting::hard_fill;
    const auto gauge = [&](const QString& label, double fill, double limit, bool at_least, bool decides) {
        const bool breached = at_least ? fill < limit - 1e-9 : fill > limit + 1e-9;
        const QString limit_words =
            (at_least ? QStringLiteral("≥ ") : QStringLiteral("≤ ")) + fixed(limit, 2);
        write_gauge(inks, {box.min.x, row + 4}, box.width(),
                    {label, fixed(fill, 2), limit_words, fill / limit, at_least, breached, decides}, theme);
        row += gauge_px - 2;
    };
    gauge(language::tr("low end fills"), band.low.fill, casting::flow_index, true, low_spare <= high_spare);
    gauge(language::tr("high end fills"), band.high.fill, casting::hard_fill, false, high_spare < low_spare);
}

void write_time(sheets::Inks& inks, const Box& box, const Summary& summary, const plan::DrawerPlan& drawer) {
    const theme::Theme& theme = summary.theme;
    const auto units = summary.job.display_units;
    write_head(inks, box, language::tr("Time"),
               language::tr("from the start of mixing, at ") +
                   language::say_temperature_c(summary.job.shop->temperature_c, units),
               theme);
    if (!drawer.times || !drawer.dose) return;
    const casting::Times& times = *drawer.times;
    const double third = box.width() / 3, y = box.min.y + 24;
    const auto seconds = [](double s) { return fixed(s, 0) + QStringLiteral(" s"); };
    write_key_figure(inks, {box.min.x, y}, language::tr("pot life"), seconds(times.pot_life_s), theme);
    write_key_figure(inks, {box.min.x + third, y}, language::tr("plate on by"),
                     seconds(std::floor(plan::latest_plate_on_s(drawer).value_or(times.touch_s))), theme);
    write_key_figure(inks, {box.min.x + 2 * third, y}, language::tr("mold full"), seconds(times.contact_s),
                     theme);
    const double used = times.pot_life_s - times.pour_margin_s;
    double line = y + 40;
    write_gauge(inks, {box.min.x, line}, box.width(),
                {language::tr("mixed and poured"), seconds(used),
                 language::tr("of ") + seconds(times.pot_life_s), used / times.pot_life_s, false,
                 times.pour_margin_s < 0, false},
                theme);
    line += gauge_px + 2;
    line = write_line(inks, box, line,
                      language::tr("mix %1, pour %2 a batch")
                          .arg(seconds(summary.job.foam->mix_s), seconds(drawer.dose->pour_s)),
                      theme);
    line = write_line(inks, box, line,
                      language::tr("liquid stands ") + language::say_length(times.liquid_level_mm, units) +
                          language::tr(" deep"),
                      theme);
    write_line(inks, box, line,
               language::tr("open after ") + fixed(plan::open_after_min(summary.job, times), 0) +
                   language::tr(" min at the earliest"),
               theme);
}

} // namespace

void write_panels(sheets::Inks& inks, const Box& box, const Summary& summary,
                  const plan::DrawerPlan& drawer) {
    const double width = box.width() / 3;
    const std::array writers{write_foam, write_pressure, write_time};
    for (std::size_t i = 0; i < writers.size(); ++i) {
        const double x = box.min.x + width * static_cast<double>(i);
        writers[i](inks, {{x + pad, box.min.y + 6}, {x + width - pad, box.max.y}}, summary, drawer);
        if (i > 0)
            print::rule(inks, {x, box.min.y + 8}, {x, box.max.y - 8}, theme::LineRole::rule, summary.theme);
    }
}

} // namespace drawercast::summary
