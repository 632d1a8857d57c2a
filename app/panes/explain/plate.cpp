// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/units.h"
#include "mold/walls.h"
#include "plan/say.h"

#include "language/goods.h"
#include "language/spoken.h"
#include "panes/explain/mold_figures.h"
#include "sheets/magnitude_ladder.h"
#include "sheets/part_words.h"

#include <algorithm>

namespace drawercast::app::explain {

namespace {

class Plate {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::explain::Plate)

  public:
    Plate(std::vector<MoldFigure>& figures, const Answer& answer)
        : figures_(figures, MoldPart::plate, "plate"), answer_(answer), plate_(answer.drawer.plate->answer),
          design_(plate_.design) {}

    void add() {
        add_design();
        add_lengths();
        add_stresses();
        add_pull();
        if (answer_.drawer.base) add_base(answer_.drawer.base->answer);
        if (plate_.runner_up) add_runner_up();
    }

    QString remark() const {
        if (plate_.governs == mold::Limit::screw_length) return tr("screws do not fit");
        return plate_.passes ? tr("at %1 % of its limit").arg(qRound(100 * plate_.use))
                             : tr("over its limit: %1 %").arg(qRound(100 * plate_.use));
    }

  private:
    static MoldFigure::Limit limit(double value, double most, bool decides) {
        const double share = most > 0 ? value / most : 2;
        return {share, share > 1 + 1e-9, decides};
    }
    MoldFigure::Limit limit(mold::Limit which, double value, double most) const {
        return limit(value, most, plate_.governs == which);
    }
    template <typename Count>
    QString pieces_of(Count count, const std::string& name) const {
        return sheets::pieces_of(static_cast<int>(count), language::goods_name(name));
    }
    QString of(const QString& value, const QString& most) const { return tr("%1 of %2").arg(value, most); }

    QString small(double mm) const {
        return language::figures(sheets::say_small(mm, answer_.units())) +
               (is_metric(answer_.units()) ? QStringLiteral(" mm") : QStringLiteral(" in"));
    }
    Result stress(double mpa) const {
        if (is_metric(answer_.units())) return fixed_result(mpa, 2, QStringLiteral("MPa"));
        return fixed_result(mpa * 1000 / drawercast::units::kpa_per_psi, 0, QStringLiteral("psi"));
    }

    void add_design() {
        const QString fixed = tr("Set by you; checked like any other.");
        const QString found =
            tr("The cheapest of the shop’s boards, stiffeners and closures that keeps every "
               "limit and can be closed in time.");
        figures_.put("board", tr("board"), language::goods_name(design_.board.name),
                     {answer_.job.mold.board ? fixed : found, {}, {}, {}});
        figures_.put(
            "box", tr("walls and base"), language::goods_name(design_.box_board.name),
            {answer_.job.mold.box_board
                 ? fixed
                 : tr("The cheapest board that is thick enough for a screw in its edge and bows little "
                      "enough as a wall."),
             {},
             {},
             {}});
        QString pieces = tr("none");
        if (design_.stiffener && !design_.stiffeners.empty()) {
            pieces = (design_.glued ? tr("%1, glued on") : tr("%1, loose"))
                         .arg(pieces_of(design_.stiffeners.size(), design_.stiffener->name));
        }
        figures_.put(
            "stiffeners", tr("stiffeners"), pieces,
            {answer_.job.mold.stiffeners ? fixed : found,
             {},
             {},
             tr("They stand off the places where air is left last, where that can be: vents belong there.")});
        const auto ends = std::count_if(design_.closures.begin(), design_.closures.end(),
                                        [](const mold::ClosureAt& at) { return at.stiffener_end; });
        const bool other = ends > 0 && !(design_.end_closure == design_.closure);
        const auto around = static_cast<std::ptrdiff_t>(design_.closures.size()) - (other ? ends : 0);
        figures_.put(
            "closures", tr("closures"), pieces_of(around, design_.closure.name),
            {answer_.job.mold.closure ? fixed : found,
             {},
             tr("Even pitch along each wall, the first 30 mm from a corner or more, 45 mm at a wall’s butted "
                "end: common practice."),
             tr("The numbers on the sheet are the order in which they are tightened: the middles of the "
                "sides, corners, halves, always opposite pairs. Loosen them in reverse.")});
        if (other)
            figures_.put(
                "end_closures", tr("at stiffeners’ ends"), pieces_of(ends, design_.end_closure.name),
                {tr("A closure of its own at each end of a stiffener takes the most: the worst pull falls by "
                    "a "
                    "good third."),
                 {},
                 {},
                 {}});
    }

    void add_lengths() {
        const QString model = tr("A plate that bends and shears (Mindlin), in finite elements; closures are "
                                 "springs, walls and fillers only push. Checked against printed tables and "
                                 "series.");
        figures_.put(
            "bow", tr("bow"), of(small(plate_.bow_mm), small(mold::bow_limit_mm)),
            {tr("The greatest lift over the opening at the pressure when closed: it is the back of the "
                "insert, which nobody sees."),
             {},
             model,
             tr("The limit is our guess.")},
            limit(mold::Limit::bow, plate_.bow_mm, mold::bow_limit_mm));
        figures_.put(
            "gap", tr("gap under it"), of(small(plate_.gap_mm), small(plate_.gap_limit_mm)),
            {tr("The greatest lift along the opening’s edge at the pressure when closed, with closures half "
                "as stiff: foam that gets in there is trimmed off as flash."),
             {},
             model,
             tr("The limit is our guess; a gasket strip allows more.")},
            limit(mold::Limit::gap, plate_.gap_mm, plate_.gap_limit_mm));
        const double wall = mold::worst_wall(plate_.walls).bow_mm;
        figures_.put(
            "walls", tr("bow of box walls"), of(small(wall), small(mold::wall_bow_limit_mm)),
            {tr("The longest box wall as a plate held at its four edges, at the pressure when closed."),
             {},
             tr("Plate tables for an even load."),
             tr("The limit is our guess.")},
            limit(mold::Limit::wall_bow, wall, mold::wall_bow_limit_mm));
    }

    void add_base(const mold::PlateAnswer& base) {
        const auto bearers = base.design.stiffener ? base.design.stiffeners.size() : 0;
        figures_.put(
            "bearers", tr("bearers under the base"),
            bearers == 0 ? tr("none") : pieces_of(bearers, base.design.stiffener->name),
            {tr("Foam pushes the base down as hard as the plate up, and the walls pull its rim up: a bench "
                "under it holds only the mold’s weight. Where it bends too far bare, pieces go under it "
                "as stiffeners go on the plate."),
             {},
             tr("The same sums as the plate’s, of the box’s board and the screws in the walls’ feet."),
             tr("Blocks that stand on it make it stiffer; they are not counted.")});
        figures_.put(
            "base_bow", tr("bow of the base"), of(small(base.bow_mm), small(mold::bow_limit_mm)),
            {tr("The greatest sag over the opening at the pressure when closed: it is the face of the "
                "insert."),
             {},
             {},
             tr("The limit is our guess.")},
            limit(base.bow_mm, mold::bow_limit_mm, false));
        const double allowed = base.capacity_n[base.worst] / mold::capacity_factor,
                     pull = base.closure_n[base.worst];
        figures_.put("foot", tr("worst foot screw"),
                     of(answer_.said_n(pull).text(), answer_.said_n(allowed).text()),
                     {tr("The greatest pull of a screw from below at the pressure to build for."),
                      {},
                      tr("As the worst closure."),
                      {}},
                     limit(pull, allowed, false));
    }

    void one_stress(const QString& id, const QString& label, mold::Limit which, double mpa, double rupture) {
        const double allowed = rupture / mold::stress_factor;
        const Result most = stress(allowed);
        const Line line{
            tr("allowed"),
            QStringLiteral("{rupture} / {factor}"),
            {{"rupture", tr("its modulus of rupture"),
              is_metric(answer_.units()) ? rupture : rupture * 1000 / drawercast::units::kpa_per_psi,
              most.unit, Input::shop, tr("of the board or piece in the shop’s list")},
             rule("factor", tr("margin"), mold::stress_factor, {}, tr("common practice"))},
            most};
        figures_.put(id, label, of(stress(mpa).text(), most.text()),
                     {tr("The greatest at the pressure to build for, off the heads of the closures."),
                      {line},
                      tr("6 × moment / thickness² in a board, moment / section modulus in a stiffener."),
                      {}},
                     limit(which, mpa, allowed));
    }

    void add_stresses() {
        one_stress("stress", tr("board’s stress"), mold::Limit::stress, plate_.stress_mpa,
                   design_.board.rupture_mpa);
        one_stress("wall_stress", tr("box walls’ stress"), mold::Limit::wall_stress,
                   mold::worst_wall(plate_.walls).stress_mpa, design_.box_board.rupture_mpa);
        if (design_.stiffener && !design_.stiffeners.empty())
            one_stress("stiffener_stress", tr("stiffeners’ stress"), mold::Limit::stiffener_stress,
                       plate_.stiffener_stress_mpa, design_.stiffener->rupture_mpa);
    }

    void add_pull() {
        const double capacity = plate_.capacity_n[plate_.worst], pull = plate_.closure_n[plate_.worst];
        const double allowed = capacity / mold::capacity_factor;
        const Result most = answer_.said_n(allowed);
        const Scale scale{most.unit, answer_.units() == job::DisplayUnits::mm
                                         ? (most.unit == QStringLiteral("kN") ? 1000.0 : 1.0)
                                         : drawercast::units::n_per_pound_force};
        const Line line{tr("allowed pull"),
                        QStringLiteral("{capacity} / {factor}"),
                        {{"capacity", tr("what one holds, on average"), scale.of(capacity), scale.unit,
                          Input::shop, tr("a screw’s by its diameter, depth and the box wall’s density")},
                         rule("factor", tr("margin"), mold::capacity_factor, {}, tr("common practice"))},
                        most};
        figures_.put(
            "pull", tr("worst closure"), of(answer_.said_n(pull).text(), most.text()),
            {tr("The greatest pull at the pressure to build for, with closures twice as stiff. The plate "
                "pries at its rim, so the worst pulls about twice what an even share would be."),
             {line},
             tr("Withdrawal from a box wall’s edge by the Wood Handbook’s formula, 31.8·√D·(L − D/3)^1.25·G² "
                "in N and mm; other closures as the shop’s list says."),
             tr("Holes in an edge strip after a few drives: shift them half a pitch then (our guess). "
                "Whether a head pulls through the board is not checked: there is no published figure for "
                "it.")},
            limit(mold::Limit::closure, pull, allowed));
    }

    void add_runner_up() {
        const auto& next = *plate_.runner_up;
        const QString pieces =
            next.stiffeners > 0 ? pieces_of(next.stiffeners, next.stiffener) : tr("no stiffener");
        figures_.put(
            "next", tr("next best"), tr("%1, %2").arg(language::goods_name(next.board), pieces),
            {tr("With %1 closures, at a higher price. Fix it under Mold, How the molds are built, to have "
                "it.")
                 .arg(next.closures),
             {},
             {},
             {}});
    }

    PartFigures figures_;
    const Answer& answer_;
    const mold::PlateAnswer& plate_;
    const mold::PlateDesign& design_;
};

} // namespace

void add_plate(std::vector<MoldFigure>& figures, const Answer& answer) { Plate(figures, answer).add(); }

QString plate_remark(const Answer& answer) {
    std::vector<MoldFigure> none;
    return Plate(none, answer).remark();
}

} // namespace drawercast::app::explain
