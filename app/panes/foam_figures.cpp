// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/foam_figures.h"

#include "casting/ambient.h"
#include "casting/band.h"
#include "casting/kits.h"
#include "plan/say.h"

#include <algorithm>

namespace drawercast::app {

namespace {

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }
QString fixed(double value, int decimals) { return text(plan::fixed(value, decimals)); }

class Figures {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::FoamFigures)

  public:
    Figures(const job::Job& job, const plan::Plan& plan, const plan::DrawerPlan& drawer, DosingUnit unit)
        : job_(job), plan_(plan), drawer_(drawer), unit_(unit), dose_(*drawer.dose) {}

    std::vector<FoamFigure> all() {
        add_part("a", tr("part A"), job_.foam->ratio_a, dose_.a_ml, dose_.a_g, job_.foam->density_a_g_ml);
        add_part("b", tr("part B"), job_.foam->ratio_b, dose_.b_ml, dose_.b_g, job_.foam->density_b_g_ml);
        add_mixed();
        add_overpack();
        add_batches();
        add_kits();
        add_insert();
        if (drawer_.band) add_band();
        if (drawer_.pressure) add_pressure();
        if (drawer_.times) add_pour();
        return std::move(figures_);
    }

  private:
    QString ml(double value) const { return text(plan::say_volume_ml(value, job_.display_units)); }
    QString g(double value) const { return text(plan::say_mass_g(value, job_.display_units)); }
    QString kpa(double value) const { return text(plan::say_pressure_kpa(value, job_.display_units)); }
    QString rise(double value) const { return QStringLiteral("×") + fixed(value, 2); }
    QString expansion_source() const {
        return dose_.by_cup ? tr("rise by the test cup") : tr("rise by the foam's label, as entered");
    }

    void add(const char* id, const QString& label, const QString& value, Explanation why) {
        figures_.push_back({QLatin1String(id), label, value, std::move(why)});
    }

    void add_part(const char* id, const QString& label, double ratio, double volume, double mass,
                  double density) {
        const double parts = job_.foam->ratio_a + job_.foam->ratio_b;
        QString numbers =
            tr("%1 × %2 / %3 = %4").arg(ml(dose_.mixed_ml), fixed(ratio, 2), fixed(parts, 2), ml(volume));
        QString formula = tr("mixed × share of the ratio by volume");
        if (unit_ == DosingUnit::mass) {
            formula += tr(" × density");
            numbers += tr("; at %1 g/mL that is %2").arg(fixed(density, 2), g(mass));
        }
        add(id, label, unit_ == DosingUnit::mass ? g(mass) : ml(volume),
            {formula, numbers, tr("ratio and densities by the foam's label, as entered"),
             tr("Weigh each part in its own cup; a scale that reads 1 g is enough over 100 g.")});
    }

    void add_mixed() {
        const double mass = dose_.a_g + dose_.b_g;
        add("mixed", tr("mixed"), unit_ == DosingUnit::mass ? g(mass) : ml(dose_.mixed_ml),
            {tr("poured, plus a tenth of the overpack for squeeze-out, plus what stays in the bucket"),
             tr("%1 × (1 + 0.1 × %2) + %3 × %4 = %5")
                 .arg(ml(dose_.poured_ml), fixed(dose_.overpack, 2))
                 .arg(dose_.batches)
                 .arg(ml(dose_.bucket_left_ml), ml(dose_.mixed_ml)),
             tr("left in the bucket: 40 mL or 4 % of the batch unless you set it (common practice)"),
             tr("Pigment comes on top: %1.").arg(ml(dose_.pigment_ml))});
    }

    void add_overpack() {
        const double net = drawer_.cavity ? drawer_.cavity->net_mm3 / 1000 : 0;
        add("poured", tr("poured, %1 % over").arg(fixed(dose_.overpack * 100, 0)), ml(dose_.poured_ml),
            {tr("(1 + overpack) × what the mold holds / rise"),
             tr("(1 + %1) × %2 / %3 = %4")
                 .arg(fixed(dose_.overpack, 2), ml(net), fixed(dose_.expansion, 2), ml(dose_.poured_ml)),
             dose_.overpack_auto
                 ? tr("overpack found: the least that fills the mold at the low end of the band; %1")
                       .arg(expansion_source())
                 : tr("overpack set in the job; %1").arg(expansion_source()),
             dose_.none_passes
                 ? tr("No overpack is both full at the low end and not too hard at the high end. A test "
                      "cup narrows the band.")
                 : tr("What the mold holds counts blocks and clay fillets, enlarged by the shrinkage.")});
    }

    void add_batches() {
        add("batches", tr("batches"), QString::number(dose_.batches),
            {tr("the fewest that fit container and mixer and are poured before the foam starts"),
             tr("%1 each, poured in %2 s").arg(ml(dose_.batch_ml), fixed(dose_.pour_s, 0)),
             tr("container, mixer and pour rate as set for the shop"),
             tr("Batches are mixed side by side: each needs a person and a mixer.")});
    }

    void add_kits() {
        if (!plan_.purchase) return;
        QStringList kits;
        for (const auto& kit : plan_.purchase->from_shelf)
            kits << tr("%1 × %2 at hand").arg(kit.count).arg(text(kit.name));
        for (const auto& kit : plan_.purchase->kits) kits << tr("%1 × %2").arg(kit.count).arg(text(kit.name));
        add("kits", tr("kits, all drawers"),
            kits.isEmpty() ? tr("nothing to buy") : kits.join(QStringLiteral(", ")),
            {tr("the cheapest whole set of kits that covers all drawers and a tenth to spare"),
             tr("needed %1, left over %2")
                 .arg(ml(plan_.purchase->needed_ml), ml(plan_.purchase->left_over_ml)),
             tr("a tenth to spare is common practice; kits and prices as entered"),
             tr("Foam at hand is taken first.")});
    }

    void add_insert() {
        add("insert", tr("insert weighs"), g(dose_.insert_g),
            {tr("poured × density of the mixed parts"),
             tr("%1 × %2 g/mL = %3; %4 in the mold")
                 .arg(ml(dose_.poured_ml), fixed(dose_.liquid_g_ml, 3), g(dose_.insert_g),
                      text(plan::say_density_kg_m3(dose_.molded_kg_m3, job_.display_units))),
             tr("densities by the foam's label, as entered"), tr("Gas that leaves weighs next to nothing.")});
    }

    void add_band() {
        const auto& band = *drawer_.band;
        const auto end = [&](const casting::BandEnd& e) {
            return tr("rise %1, fills %2, %3")
                .arg(rise(e.expansion), fixed(e.fill, 2), kpa(std::max(0.0, e.closed_kpa)));
        };
        add("band", tr("low / expected / high"),
            tr("%1 / %2 / %3")
                .arg(rise(band.low.expansion), rise(band.expected.expansion), rise(band.high.expansion)),
            {tr("rise ± %1 %, in a mold 0.5 mm deeper and shallower than planned")
                 .arg(fixed(band.uncertainty * 100, 0)),
             tr("low: %1\nexpected: %2\nhigh: %3").arg(end(band.low), end(band.expected), end(band.high)),
             tr("± 10 % by the label, ± 4 % after a test cup, and 0.5 mm are our guess"),
             tr("Filled means at least %1 at the low end; too hard is over %2 at the high end.")
                 .arg(fixed(casting::flow_index, 2), fixed(casting::hard_fill, 2))});
    }

    void add_pressure() {
        const auto& pressure = *drawer_.pressure;
        add("closed", tr("pressure when closed"), kpa(pressure.closed_kpa),
            {tr("p · ((rise − 1) · poured / (mold − poured) · (T + hotter) / T − 1)"),
             tr("p = %1, rise %2, poured %3, hotter by %4 K: %5")
                 .arg(kpa(casting::ambient_kpa(job_.shop->altitude_m)), rise(dose_.expansion),
                      ml(dose_.poured_ml), fixed(job_.foam->mold_hotter_k, 0), kpa(pressure.closed_kpa)),
             tr("ideal gas law; air pressure by ISO 2533, the standard atmosphere"),
             tr("An estimate: all gas shut in bubbles, nothing vented.")});
        add("build_for", tr("pressure to build for"), kpa(pressure.build_for_kpa),
            {tr("the greater of %1 × closed, and the high end 10 K hotter")
                 .arg(fixed(job_.mold.pressure_factor, 2)),
             tr("closed %1, high end %2; lift on the plate %3 when closed")
                 .arg(kpa(pressure.closed_kpa), kpa(pressure.high_kpa),
                      text(plan::say_force_n(pressure.lift_n, job_.display_units))),
             tr("both allowances are our guess"), tr("Not a bound: real foam may be hotter yet.")});
    }

    void add_pour() {
        const auto& times = *drawer_.times;
        const double used = times.pot_life_s - times.pour_margin_s;
        add("pour", tr("poured within pot life"),
            tr("%1 s of %2 s").arg(fixed(used, 0), fixed(times.pot_life_s, 0)),
            {tr("mixing + pouring, against the pot life at the shop's temperature"),
             tr("%1 s + %2 s = %3 s, pot life %4 s")
                 .arg(fixed(job_.foam->mix_s, 0), fixed(dose_.pour_s, 0), fixed(used, 0),
                      fixed(times.pot_life_s, 0)),
             job_.foam->activation_kj_mol ? tr("pot life by the foam's activation energy")
                                          : tr("pot life halves for each 10 °C warmer (common practice)"),
             tr("The foam reaches the plate after %1 s and fills the mold after %2 s: the plate must be "
                "closed by then.")
                 .arg(fixed(times.touch_s, 0), fixed(times.contact_s, 0))});
    }

    const job::Job& job_;
    const plan::Plan& plan_;
    const plan::DrawerPlan& drawer_;
    DosingUnit unit_;
    const casting::Dose& dose_;
    std::vector<FoamFigure> figures_;
};

} // namespace

std::vector<FoamFigure> foam_figures(const job::Job& job, const plan::Plan& plan,
                                     const plan::DrawerPlan& drawer, DosingUnit unit) {
    if (!drawer.dose) return {};
    return Figures(job, plan, drawer, unit).all();
}

QString explanation_html(const FoamFigure& figure) {
    const auto lines = [](const QString& plain) {
        return plain.toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br>"));
    };
    const auto row = [&](const QString& head, const QString& words) {
        return QStringLiteral("<p><b>%1</b><br>%2</p>").arg(head.toHtmlEscaped(), lines(words));
    };
    return QStringLiteral("<h3>%1: %2</h3>").arg(figure.label.toHtmlEscaped(), figure.value.toHtmlEscaped()) +
           row(QCoreApplication::translate("drawercast::app::FoamFigures", "How it is worked out"),
               figure.why.formula) +
           row(QCoreApplication::translate("drawercast::app::FoamFigures", "With the numbers"),
               figure.why.numbers) +
           row(QCoreApplication::translate("drawercast::app::FoamFigures", "Where from"), figure.why.source) +
           row(QCoreApplication::translate("drawercast::app::FoamFigures", "Limits"), figure.why.limits);
}

} // namespace drawercast::app
