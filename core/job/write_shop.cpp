// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/words.h"
#include "job/write_parts.h"

namespace drawercast::job {

namespace {

void board(JsonLines& out, const Board& board) {
    out.begin_object(Width::narrow);
    out.member("name", board.name);
    out.member("thickness_mm", board.thickness_mm);
    out.member("elasticity_mpa", board.elasticity_mpa);
    out.member("poisson", board.poisson);
    out.member("rupture_mpa", board.rupture_mpa);
    out.member("specific_gravity", board.specific_gravity);
    write_numbers(out, "sheet_mm", {board.sheet_length_mm, board.sheet_width_mm});
    out.member("price", board.price);
    out.member_whole("at_hand", board.at_hand);
    out.rest(board.unknown);
    out.end_object();
}

void stiffener(JsonLines& out, const Stiffener& stiffener) {
    out.begin_object(Width::narrow);
    out.member("name", stiffener.name);
    write_numbers(out, "section_mm", {stiffener.width_mm, stiffener.height_mm});
    out.member("elasticity_mpa", stiffener.elasticity_mpa);
    out.member("rupture_mpa", stiffener.rupture_mpa);
    out.member("length_mm", stiffener.length_mm);
    out.member("price", stiffener.price);
    out.rest(stiffener.unknown);
    out.end_object();
}

void closure(JsonLines& out, const Closure& closure) {
    out.begin_object(Width::narrow);
    out.member("name", closure.name);
    out.member("kind", word_of(closure.kind, closure_words()));
    out.member("diameter_mm", closure.diameter_mm);
    out.member("length_mm", closure.length_mm);
    out.member("stiffness_n_mm", closure.stiffness_n_mm);
    out.maybe("capacity_n", closure.capacity_n);
    out.maybe("seconds", closure.seconds);
    out.member("price", closure.price);
    out.maybe("at_hand", closure.at_hand);
    out.rest(closure.unknown);
    out.end_object();
}

void tube(JsonLines& out, const Tube& tube) {
    out.begin_object(Width::narrow);
    out.member("name", tube.name);
    out.member("outside_mm", tube.outside_mm);
    out.member("wall_mm", tube.wall_mm);
    out.member("length_mm", tube.length_mm);
    out.member("price", tube.price);
    out.member_whole("at_hand", tube.at_hand);
    out.rest(tube.unknown);
    out.end_object();
}

void supply(JsonLines& out, const SupplyPack& pack) {
    out.begin_object(Width::narrow);
    out.member("supply", word_of(pack.supply, supply_words()));
    out.member("amount", pack.amount);
    out.member("price", pack.price);
    out.member("at_hand", pack.at_hand);
    out.rest(pack.unknown);
    out.end_object();
}

} // namespace

void write_shop(JsonLines& out, const Shop& shop) {
    out.key("shop");
    out.begin_object(Width::wide);
    out.member("temperature_c", shop.temperature_c);
    out.member("altitude_m", shop.altitude_m);
    out.member_whole("people", shop.people);
    out.member_whole("drivers", shop.drivers);
    out.member("seconds_per_closure", shop.seconds_per_closure);
    out.member("pour_l_s", shop.pour_l_s);
    out.maybe("pour_s", shop.pour_s);
    out.member("set_plate_s", shop.set_plate_s);
    out.member("container_ml", shop.container_ml);
    out.member("stir_room", shop.stir_room);
    out.maybe("mixer_ml", shop.mixer_ml);
    out.maybe("bucket_left_ml", shop.bucket_left_ml);
    const Shop usual; // files of shops that leave these alone stay as they were
    if (shop.scale_step_g != usual.scale_step_g) out.member("scale_step_g", shop.scale_step_g);
    if (shop.opens_h != usual.opens_h) out.member("opens_h", shop.opens_h);
    if (shop.closes_h != usual.closes_h) out.member("closes_h", shop.closes_h);
    if (shop.hour_price != usual.hour_price) out.member("hour_price", shop.hour_price);
    if (shop.margin != usual.margin) out.member("margin", shop.margin);
    out.member("saw_step_mm", shop.saw_step_mm);
    out.member("kerf_mm", shop.kerf_mm);
    write_numbers(out, "drills_mm", shop.drills_mm);
    out.maybe("start", shop.start);
    write_list(out, "boards", shop.boards, board);
    write_list(out, "stiffeners", shop.stiffeners, stiffener);
    write_list(out, "closures", shop.closures, closure);
    if (!shop.tubes.empty()) write_list(out, "tubes", shop.tubes, tube);
    if (!shop.supplies.empty()) write_list(out, "supplies", shop.supplies, supply);
    out.rest(shop.unknown);
    out.end_object();
}

} // namespace drawercast::job
