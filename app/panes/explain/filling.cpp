// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/units.h"
#include "casting/ambient.h"
#include "casting/band.h"
#include "casting/cups.h"
#include "casting/dose.h"

#include "panes/explain/figures.h"

#include <numbers>

namespace drawercast::app::explain {

namespace {

class Filling {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::explain::Filling)

  public:
    explicit Filling(const Answer& answer) : answer_(answer) {}

    FoamFigure holds() {
        const Result result = answer_.said_ml(answer_.cavity().net_mm3 / 1000);
        const Scale volume = volume_scale(result.unit);
        const auto term = [&](const char* key, const QString& name, double mm3, Input input,
                              const QString& note) {
            return Term{key, name, volume.of(mm3 / 1000), volume.unit, input, note};
        };
        const auto& cavity = answer_.cavity();
        const Line net{tr("what the mold holds"),
                       QStringLiteral("{gross} − {blocks} − {clay}"),
                       {term("gross", tr("box"), cavity.gross_mm3, Input::drawer, tr("without the fillers")),
                        term("blocks", tr("blocks"), cavity.blocks_mm3, Input::pockets,
                             tr("exact, from their outlines")),
                        term("clay", tr("clay fillets"), cavity.fillet_mm3, Input::mold,
                             tr("at the feet of the blocks"))},
                       result};
        return {"holds",
                tr("mold holds"),
                result.text(),
                {{},
                 {net, gross(volume)},
                 tr("Plane geometry; all lengths are enlarged by the shrinkage (handbook rule of pattern "
                    "making: length × 1 / (1 − shrinkage))."),
                 tr("A real mold differs by what the saw and the sealer take: the band allows for 0.5 mm of "
                    "depth, our guess.")}};
    }

    FoamFigure rise() {
        const auto& profile = answer_.profile;
        const Result result = fixed_result(profile.expansion, 2, {}, QStringLiteral("×"));
        const Scale pressure = kpa();
        const Line here{tr("rise here"),
                        QStringLiteral("1 + ({level} − 1) × {standard} / {air}"),
                        {{"level",
                          tr("rise at sea level"),
                          profile.expansion_sea_level,
                          {},
                          Input::foam,
                          profile.by_cup ? tr("by the test cup") : tr("by the label")},
                         rule("standard", tr("air pressure at sea level"),
                              pressure.of(casting::sea_level_kpa), pressure.unit, tr("ISO 2533")),
                         answer_.ambient(pressure)},
                        result};
        Explanation why{{},
                        {here},
                        tr("Boyle’s law for the gas; air pressure by ISO 2533, the standard atmosphere."),
                        profile.by_cup
                            ? tr("A cup rises a little less than a large mold, as its wall cools it.")
                            : tr("By the label: foam and day may differ by ± 10 %, our guess. A test "
                                 "cup narrows that to ± 4 %.")};
        if (profile.by_cup) why.lines.push_back(cups());
        return {"rise", tr("rise"), result.text(), why};
    }

    FoamFigure overpack() {
        const auto& dose = answer_.dose();
        const auto percent = fixed_result(100 * dose.overpack, 0, QStringLiteral("%"));
        Line line{
            tr("automatic overpack"),
            QStringLiteral("max({start}, roundup(100 × ({full} × {deep} × {rise} / ({low} × {holds}) − 1)))"),
            {},
            {}};
        const Scale volume = volume_scale(answer_.said_ml(answer_.cavity().net_mm3 / 1000).unit);
        const double start =
            answer_.profile.by_cup ? casting::start_percent_by_cup : casting::start_percent_by_label;
        line.terms = {
            rule("start", tr("usual overpack"), start, QStringLiteral("%"), tr("common practice, no source")),
            rule("full", tr("filled"), casting::flow_index, {},
                 tr("foam does not flow for nothing; our guess")),
            deep(volume),
            answer_.rise(),
            low_rise(),
            answer_.holds(volume)};
        const double automatic =
            casting::automatic_overpack({answer_.profile, answer_.job.foam, answer_.job.shop,
                                         answer_.cavity().net_mm3, answer_.cavity().insert_area_mm2});
        line.result = fixed_result(100 * automatic, 0, QStringLiteral("%"));
        const bool refused = !gives(worked_out(line), line.result); // no automatic dose for this mold
        return {
            "overpack",
            tr("overpack"),
            percent.text(),
            {dose.overpack_auto
                 ? tr("Automatic: the usual overpack, raised by 1 % until the mold fills at the low end.")
                 : tr("Set by hand to %1; automatic would be %2.").arg(percent.text(), line.result.text()),
             refused ? std::vector<Line>() : std::vector{line},
             tr("An overpack of 10 to 25 % is common practice, no source; the limits of the band are our "
                "guess."),
             dose.none_passes ? tr("No overpack is both full at the low end and not too hard at the high "
                                   "end. A test cup narrows the band.")
                              : tr("More overpack makes the insert firmer and heavier, and pushes harder.")}};
    }

    FoamFigure band() {
        const auto& ends = *answer_.drawer.band;
        const Scale volume = volume_scale(answer_.said_ml(answer_.cavity().net_mm3 / 1000).unit);
        const auto fill = [](double value) { return fixed_result(value, 2, {}, QStringLiteral("×")); };
        const auto high = Term{"rise",      tr("rise at the high end"), ends.high.expansion, {},
                               Input::foam, uncertainty_note(u'+')};
        const auto shallow = Term{"holds",     tr("shallower mold"), volume.of(ends.high.net_mm3 / 1000),
                                  volume.unit, Input::pockets,       tr("0.5 mm less deep, our guess")};
        auto low = low_rise();
        low.key = "rise";
        auto deeper = deep(volume);
        deeper.key = "holds";
        const QString formula = QStringLiteral("{rise} × {poured} / {holds}");
        const auto poured = answer_.poured(volume);
        return {"band",
                tr("how full"),
                tr("×%1 to ×%2").arg(fill(ends.low.fill).figure(), fill(ends.high.fill).figure()),
                {tr("The same dose if the foam rises less into a mold that came out deeper, as expected, and "
                    "more "
                    "into one that came out shallower. ×1.00 just fills."),
                 {{tr("low"), formula, {low, poured, deeper}, fill(ends.low.fill)},
                  {tr("expected"),
                   formula,
                   {answer_.rise(), poured, answer_.holds(volume)},
                   fill(ends.expected.fill)},
                  {tr("high"), formula, {high, poured, shallow}, fill(ends.high.fill)}},
                 tr("± 10 % by the label, ± 4 % after a test cup, and 0.5 mm: our guess."),
                 tr("Filled means at least ×%1 at the low end; too hard is over ×%2 at the high end.")
                     .arg(fill(casting::flow_index).figure(), fill(casting::hard_fill).figure())}};
    }

  private:
    Scale kpa() const { return pressure_scale(answer_.said_kpa(1).unit); }

    QString uncertainty_note(QChar sign) const {
        return tr("%1 %2 % of the rise, our guess")
            .arg(QString(sign), fixed_result(100 * answer_.profile.uncertainty, 0).figure());
    }

    Term low_rise() const {
        return {"low",       tr("rise at the low end"), answer_.profile.expansion_low, {},
                Input::foam, uncertainty_note(u'−')};
    }

    Term deep(const Scale& volume) const {
        const auto& cavity = answer_.cavity();
        return {"deep",
                tr("deeper mold"),
                volume.of(casting::deepest_mm3(cavity.net_mm3, cavity.insert_area_mm2) / 1000),
                volume.unit,
                Input::pockets,
                tr("0.5 mm deeper, our guess")};
    }

    Line gross(const Scale& volume) const {
        const Scale length = length_scale(answer_.units());
        const auto& cavity = answer_.cavity();
        return {tr("box"),
                QStringLiteral("{area} × {height} / {solid}"),
                {answer_.area(),
                 {"height", tr("depth of the mold"), length.of(cavity.height_mm), length.unit, Input::drawer,
                  tr("thickness of the insert, enlarged by the shrinkage")},
                 rule("solid",
                      is_metric(answer_.units()) ? tr("cm² × mm in %1").arg(volume.unit)
                                                 : tr("in³ in %1").arg(volume.unit),
                      solid_per(volume, answer_.units()), {}, tr("of the units"))},
                said_in(cavity.gross_mm3 / 1000, volume)};
    }

    /// In `volume`, whatever unit it would be said in alone.
    Result said_in(double ml, const Scale& volume) const {
        const int decimals = volume.unit == u"mL" ? 0 : volume.unit == u"fl oz" ? 1 : 2;
        return fixed_result(volume.of(ml), decimals, volume.unit);
    }

    Line cups() const {
        const auto used = casting::cups_in_use(answer_.foam());
        return used.size() == 1 ? cup(used.front()) : mean_of(used);
    }

    Line mean_of(const std::vector<job::Cup>& used) const {
        QStringList sum;
        std::vector<Term> terms;
        for (const auto& one : used) {
            const QString key = QStringLiteral("cup%1").arg(terms.size() + 1);
            sum << QLatin1Char('{') + key + QLatin1Char('}');
            const auto risen = casting::cup_expansion(one, answer_.profile.liquid_g_ml);
            terms.push_back({key,
                             tr("cup %1").arg(terms.size() + 1),
                             risen ? *risen : 0,
                             {},
                             Input::foam,
                             tr("its liquid’s density over its foam’s")});
        }
        return {tr("rise in the cups, here"),
                QStringLiteral("(%1) / %2").arg(sum.join(QStringLiteral(" + "))).arg(used.size()), terms,
                fixed_result(answer_.profile.expansion, 2, {}, QStringLiteral("×"))};
    }

    Line cup(const job::Cup& cup) const {
        const Scale length = length_scale(answer_.units());
        const QString mass = is_metric(answer_.units()) ? QStringLiteral("g") : QStringLiteral("oz");
        const Scale density = density_beside(mass);
        const double solid = volume_beside(mass).size * 1000 / (length.size * length.size * length.size);
        return {
            tr("rise in the cup, here"),
            QStringLiteral("{pi} / 4 × {diameter} ^ 2 × {risen} / {solid} × {density} / {liquid}"),
            {rule("pi", QStringLiteral("π"), std::numbers::pi, {}, {}),
             {"diameter", tr("cup"), length.of(cup.diameter_mm), length.unit, Input::foam, tr("across")},
             {"risen", tr("risen"), length.of(cup.risen_mm), length.unit, Input::foam, tr("from its floor")},
             rule("solid", tr("volume in lengths"), solid, {}, tr("of the units")),
             answer_.liquid_density(density),
             {"liquid", tr("liquid in the cup"), mass_scale(mass).of(cup.liquid_g), mass, Input::foam,
              tr("as weighed")}},
            fixed_result(answer_.profile.expansion, 2, {}, QStringLiteral("×"))};
    }

    const Answer& answer_;
};

} // namespace

FoamFigure holds(const Answer& answer) { return Filling(answer).holds(); }
FoamFigure rise(const Answer& answer) { return Filling(answer).rise(); }
FoamFigure overpack(const Answer& answer) { return Filling(answer).overpack(); }
FoamFigure band(const Answer& answer) { return Filling(answer).band(); }

} // namespace drawercast::app::explain
