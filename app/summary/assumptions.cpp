// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/assumptions.h"

#include "base/units.h"
#include "casting/cups.h"
#include "job/shown_name.h"
#include "layout/minimums.h"
#include "plan/pour_steps.h"

#include "language/goods.h"
#include "language/say.h"
#include "language/spoken.h"
#include "sheets/text.h"
#include "summary/dose_mass.h"

namespace drawercast::summary {

namespace {

using sheets::Align;
using Rows = std::vector<std::vector<sheets::Table::Cell>>;

using sheets::fixed;
using sheets::text;

QString firmness_name(job::Firmness firmness) {
    switch (firmness) {
    case job::Firmness::firm:
        return language::tr("firm");
    case job::Firmness::medium:
        return language::tr("medium");
    case job::Firmness::soft:
        return language::tr("soft");
    }
    return {};
}

/// For what is thinner than a thirty-second of an inch.
job::DisplayUnits fine_unit(job::DisplayUnits units) {
    return units == job::DisplayUnits::mm ? units : job::DisplayUnits::inch;
}

QString two_densities(double a_g_ml, double b_g_ml, job::DisplayUnits units) {
    if (units == job::DisplayUnits::mm)
        return fixed(a_g_ml, 2) + QStringLiteral(", ") + fixed(b_g_ml, 2) + QStringLiteral(" g/mL");
    constexpr double kg_m3 = 1000;
    return language::say_density_kg_m3(a_g_ml * kg_m3, units) + QStringLiteral(", ") +
           language::say_density_kg_m3(b_g_ml * kg_m3, units);
}

/// A difference of temperatures: 10 K are 18 °F.
QString warmer(double kelvin, job::DisplayUnits units) {
    if (units == job::DisplayUnits::mm) return fixed(kelvin, 0) + QStringLiteral(" K");
    return fixed(drawercast::units::fahrenheit(kelvin) - drawercast::units::fahrenheit(0), 0) +
           QStringLiteral(" °F");
}

class RowAdder {
  public:
    explicit RowAdder(Rows& rows) : rows_(rows) {}
    void operator()(const QString& what, const QString& value, const QString& from) {
        rows_.push_back({{what, false, {}}, {value, true, {}}, {from, false, {}}});
    }

  private:
    Rows& rows_;
};

void add_foam(RowAdder row, const Summary& summary, const plan::Plan& plan) {
    const job::Foam& foam = *summary.job.foam;
    const auto units = summary.job.display_units;
    const auto cups = casting::cups_in_use(foam);
    const bool cup = !cups.empty();
    const QString label = language::tr("foam's label, as entered"),
                  source = !cup               ? label
                           : cups.size() == 1 ? language::tr("test cup")
                                              : language::tr("mean of %1 test cups").arg(cups.size());
    double expansion = foam.expansion, uncertainty = cup ? 0.04 : 0.10;
    for (const auto& drawer : plan.drawers)
        if (drawer.dose && drawer.band) {
            expansion = drawer.dose->expansion;
            uncertainty = drawer.band->uncertainty;
        }
    row(language::tr("foam"),
        language::goods_name(foam.name) + QStringLiteral(", ") + firmness_name(foam.firmness),
        language::tr("set in the job"));
    row(language::tr("rise, free, at this altitude"), QStringLiteral("×") + fixed(expansion, 2), source);
    row(language::tr("rise may be off by"),
        QStringLiteral("± ") + fixed(uncertainty * 100, 0) + QStringLiteral(" %"),
        cup ? language::tr("our guess after a test cup")
            : language::tr("our guess by the label; a test cup narrows it"));
    row(language::tr("ratio A : B by volume"),
        fixed(foam.ratio_a, 1) + QStringLiteral(" : ") + fixed(foam.ratio_b, 1), label);
    row(language::tr("density of A, of B"), two_densities(foam.density_a_g_ml, foam.density_b_g_ml, units),
        label);
    row(language::tr("mix, pot life, rise"),
        fixed(foam.mix_s, 0) + QStringLiteral(", ") + fixed(foam.pot_life_s, 0) + QStringLiteral(", ") +
            fixed(foam.rise_s, 0) + QStringLiteral(" s"),
        cup ? language::tr("label; rise by the test cup")
            : label + language::tr(", at ") + language::say_temperature_c(foam.reference_c, units));
    row(language::tr("shrinkage"), fixed(foam.shrinkage * 100, 2) + QStringLiteral(" %"),
        label + language::tr("; the mold is that much larger"));
    row(language::tr("mold hotter than the parts by"), warmer(foam.mold_hotter_k, units),
        language::tr("our guess unless measured"));
}

void add_shop(RowAdder row, const Summary& summary) {
    const job::Job& job = summary.job;
    const auto units = job.display_units;
    const QString set = language::tr("set in the job");
    row(language::tr("shop"),
        language::say_temperature_c(job.shop->temperature_c, units) + QStringLiteral(", ") +
            language::say_altitude_m(job.shop->altitude_m, units),
        set);
    row(language::tr("clay fillet, sealer's film"),
        language::say_length(job.mold.fillet_mm, units) + QStringLiteral(", ") +
            language::say_length(job.mold.film_mm, fine_unit(units)),
        set);
    row(language::tr("pressure to build for, at least"),
        QStringLiteral("× ") + fixed(job.mold.pressure_factor, 2) + language::tr(" of closed"), set);
}

void add_minimums(RowAdder row, const Summary& summary) {
    const job::Job& job = summary.job;
    const layout::Minimums least = layout::minimums_of(job.minimums, job.foam->firmness);
    const QString usual = language::tr("common practice, %1 foam").arg(firmness_name(job.foam->firmness)),
                  set = language::tr("set in the job");
    row(language::tr("wall between pockets, least"),
        summary.said(least.wall_mm) + language::tr(", and depth / ") + fixed(least.wall_ratio, 1),
        job.minimums.wall_mm || job.minimums.wall_ratio ? set : usual);
    const auto two = [&](double one, double other, const QString& both) {
        return one == other ? summary.said(one) : both.arg(summary.said(one), summary.said(other));
    };
    row(language::tr("edge, least"),
        two(least.edge_mm, least.edge_deep_mm, language::tr("%1, %2 beside deep ones")),
        job.minimums.edge_mm ? set : usual);
    row(language::tr("floor, least"),
        two(least.floor_mm, least.floor_heavy_mm, language::tr("%1, %2 wide or heavy")),
        job.minimums.floor_mm ? set : usual);
}

} // namespace

sheets::Table assumption_table(const Summary& summary, const plan::Plan& plan) {
    sheets::Table table;
    table.columns = {{language::tr("figure"), Align::left, 1.0, 0},
                     {language::tr("value"), Align::left, 1.0, 0},
                     {language::tr("where from"), Align::left, 1.45, 0}};
    const RowAdder row(table.rows);
    add_foam(row, summary, plan);
    add_shop(row, summary);
    add_minimums(row, summary);
    return table;
}

sheets::Table foam_table(const Summary& summary, const plan::Plan& plan) {
    const auto units = summary.job.display_units;
    sheets::Table table;
    table.columns = {
        {language::tr("drawer"), Align::left, 2, 0},   {language::tr("part A"), Align::right, 1, 0},
        {language::tr("part B"), Align::right, 1, 0},  {language::tr("together"), Align::right, 1, 0},
        {language::tr("mixed"), Align::right, 1, 0},   {language::tr("poured"), Align::right, 1, 0},
        {language::tr("batches"), Align::right, 1, 0}, {language::tr("insert"), Align::right, 1, 0},
        {language::tr("closed"), Align::right, 1, 0},  {language::tr("build for"), Align::right, 1, 0}};
    for (std::size_t i = 0; i < plan.drawers.size() && i < summary.job.drawers.size(); ++i) {
        const auto& answer = plan.drawers[i];
        std::vector<sheets::Table::Cell> row{{text(job::shown_name(*summary.job.drawers[i])), true, {}}};
        const auto add = [&](const QString& words) { row.push_back({words, false, {}}); };
        if (const auto dose = plan::dose_to_pour(summary.job, answer)) {
            add(dose_mass(dose->a_g, units));
            add(dose_mass(dose->b_g, units));
            add(dose_mass(dose->a_g + dose->b_g, units));
            add(language::say_volume_ml(dose->mixed_ml, units));
            add(language::say_volume_ml(dose->poured_ml, units));
            add(QString::number(dose->batches));
            add(language::say_mass_g(dose->insert_g, units));
        } else
            add(language::tr("not yet"));
        if (answer.pressure) {
            add(language::say_pressure_kpa(answer.pressure->closed_kpa, units));
            add(language::say_pressure_kpa(answer.pressure->build_for_kpa, units));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

std::vector<QString> purchase_lines(const Summary& summary, const plan::Plan& plan) {
    const auto units = summary.job.display_units;
    if (summary.job.foam->kits.empty()) return {language::tr("The job names no kits for this foam.")};
    if (!plan.purchase) return {language::tr("Not yet: a drawer has no foam figures.")};
    const casting::Purchase& purchase = *plan.purchase;
    std::vector<QString> lines{language::tr("Needed with spare: ") +
                               language::say_volume_ml(purchase.needed_ml, units)};
    for (const auto& kit : purchase.from_shelf)
        lines.push_back(language::tr("From the shelf: %1 × ").arg(kit.count) +
                        language::goods_name(kit.name));
    for (const auto& kit : purchase.kits)
        lines.push_back(language::tr("To buy: %1 × ").arg(kit.count) + language::goods_name(kit.name));
    if (purchase.kits.empty()) lines.push_back(language::tr("Nothing to buy"));
    if (purchase.price > 0) {
        const QString currency =
            summary.job.currency.empty() ? QString() : QStringLiteral(" ") + text(summary.job.currency);
        lines.push_back(language::tr("Price: ") + fixed(purchase.price, 2) + currency);
    }
    lines.push_back(language::tr("Left over: ") + language::say_volume_ml(purchase.left_over_ml, units));
    return lines;
}

} // namespace drawercast::summary
