// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/foam_pages.h"

#include "forms/length_edit.h"
#include "language/spoken.h"

namespace drawercast::app {

namespace {

using job::Cup;
using job::Foam;

using language::tr;

ValueEdit* number(const FormContext& context, const char* path, const QString& unit, double scale = 1) {
    return new ValueEdit(number_notation(context, unit, scale), job::range_of(path));
}

ValueEdit* quantity(const FormContext& context, const char* path, Quantity what) {
    return new ValueEdit(quantity_notation(what, context), job::range_of(path));
}

} // namespace

void add_rise_rows(FieldRows& rows, Bindings<Foam>& numbers, const FormContext& context) {
    const QString label = tr("Data sheet");
    const QString from_start = tr("Data sheet, from the start of mixing");
    auto* overpack = number(context, "/foam/overpack", QStringLiteral("%"), 0.01);
    overpack->allow_empty(tr("auto"));
    auto* activation = number(context, "/foam/activation_kj_mol", QStringLiteral("kJ/mol"));
    activation->allow_empty(tr("auto"));
    numbers.add(rows, {"/expansion", tr("E&xpansion"), number(context, "/foam/expansion", {}),
                       &Foam::expansion, tr("Free rise over mixed liquid; data sheet, or a cup")});
    numbers.add(rows,
                {"/reference_c", tr("At &temperature"),
                 quantity(context, "/foam/reference_c", Quantity::temperature_c), &Foam::reference_c, label});
    numbers.add(rows, {"/ratio_a", tr("Parts &A"), number(context, "/foam/ratio_a", {}), &Foam::ratio_a,
                       tr("The isocyanate; by volume")});
    numbers.add(rows, {"/ratio_b", tr("Parts &B"), number(context, "/foam/ratio_b", {}), &Foam::ratio_b,
                       tr("The other part; by volume")});
    numbers.add(rows, {"/density_a_g_ml", tr("Density of A"),
                       number(context, "/foam/density_a_g_ml", tr("g/mL")), &Foam::density_a_g_ml, label});
    numbers.add(rows, {"/density_b_g_ml", tr("Density of B"),
                       number(context, "/foam/density_b_g_ml", tr("g/mL")), &Foam::density_b_g_ml, label});
    numbers.add(rows,
                {"/mix_s", tr("&Mixing"), number(context, "/foam/mix_s", tr("s")), &Foam::mix_s, label});
    numbers.add(rows, {"/pot_life_s", tr("&Pot life"), number(context, "/foam/pot_life_s", tr("s")),
                       &Foam::pot_life_s, from_start});
    numbers.add(rows, {"/rise_s", tr("&Risen after"), number(context, "/foam/rise_s", tr("s")), &Foam::rise_s,
                       from_start});
    numbers.add(rows, {"/demold_min", tr("&Demold after"), number(context, "/foam/demold_min", tr("min")),
                       &Foam::demold_min, tr("Data sheet; never taken shorter")});
    numbers.add(
        rows, {"/overpack", tr("&Overpack"), overpack, &Foam::overpack,
               tr("Over free rise; auto: 15 % with a cup, 20 % without, more if need be (common practice)")});
    numbers.add(rows, {"/activation_kj_mol", tr("Acti&vation energy"), activation, &Foam::activation_kj_mol,
                       tr("Auto: times halve with each 10 °C more (common practice)")});
}

void add_cured_rows(FieldRows& rows, Bindings<Foam>& numbers, const FormContext& context) {
    const QString percent = QStringLiteral("%");
    numbers.add(rows, {"/shrinkage", tr("&Shrinks by"), number(context, "/foam/shrinkage", percent, 0.01),
                       &Foam::shrinkage, tr("Linear; data sheet, better from a cast of your own")});
    numbers.add(rows, {"/stress25_kpa", tr("Compression stress at &25 %"),
                       quantity(context, "/foam/stress25_kpa", Quantity::pressure_kpa), &Foam::stress25_kpa,
                       tr("Squeezed by a quarter; data sheet")});
    numbers.add(rows, {"/stress40_kpa", tr("Compression stress at &40 %"),
                       quantity(context, "/foam/stress40_kpa", Quantity::pressure_kpa), &Foam::stress40_kpa,
                       tr("Data sheet")});
    numbers.add(rows, {"/pigment_of_b", tr("&Pigment"), number(context, "/foam/pigment_of_b", percent, 0.01),
                       &Foam::pigment_of_b, tr("Of part B; the pigment's label")});
    numbers.add(rows, {"/viscosity_pa_s", tr("&Viscosity while rising"),
                       number(context, "/foam/viscosity_pa_s", tr("Pa·s")), &Foam::viscosity_pa_s,
                       tr("Our guess, until a cast has given it")});
    numbers.add(rows, {"/mold_hotter_k", tr("&Hotter than the parts"),
                       quantity(context, "/foam/mold_hotter_k", Quantity::warmer_k), &Foam::mold_hotter_k,
                       tr("Gas in the closed mold; our guess")});
}

void add_cup_rows(FieldRows& rows, Bindings<Cup>& numbers, const FormContext& context) {
    auto* diameter = new LengthEdit(context, job::range_of("/foam/cup/diameter_mm"));
    auto* risen = new LengthEdit(context, job::range_of("/foam/cup/risen_mm"));
    const auto seconds = [&](const char* path) { return number(context, path, tr("s")); };
    numbers.add(rows, {"/cup/diameter_mm", tr("&Inside diameter"), diameter, &Cup::diameter_mm,
                       tr("A straight cup")});
    numbers.add(rows, {"/cup/liquid_g", tr("&Liquid poured"), number(context, "/foam/cup/liquid_g", tr("g")),
                       &Cup::liquid_g, tr("On the scale")});
    numbers.add(rows, {"/cup/risen_mm", tr("&Risen to"), risen, &Cup::risen_mm,
                       tr("From the cup's floor, at the middle")});
    numbers.add(rows, {"/cup/start_s", tr("&Starts to rise (cream time)"), seconds("/foam/cup/start_s"),
                       &Cup::start_s, tr("From the start of mixing")});
    numbers.add(rows, {"/cup/half_s", tr("&Half risen"), seconds("/foam/cup/half_s"), &Cup::half_s,
                       tr("From the start of mixing")});
    numbers.add(rows, {"/cup/full_s", tr("Full&y risen"), seconds("/foam/cup/full_s"), &Cup::full_s,
                       tr("From the start of mixing")});
    numbers.add(rows, {"/cup/parts_c",
                       tr("&Parts' temperature"),
                       quantity(context, "/foam/cup/parts_c", Quantity::temperature_c),
                       &Cup::parts_c,
                       {}});
    numbers.add(rows, {"/cup/room_c",
                       tr("R&oom's temperature"),
                       quantity(context, "/foam/cup/room_c", Quantity::temperature_c),
                       &Cup::room_c,
                       {}});
}

} // namespace drawercast::app
