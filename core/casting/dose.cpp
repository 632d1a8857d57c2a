// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/dose.h"

#include "casting/band.h"
#include "casting/batches.h"

#include <utility>

namespace drawercast::casting {
namespace {

double poured_ml(double overpack, double net_mm3, double expansion) {
    return (1 + overpack) * net_mm3 / expansion / 1000;
}

/// The high end is the first to be all liquid.
bool all_liquid(const DoseIn& in, double ml) {
    return 1000 * ml >= shallowest_mm3(in.net_mm3, in.insert_area_mm2);
}

bool short_if_low(const DoseIn& in, double ml) {
    const double fill = in.profile.expansion_low * 1000 * ml / deepest_mm3(in.net_mm3, in.insert_area_mm2);
    return fill < flow_index;
}

bool hard_if_high(const DoseIn& in, double ml) {
    const double fill =
        in.profile.expansion_high * 1000 * ml / shallowest_mm3(in.net_mm3, in.insert_area_mm2);
    return fill > hard_fill;
}

Problem refused(Phrase what, Phrase fix) { return {"dose-refused", "", std::move(what), std::move(fix)}; }

void add_masses(const DoseIn& in, Dose& dose) {
    const job::Foam& foam = *in.foam;
    const double parts = foam.ratio_a + foam.ratio_b;
    dose.a_ml = dose.mixed_ml * foam.ratio_a / parts;
    dose.b_ml = dose.mixed_ml * foam.ratio_b / parts;
    dose.a_g = dose.a_ml * foam.density_a_g_ml;
    dose.b_g = dose.b_ml * foam.density_b_g_ml;
    dose.pigment_ml = dose.b_ml * foam.pigment_of_b;
    dose.insert_g = dose.liquid_g_ml * dose.poured_ml;
}

Expected<Batches> split(const DoseIn& in, double liquid_ml) {
    const job::Shop& shop = *in.shop;
    BatchesIn batches;
    batches.liquid_ml = liquid_ml;
    batches.pour_window_s = in.profile.pot_life_s - in.profile.mix_s;
    batches.container_ml = shop.container_ml;
    batches.stir_room = shop.stir_room;
    batches.mixer_ml = shop.mixer_ml;
    batches.bucket_left_ml = shop.bucket_left_ml;
    batches.pour_s = shop.pour_s;
    batches.pour_l_s = shop.pour_l_s;
    return batches_of(batches);
}

} // namespace

double automatic_overpack(const DoseIn& in) {
    int percent = in.profile.by_cup ? start_percent_by_cup : start_percent_by_label;
    for (;; ++percent) {
        const double ml = poured_ml(percent / 100.0, in.net_mm3, in.profile.expansion);
        if (!short_if_low(in, ml) || all_liquid(in, ml)) return percent / 100.0;
    }
}

Expected<Dose> dose_of(const DoseIn& in) {
    if (!(in.net_mm3 > 0))
        return refused(phrase("the pockets leave no room for foam"),
                       phrase("move, shrink or remove pockets"));
    Dose dose;
    dose.overpack_auto = !in.foam->overpack;
    dose.overpack = in.foam->overpack ? *in.foam->overpack : automatic_overpack(in);
    if (dose.overpack < 0)
        return refused(phrase("the overpack is below 0, so the mold would not fill"),
                       phrase("raise the overpack"));
    dose.expansion = in.profile.expansion;
    dose.by_cup = in.profile.by_cup;
    dose.liquid_g_ml = in.profile.liquid_g_ml;
    dose.poured_ml = poured_ml(dose.overpack, in.net_mm3, dose.expansion);
    if (all_liquid(in, dose.poured_ml))
        return refused(phrase("the liquid alone would fill the mold"),
                       dose.overpack_auto ? phrase("make the insert thicker or use a foam that rises more")
                                          : phrase("lower the overpack or use a foam that rises more"));
    dose.none_passes = dose.overpack_auto && hard_if_high(in, dose.poured_ml);
    const double with_reserve_ml = dose.poured_ml * (1 + squeeze_out_share * dose.overpack);
    const auto batches = split(in, with_reserve_ml);
    if (!batches) return refused(batches.error().what, batches.error().fix);
    dose.batches = batches->count;
    dose.bucket_left_ml = batches->bucket_left_ml;
    dose.pour_s = batches->pour_s;
    dose.mixed_ml = with_reserve_ml + batches->count * batches->bucket_left_ml;
    dose.free_rise_kg_m3 = 1000 * dose.liquid_g_ml / dose.expansion;
    dose.molded_kg_m3 = (1 + dose.overpack) * dose.free_rise_kg_m3;
    add_masses(in, dose);
    return dose;
}

} // namespace drawercast::casting
