// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/plate_gauges.h"

#include "base/units.h"
#include "mold/walls.h"

#include "language/goods.h"
#include "language/say.h"
#include "language/spoken.h"
#include "sheets/magnitude_ladder.h"
#include "summary/gauge.h"

#include <algorithm>
#include <cmath>

namespace drawercast::summary {

namespace {

/// "7.2 MPa", "1040 psi"
QString say_stress(double mpa, job::DisplayUnits units) {
    if (units == job::DisplayUnits::mm) return language::fixed(mpa, 2) + QStringLiteral(" MPa");
    constexpr double kpa_per_mpa = 1000;
    return language::fixed(mpa * kpa_per_mpa / drawercast::units::kpa_per_psi, 0) + QStringLiteral(" psi");
}

class Gauges {
  public:
    Gauges(const mold::PlateAnswer& answer, job::DisplayUnits units) : answer_(answer), units_(units) {}

    void add(const QString& label, mold::Limit limit, double value, double most, const QString& value_words,
             const QString& most_words) {
        const double share = most > 0 ? value / most : 2;
        all_.push_back({label, value_words, language::tr("of ") + most_words, share, false, share > 1 + 1e-9,
                        answer_.governs == limit});
    }
    void length(const QString& label, mold::Limit limit, double value, double most) {
        const QString unit = units_ == job::DisplayUnits::mm ? QStringLiteral(" mm") : QStringLiteral(" in");
        add(label, limit, value, most, language::figures(sheets::say_small(value, units_)) + unit,
            language::figures(sheets::say_small(most, units_)));
    }
    void stress(const QString& label, mold::Limit limit, double value, double most) {
        add(label, limit, value, most, say_stress(value, units_), say_stress(most, units_));
    }
    const std::vector<Gauge>& all() const { return all_; }

  private:
    const mold::PlateAnswer& answer_;
    job::DisplayUnits units_;
    std::vector<Gauge> all_;
};

std::vector<Gauge> gauges_of(const mold::PlateAnswer& answer, job::DisplayUnits units) {
    using mold::Limit;
    Gauges gauges(answer, units);
    gauges.length(language::tr("bow"), Limit::bow, answer.bow_mm, mold::bow_limit_mm);
    gauges.length(language::tr("gap under it"), Limit::gap, answer.gap_mm, answer.gap_limit_mm);
    const auto wall = mold::worst_wall(answer.walls);
    gauges.length(language::tr("bow of box walls"), Limit::wall_bow, wall.bow_mm, mold::wall_bow_limit_mm);
    gauges.stress(language::tr("stress of box walls"), Limit::wall_stress, wall.stress_mpa,
                  answer.design.box_board.rupture_mpa / mold::stress_factor);
    gauges.stress(language::tr("stress of the board"), Limit::stress, answer.stress_mpa,
                  answer.design.board.rupture_mpa / mold::stress_factor);
    if (answer.design.stiffener)
        gauges.stress(language::tr("stress of stiffeners"), Limit::stiffener_stress,
                      answer.stiffener_stress_mpa,
                      answer.design.stiffener->rupture_mpa / mold::stress_factor);
    const double allowed = answer.capacity_n[answer.worst] / mold::capacity_factor;
    gauges.add(language::tr("worst closure"), Limit::closure, answer.closure_n[answer.worst], allowed,
               language::say_force_n(answer.closure_n[answer.worst], units),
               language::say_force_n(allowed, units));
    return gauges.all();
}

/// "Base: 2 bearers 45 × 70 softwood; bows 0.9 mm, worst foot screw at 64 % of its limit."
QString base_words(const mold::PlateAnswer& base, job::DisplayUnits units) {
    const auto& design = base.design;
    const auto bearers = design.stiffener ? design.stiffeners.size() : 0;
    const QString under =
        bearers == 0 ? language::tr("Base without bearers")
        : bearers == 1
            ? language::tr("Base on one bearer %1").arg(language::goods_name(design.stiffener->name))
            : language::tr("Base on %1 bearers %2")
                  .arg(bearers)
                  .arg(language::goods_name(design.stiffener->name));
    return language::tr("%1: bows %2, at %3 % of its limit.")
        .arg(under, language::say_length(std::round(base.bow_mm * 10) / 10, units))
        .arg(qRound(100 * base.use));
}

} // namespace

std::vector<QString> plate_lines(const Summary& summary, const plan::DrawerPlan& plan) {
    const auto& answer = plan.plate->answer;
    const auto& design = answer.design;
    const auto units = summary.job.display_units;
    QString built =
        language::tr("Plate %1, box and base %2")
            .arg(language::goods_name(design.board.name), language::goods_name(design.box_board.name));
    if (design.stiffener)
        built +=
            (design.stiffeners.size() == 1
                 ? language::tr(", one stiffener %1%2")
                 : language::tr(", %1 stiffeners ").arg(design.stiffeners.size()) + QStringLiteral("%1%2"))
                .arg(language::goods_name(design.stiffener->name),
                     design.glued ? language::tr(", glued on") : language::tr(", loose"));
    const bool two_kinds = design.stiffener && !(design.end_closure == design.closure);
    const auto at_ends =
        two_kinds ? std::ranges::count_if(design.closures, &mold::ClosureAt::stiffener_end) : 0;
    built += language::tr("; %1 closures %2")
                 .arg(static_cast<qlonglong>(design.closures.size()) - at_ends)
                 .arg(language::goods_name(design.closure.name));
    if (two_kinds)
        built += language::tr(", %1 at stiffeners’ ends: %2")
                     .arg(at_ends)
                     .arg(language::goods_name(design.end_closure.name));
    std::vector<QString> lines{built + QStringLiteral(".")};
    if (plan.base) lines.push_back(base_words(plan.base->answer, units));
    lines.push_back(
        language::tr("Bow and gap at %1 (closed), stress and pull at %2 (to build for). Estimates.")
            .arg(language::say_pressure_kpa(plan.pressure->closed_kpa, units),
                 language::say_pressure_kpa(plan.pressure->build_for_kpa, units)));
    if (const auto& next = answer.runner_up)
        lines.push_back((next->stiffeners == 0 ? language::tr("Next best: %1, bare, %3 closures.")
                         : next->stiffeners == 1
                             ? language::tr("Next best: %1, one stiffener, %3 closures.")
                             : language::tr("Next best: %1, %2 stiffeners, %3 closures.")
                                   .replace(QStringLiteral("%2"), QString::number(next->stiffeners)))
                            .replace(QStringLiteral("%1"), language::goods_name(next->board))
                            .replace(QStringLiteral("%3"), QString::number(next->closures)));
    return lines;
}

double write_plate_gauges(sheets::Inks& inks, Vec top_left, double width, const Summary& summary,
                          const plan::DrawerPlan& plan) {
    constexpr int columns = 2;
    constexpr double gutter = 18;
    const double each = (width - gutter * (columns - 1)) / columns;
    const auto gauges = gauges_of(plan.plate->answer, summary.job.display_units);
    for (std::size_t i = 0; i < gauges.size(); ++i) {
        const double x = static_cast<double>(i % columns) * (each + gutter);
        const double y = static_cast<double>(i / columns) * gauge_px;
        write_gauge(inks, top_left + Vec{x, y}, each, gauges[i], summary.theme);
    }
    return static_cast<double>((gauges.size() + columns - 1) / columns) * gauge_px + 8;
}

} // namespace drawercast::summary
