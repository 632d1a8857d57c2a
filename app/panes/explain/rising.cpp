// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/band.h"

#include "panes/explain/figures.h"

#include <algorithm>

namespace drawercast::app::explain {

namespace {

class Rising {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::explain::Rising)

  public:
    explicit Rising(const Answer& answer) : answer_(answer), times_(*answer.drawer.times) {}

    FoamFigure touch() {
        const Scale length = length_scale(answer_.units());
        const double by_level = answer_.cavity().height_mm / times_.liquid_level_mm;
        const double wanted = std::min(by_level, full_mold());
        Line growth{tr("times its level"),
                    QStringLiteral("min({height} / {level}, %1)").arg(volume_formula()),
                    {{"height", tr("depth of the mold"), length.of(answer_.cavity().height_mm), length.unit,
                      Input::drawer, tr("enlarged by the shrinkage")},
                     {"level", tr("level of the liquid"), length.of(times_.liquid_level_mm), length.unit,
                      Input::pockets, tr("in the channels between the blocks")}},
                    fixed_result(wanted, 2, {}, QStringLiteral("×"))};
        for (const Term& term : volume_terms()) growth.terms.push_back(term);
        return figure(
            "touch", tr("at the plate"), times_.touch_s, wanted, growth,
            tr("Foam is at the plate then. The last moment to set the plate on may be sooner: see Closing."));
    }

    FoamFigure contact() {
        const double wanted = full_mold();
        const Line growth{tr("times its volume"), volume_formula(), volume_terms(),
                          fixed_result(wanted, 2, {}, QStringLiteral("×"))};
        return figure("contact", tr("mold full"), times_.contact_s, wanted, growth,
                      tr("From here on the foam pushes. The slower of the two curves is not waited for."));
    }

  private:
    double full_mold() const { return casting::full_mold(casting::gas_of(answer_.mold())); }
    QString volume_formula() const {
        return answer_.has_air() ? QStringLiteral("({holds} − {shut_in}) / {poured}")
                                 : QStringLiteral("{holds} / {poured}");
    }
    std::vector<Term> volume_terms() const {
        const Scale volume = volume_scale(answer_.said_ml(answer_.cavity().net_mm3 / 1000).unit);
        std::vector<Term> terms{answer_.holds(volume), answer_.poured(volume)};
        if (answer_.has_air()) terms.push_back(answer_.shut_in(volume));
        return terms;
    }

    FoamFigure figure(const QString& id, const QString& label, double seconds, double wanted,
                      const Line& growth, const QString& limits) {
        const Result result = fixed_result(seconds, 0, QStringLiteral("s"));
        Explanation why{{}, {}, {}, limits};
        const double share = (wanted - 1) / (answer_.dose().expansion - 1);
        if (answer_.profile.cup) {
            why.rule = tr("Read from the cup’s rise: a smooth curve through start, half and full.");
            why.source =
                tr("A monotone cubic (Fritsch and Butland, 1984) through the times of your test cup.");
            why.lines = {growth};
        } else {
            why.rule =
                tr("The earlier of two curves of the rise, as it is not known which one the foam takes.");
            why.source = tr("A smooth start (3 v² − 2 v³) and a rise of first order that is 99 % done in the "
                            "label’s time: both our guess.");
            if (share > 0 && share < most_share) why.lines.push_back(by_curves(label, share, result));
            why.lines.push_back(growth);
        }
        return {id, label, result.text(), why};
    }

    /// Both curves solved for the moment at which `share` of the rise is done.
    Line by_curves(const QString& name, double share, const Result& result) const {
        return {
            name,
            QStringLiteral("min({pot} + ({full} − {pot}) × (0.5 − sin(asin(1 − 2 × {done}) / 3)), "
                           "0.9 × {pot} − ({full} − 0.9 × {pot}) × ln(1 − {done}) / ln(100))"),
            {{"pot", tr("pot life"), answer_.profile.pot_life_s, QStringLiteral("s"), Input::figure, "pour"},
             {"full", tr("full rise"), answer_.profile.rise_s, QStringLiteral("s"), Input::foam,
              tr("today, by the label and the temperature")},
             {"done", tr("share of the rise that is done"), share, {}, Input::figure, "rise"}},
            result};
    }

    static constexpr double most_share = 0.99; // the quick curve ends there

    const Answer& answer_;
    const casting::Times& times_;
};

} // namespace

FoamFigure touch(const Answer& answer) { return Rising(answer).touch(); }
FoamFigure contact(const Answer& answer) { return Rising(answer).contact(); }

} // namespace drawercast::app::explain
