// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/dose.h"

#include "panes/explain/figures.h"

namespace drawercast::app::explain {

namespace {

class Dose {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::explain::Dose)

  public:
    explicit Dose(const Answer& answer) : answer_(answer), dose_(answer.dose()) {}

    FoamFigure part(const QString& id, const QString& name, double ratio, double ml, double g, double g_ml) {
        const auto& foam = answer_.foam();
        const Result result = answer_.by_mass() ? answer_.said_g(g) : answer_.said_ml(ml);
        const Scale volume = answer_.by_mass() ? volume_beside(result.unit) : volume_scale(result.unit);
        Line line{name, QStringLiteral("{mixed} × {own} / ({a} + {b})"), {}, result};
        line.terms = {
            {"mixed", tr("mixed"), volume.of(dose_.mixed_ml), volume.unit, Input::figure, "mixed"},
            {"own", tr("its parts"), ratio, {}, Input::foam, tr("of the ratio by volume, by the label")},
            {"a", tr("parts A"), foam.ratio_a, {}, Input::foam, tr("by the label")},
            {"b", tr("parts B"), foam.ratio_b, {}, Input::foam, tr("by the label")}};
        if (answer_.by_mass()) {
            const Scale density = density_beside(result.unit);
            line.formula += QStringLiteral(" × {density}");
            line.terms.push_back({"density", tr("its density"), density.of(g_ml), density.unit, Input::foam,
                                  tr("by the label")});
        }
        Explanation why{{},
                        {line},
                        tr("Ratio and densities by the foam’s label, as entered."),
                        tr("Weigh each part in a cup of its own; pigment, if any, goes into part B.")};
        return {id, name, result.text(), why};
    }

    FoamFigure mixed() {
        const double mass = dose_.a_g + dose_.b_g;
        const Result result = answer_.by_mass() ? answer_.said_g(mass) : answer_.said_ml(dose_.mixed_ml);
        const Scale volume = answer_.by_mass() ? volume_beside(result.unit) : volume_scale(result.unit);
        Line line{tr("mixed"),
                  QStringLiteral("{poured} × (1 + {reserve} × {overpack}) + {batches} × {left}"),
                  {},
                  result};
        line.terms = {answer_.poured(volume),
                      rule("reserve", tr("reserve"), casting::squeeze_out_share, {},
                           tr("of the overpack: the most that may leave through the vents")),
                      answer_.overpack(),
                      {"batches", tr("batches"), double(dose_.batches), {}, Input::figure, "batches"},
                      {"left", tr("left in each bucket"), volume.of(dose_.bucket_left_ml), volume.unit,
                       Input::shop, left_note()}};
        if (answer_.by_mass()) {
            line.formula = u'(' + line.formula + QStringLiteral(") × {density}");
            line.terms.push_back(answer_.liquid_density(density_beside(result.unit)));
        }
        Explanation why{{},
                        {line, pigment()},
                        tr("Reserve and what stays in the bucket: common practice, no source."),
                        tr("The reserve is mixed but not poured. Pigment comes on top.")};
        return {"mixed", tr("mixed"), result.text(), why};
    }

    FoamFigure poured() {
        const Result result = answer_.said_ml(dose_.poured_ml);
        const Scale volume = volume_scale(result.unit);
        const Line line{tr("poured"),
                        QStringLiteral("(1 + {overpack}) × {holds} / {rise}"),
                        {answer_.overpack(), answer_.holds(volume), answer_.rise()},
                        result};
        Explanation why{
            {},
            {line},
            tr("The rise is free-rise volume over liquid volume, so this much liquid fills the mold "
               "with the overpack to spare. An overpack of 10 to 25 % is common practice, no source."),
            tr("What squeezes out through the vents is not poured again.")};
        return {"poured", tr("poured"), result.text(), why};
    }

    FoamFigure insert_mass() {
        const Result result = answer_.said_g(dose_.insert_g);
        const Line line{
            tr("insert weighs"),
            QStringLiteral("{poured} × {density}"),
            {answer_.poured(volume_beside(result.unit)), answer_.liquid_density(density_beside(result.unit))},
            result};
        Explanation why{{},
                        {line},
                        tr("Mass is kept; densities by the foam’s label, as entered."),
                        tr("Gas that leaves and what squeezes out are left out.")};
        return {"insert", tr("insert weighs"), result.text(), why};
    }

  private:
    QString left_note() const {
        return answer_.shop().bucket_left_ml ? tr("as set for the shop")
                                             : tr("40 mL, or 4 % of the batch where that is more");
    }

    Line pigment() const {
        const Result result = answer_.said_ml(dose_.pigment_ml);
        const Scale volume = volume_scale(result.unit);
        return {
            tr("pigment"),
            QStringLiteral("{b} × {share}"),
            {{"b", tr("part B"), volume.of(dose_.b_ml), volume.unit, Input::figure, "b"},
             {"share", tr("pigment share"), answer_.foam().pigment_of_b, {}, Input::foam, tr("of part B")}},
            result};
    }

    const Answer& answer_;
    const casting::Dose& dose_;
};

} // namespace

FoamFigure part_a(const Answer& answer) {
    return Dose(answer).part("a", Answer::tr("part A"), answer.foam().ratio_a, answer.dose().a_ml,
                             answer.dose().a_g, answer.foam().density_a_g_ml);
}

FoamFigure part_b(const Answer& answer) {
    return Dose(answer).part("b", Answer::tr("part B"), answer.foam().ratio_b, answer.dose().b_ml,
                             answer.dose().b_g, answer.foam().density_b_g_ml);
}

FoamFigure mixed(const Answer& answer) { return Dose(answer).mixed(); }
FoamFigure poured(const Answer& answer) { return Dose(answer).poured(); }
FoamFigure insert_mass(const Answer& answer) { return Dose(answer).insert_mass(); }

} // namespace drawercast::app::explain
