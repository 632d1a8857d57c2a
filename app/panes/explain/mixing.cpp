// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/units.h"
#include "casting/batches.h"
#include "casting/dose.h"
#include "casting/kits.h"

#include "language/goods.h"
#include "panes/explain/figures.h"

#include <algorithm>
#include <cmath>

namespace drawercast::app::explain {

namespace {

QString plain(double value) { return fixed_result(value, 0).digits; }

class Mixing {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::explain::Mixing)

  public:
    explicit Mixing(const Answer& answer)
        : answer_(answer), dose_(answer.dose()), shop_(answer.shop()),
          volume_(volume_scale(answer.said_ml(dose_.mixed_ml).unit)) {}

    /// The least number that satisfies each limit, and of these the greatest.
    FoamFigure batches() {
        QStringList limits;
        std::vector<Term> terms{liquid(), room()};
        if (shop_.bucket_left_ml) {
            limits << QStringLiteral("{liquid} / ({room} − {left})");
            terms.push_back(left(*shop_.bucket_left_ml, tr("as set for the shop")));
        } else {
            limits << QStringLiteral("{liquid} / ({room} − {left})")
                   << QStringLiteral("{more} × {liquid} / {room}");
            terms.push_back(left(casting::least_left_ml, tr("common practice, no source")));
            terms.push_back(rule("more", tr("with what stays behind"), 1 + casting::share_left, {},
                                 tr("common practice, no source")));
        }
        if (answer_.drawer.times->pour_margin_s >= 0 && !shop_.pour_s) {
            limits << QStringLiteral("{liquid} / ({rate} × ({pot_life} − {mix}))");
            terms.insert(terms.end(), {rate(), pot_life(), mix()});
        }
        const Line line{tr("batches"),
                        QStringLiteral("roundup(max(%1))").arg(limits.join(QStringLiteral(", "))), terms,
                        fixed_result(dose_.batches, 0)};
        return {"batches",
                dose_.batches == 1 ? tr("batch") : tr("batches"),
                QString::number(dose_.batches),
                {tr("The fewest that fit their container and are poured before the foam starts. Batches are "
                    "mixed "
                    "side by side: each needs a person and a mixer."),
                 {line, pour()},
                 tr("Room to stir and what stays in the bucket: common practice, no source."),
                 answer_.drawer.times->pour_margin_s < 0
                     ? tr("No number of batches is poured in time, so they are split by volume alone.")
                     : tr("Nobody waits for another; a pause shortens the pour.")}};
    }

    FoamFigure pour_time() {
        const auto& times = *answer_.drawer.times;
        const double used = times.pot_life_s - times.pour_margin_s;
        const Result result = fixed_result(used, 0, QStringLiteral("s"));
        Line line{tr("mixed and poured"), QStringLiteral("{mix} + {pour}"), {mix()}, result};
        line.terms.push_back({"pour", tr("pouring"), dose_.pour_s, QStringLiteral("s"),
                              shop_.pour_s ? Input::shop : Input::figure,
                              shop_.pour_s ? tr("as set for the shop") : QStringLiteral("batches")});
        Explanation why{{}, {line}, {}, {}};
        if (!answer_.profile.cup) why.lines.push_back(pot_life_line());
        why.source = answer_.profile.cup ? tr("Pot life: when the cup’s foam started to rise.")
                     : answer_.foam().activation_kj_mol
                         ? tr("Arrhenius’ law with the foam’s activation energy, as entered.")
                         : tr("Twice as fast for each 10 °C warmer: common practice, no source; published "
                              "activation energies of 27 to 48 kJ/mol give somewhat less.");
        why.limits = tr("From the start of mixing, by a stopwatch. Hands are not slower on a cold day here.");
        return {"pour", tr("poured in pot life"),
                tr("%1 of %2").arg(result.text(), plain(times.pot_life_s) + QStringLiteral(" s")), why};
    }

    std::optional<FoamFigure> kits() {
        const auto& purchase = answer_.plan.purchase;
        if (!purchase) return std::nullopt;
        QStringList names;
        for (const auto& kit : purchase->from_shelf)
            names << tr("%1 × %2 at hand").arg(kit.count).arg(language::goods_name(kit.name));
        for (const auto& kit : purchase->kits)
            names << QStringLiteral("%1 × %2").arg(kit.count).arg(language::goods_name(kit.name));
        const double covered = purchase->needed_ml + purchase->left_over_ml;
        const Line over{
            tr("left over"),
            QStringLiteral("{covered} − {mixed} × (1 + {spare})"),
            {{"covered", tr("in the kits"), volume_.of(covered), volume_.unit, Input::foam,
              tr("as listed with the foam")},
             {"mixed", tr("mixed for all drawers"), volume_.of(answer_.plan.a_ml + answer_.plan.b_ml),
              volume_.unit, Input::figure, "mixed"},
             rule("spare", tr("to spare"), casting::spare_share, {}, tr("common practice, no source"))},
            left_over(purchase->left_over_ml)};
        return FoamFigure{
            "kits",
            tr("kits"),
            names.isEmpty() ? tr("nothing to buy") : names.join(QStringLiteral(", ")),
            {tr("Foam at hand is taken first. Of all combinations of whole kits that cover the rest: the "
                "cheapest, then the one that leaves least, then the fewest kits."),
             {over},
             tr("Every combination of kits is tried, so none is cheaper. Volumes and prices as entered."),
             tr("For all drawers together. An opened kit may not keep.")}};
    }

  private:
    Term liquid() const {
        const double ml = dose_.poured_ml * (1 + casting::squeeze_out_share * dose_.overpack);
        return {"liquid", tr("poured with its reserve"), volume_.of(ml), volume_.unit, Input::figure,
                "mixed"};
    }

    Term room() const {
        const double container = shop_.container_ml / (1 + shop_.stir_room);
        const bool mixer = shop_.mixer_ml && *shop_.mixer_ml < container;
        return {"room",
                mixer ? tr("what the mixer takes") : tr("what the container takes"),
                volume_.of(mixer ? *shop_.mixer_ml : container),
                volume_.unit,
                Input::shop,
                mixer ? tr("as set for the shop") : tr("with room to stir")};
    }

    Term left(double ml, const QString& note) const {
        return {"left", tr("left in the bucket"), volume_.of(ml), volume_.unit, Input::shop, note};
    }

    Term rate() const {
        return {"rate",
                tr("pour"),
                volume_.of(1000 * shop_.pour_l_s),
                volume_.unit + QStringLiteral("/s"),
                Input::shop,
                tr("into the mold")};
    }

    Term mix() const {
        return {"mix",       tr("mixing"),      answer_.profile.mix_s, QStringLiteral("s"),
                Input::foam, tr("by the label")};
    }

    Term pot_life() const {
        return {"pot_life",          tr("pot life"), answer_.profile.pot_life_s,
                QStringLiteral("s"), Input::figure,  "pour"};
    }

    Line pour() const {
        if (shop_.pour_s)
            return {tr("pouring, each"),
                    QStringLiteral("{pour}"),
                    {{"pour", tr("pouring"), *shop_.pour_s, QStringLiteral("s"), Input::shop, tr("as set")}},
                    fixed_result(dose_.pour_s, 0, QStringLiteral("s"))};
        return {tr("pouring, each"),
                QStringLiteral("{liquid} / {batches} / {rate}"),
                {liquid(),
                 {"batches", tr("batches"), double(dose_.batches), {}, Input::figure, "batches"},
                 rate()},
                fixed_result(dose_.pour_s, 0, QStringLiteral("s"))};
    }

    Line pot_life_line() const {
        const auto& foam = answer_.foam();
        const Result result = fixed_result(answer_.profile.pot_life_s, 0, QStringLiteral("s"));
        const Term label{
            "label", tr("pot life by the label"), foam.pot_life_s, QStringLiteral("s"), Input::foam, {}};
        if (foam.activation_kj_mol) return by_activation(label, result);
        const auto units = answer_.units();
        const QString degrees = temperature_unit(units);
        return {tr("pot life today"),
                QStringLiteral("{label} × 2 ^ (({reference} − {shop}) / {step})"),
                {label,
                 {"reference",
                  tr("temperature of the label"),
                  temperature_in(foam.reference_c, units),
                  degrees,
                  Input::foam,
                  {}},
                 {"shop",
                  tr("temperature of shop and parts"),
                  temperature_in(shop_.temperature_c, units),
                  degrees,
                  Input::shop,
                  {}},
                 rule("step", tr("twice as fast by"), is_metric(units) ? 10 : 18, degrees,
                      tr("common practice, no source"))},
                result};
    }

    Line by_activation(const Term& label, const Result& result) const {
        constexpr double gas_constant = 8.314462618e-3;
        const auto kelvin = [&](const char* key, const QString& name, double c, Input input) {
            return Term{key,   name,          drawercast::units::zero_celsius_k + c, QStringLiteral("K"),
                        input, tr("absolute")};
        };
        return {
            tr("pot life today"),
            QStringLiteral("{label} × exp({energy} / {gas} × (1 / {shop} − 1 / {reference}))"),
            {label,
             {"energy", tr("activation energy"), *answer_.foam().activation_kj_mol, QStringLiteral("kJ/mol"),
              Input::foam, tr("as entered")},
             rule("gas", tr("gas constant"), gas_constant, QStringLiteral("kJ/(mol K)"), tr("SI 2019")),
             kelvin("shop", tr("temperature of shop and parts"), shop_.temperature_c, Input::shop),
             kelvin("reference", tr("temperature of the label"), answer_.foam().reference_c, Input::foam)},
            result};
    }

    Result left_over(double ml) const {
        const int decimals = volume_.unit == u"mL" ? 0 : volume_.unit == u"fl oz" ? 1 : 2;
        return fixed_result(volume_.of(ml), decimals, volume_.unit);
    }

    const Answer& answer_;
    const casting::Dose& dose_;
    const job::Shop& shop_;
    Scale volume_;
};

} // namespace

FoamFigure batches(const Answer& answer) { return Mixing(answer).batches(); }
FoamFigure pour_time(const Answer& answer) { return Mixing(answer).pour_time(); }
std::optional<FoamFigure> kits(const Answer& answer) { return Mixing(answer).kits(); }

} // namespace drawercast::app::explain
