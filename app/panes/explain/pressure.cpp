// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/pressure.h"

#include "casting/gas.h"

#include "panes/explain/figures.h"

namespace drawercast::app::explain {

namespace {

class Pressure {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::explain::Pressure)

  public:
    explicit Pressure(const Answer& answer)
        : answer_(answer), pressure_(*answer.drawer.pressure), kpa_(pressure_scale(answer.said_kpa(1).unit)),
          volume_(volume_scale(answer.said_ml(answer.dose().poured_ml).unit)) {}

    FoamFigure closed() {
        const Result result = answer_.said_kpa(pressure_.closed_kpa);
        const Line line = gas(tr("pressure when closed"), answer_.rise(), answer_.holds(volume_), 0, result);
        return {
            "closed",
            tr("pressure when closed"),
            result.text(),
            {{},
             {line, lift()},
             tr("Ideal gas law; air pressure by ISO 2533. How much hotter the foam in a mold gets: our "
                "guess."),
             tr("An estimate: all gas shut in bubbles, nothing vented or dissolved, the liquid as it was.")}};
    }

    FoamFigure build_for() {
        const Result result = answer_.said_kpa(pressure_.build_for_kpa);
        const double hottest = hottest_kpa();
        const Line line{
            tr("pressure to build for"),
            QStringLiteral("max({factor} × {closed}, {hottest})"),
            {{"factor", tr("factor"), answer_.job.mold.pressure_factor, {}, Input::mold, tr("our guess")},
             {"closed", tr("pressure when closed"), kpa_.of(pressure_.closed_kpa), kpa_.unit, Input::figure,
              "closed"},
             {"hottest", tr("high end, hotter still"), kpa_.of(hottest), kpa_.unit, Input::figure, "band"}},
            result};
        const auto& high = answer_.drawer.band->high;
        const Line worst =
            gas(tr("high end, hotter still"),
                {"rise", tr("rise at the high end"), high.expansion, {}, Input::figure, "band"},
                {"holds", tr("shallower mold"), volume_.of(high.net_mm3 / 1000), volume_.unit, Input::figure,
                 "band"},
                casting::further_hotter_k, answer_.said_kpa(hottest));
        return {"build_for",
                tr("pressure to build for"),
                result.text(),
                {{},
                 {line, worst},
                 tr("Ideal gas law; both allowances, the factor and 10 K more, are our guess."),
                 tr("Not a bound: real foam may be hotter yet. A test cup lowers it. Screws and boards are "
                    "judged "
                    "by it, bow and gap by the pressure when closed.")}};
    }

  private:
    Line gas(const QString& name, Term rise, Term holds, double further_k, const Result& result) const {
        const Scale absolute = absolute_scale(answer_.units()), warmer = warmer_scale(answer_.units());
        rise.key = "rise";
        holds.key = "holds";
        const QString gas = answer_.has_air() ? QStringLiteral("(({rise} − 1) × {poured} + {shut_in})")
                                              : QStringLiteral("({rise} − 1) × {poured}");
        const double warmer_k = casting::warmer_k(answer_.profile);
        const QString heat = warmer_k > 0 ? QStringLiteral("({measured} + {warmer} + {hotter})")
                                          : QStringLiteral("({measured} + {hotter})");
        Line line{
            name,
            QStringLiteral("{air} × (%1 / ({holds} − {poured}) × %2 / {measured} − 1)").arg(gas, heat),
            {answer_.ambient(kpa_),
             rise,
             answer_.poured(volume_),
             holds,
             {"measured", tr("temperature of the rise"), absolute.of(answer_.profile.measured_k),
              absolute.unit, Input::foam, tr("absolute; at which the rise was read")},
             {"hotter", tr("hotter in the mold"), warmer.of(answer_.foam().mold_hotter_k + further_k),
              warmer.unit, Input::foam, further_k > 0 ? tr("and 10 K more, our guess") : tr("our guess")}},
            result};
        if (answer_.has_air()) line.terms.push_back(answer_.shut_in(volume_));
        if (warmer_k > 0)
            line.terms.push_back({"warmer", tr("warmer today"), warmer.of(warmer_k), warmer.unit, Input::shop,
                                  tr("shop and parts, than where the rise was read")});
        return line;
    }

    double hottest_kpa() const {
        casting::GasIn gas = casting::gas_of(answer_.mold());
        gas.expansion = answer_.drawer.band->high.expansion;
        gas.net_mm3 = answer_.drawer.band->high.net_mm3;
        gas.hotter_k += casting::further_hotter_k;
        return casting::gas_kpa(gas);
    }

    Line lift() const {
        const Result result = answer_.said_n(pressure_.lift_n);
        Line line{tr("force on the plate"),
                  QStringLiteral("{closed} × {area}"),
                  {{"closed", tr("pressure when closed"), kpa_.of(pressure_.closed_kpa), kpa_.unit,
                    Input::figure, "closed"},
                   answer_.area()},
                  result};
        if (is_metric(answer_.units())) line.formula += QStringLiteral(" / 10"); // 1 kPa · 1 cm² = 0.1 N
        return line;
    }

    const Answer& answer_;
    const casting::Pressure& pressure_;
    Scale kpa_;
    Scale volume_;
};

} // namespace

FoamFigure closed(const Answer& answer) { return Pressure(answer).closed(); }
FoamFigure build_for(const Answer& answer) { return Pressure(answer).build_for(); }

} // namespace drawercast::app::explain
