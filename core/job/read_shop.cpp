// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read_parts.h"
#include "job/words.h"

#include <algorithm>

namespace drawercast::job {

namespace {

constexpr std::size_t most_entries = 1000;

} // namespace

Board read_board(Reading& reading, JsonValue at) {
    Board board;
    Fields fields(reading, at, "/shop/boards/*");
    fields.require("name");
    fields.text("name", board.name);
    fields.length("thickness_mm", board.thickness_mm);
    fields.number("elasticity_mpa", board.elasticity_mpa);
    fields.number("poisson", board.poisson);
    fields.number("rupture_mpa", board.rupture_mpa);
    fields.number("specific_gravity", board.specific_gravity);
    fields.pair("sheet_mm", board.sheet_length_mm, board.sheet_width_mm);
    fields.number("price", board.price);
    fields.whole("at_hand", board.at_hand);
    board.unknown = fields.rest();
    return board;
}

Stiffener read_stiffener(Reading& reading, JsonValue at) {
    Stiffener stiffener;
    Fields fields(reading, at, "/shop/stiffeners/*");
    fields.require("name");
    fields.text("name", stiffener.name);
    fields.pair("section_mm", stiffener.width_mm, stiffener.height_mm);
    fields.number("elasticity_mpa", stiffener.elasticity_mpa);
    fields.number("rupture_mpa", stiffener.rupture_mpa);
    fields.length("length_mm", stiffener.length_mm);
    fields.number("price", stiffener.price);
    stiffener.unknown = fields.rest();
    return stiffener;
}

Closure read_closure(Reading& reading, JsonValue at) {
    Closure closure;
    Fields fields(reading, at, "/shop/closures/*");
    fields.require("name");
    fields.text("name", closure.name);
    fields.word("kind", closure.kind, closure_words());
    fields.length("diameter_mm", closure.diameter_mm);
    fields.length("length_mm", closure.length_mm);
    fields.number("stiffness_n_mm", closure.stiffness_n_mm);
    fields.maybe_number("capacity_n", closure.capacity_n);
    fields.maybe_number("seconds", closure.seconds);
    fields.number("price", closure.price);
    fields.maybe_whole("at_hand", closure.at_hand);
    closure.unknown = fields.rest();
    if (closure.kind != ClosureKind::screw && !closure.capacity_n)
        reading.report("missing", at, phrase("has no capacity, and only screws have a formula for it"),
                       phrase("Enter the load it holds, from its data sheet"));
    return closure;
}

Tube read_tube(Reading& reading, JsonValue at) {
    Tube tube;
    Fields fields(reading, at, "/shop/tubes/*");
    fields.require("name");
    fields.text("name", tube.name);
    fields.length("outside_mm", tube.outside_mm);
    fields.length("wall_mm", tube.wall_mm);
    fields.length("length_mm", tube.length_mm);
    fields.number("price", tube.price);
    fields.whole("at_hand", tube.at_hand);
    tube.unknown = fields.rest();
    return tube;
}

SupplyPack read_supply(Reading& reading, JsonValue at) {
    SupplyPack pack;
    Fields fields(reading, at, "/shop/supplies/*");
    fields.require("supply");
    fields.word("supply", pack.supply, supply_words());
    fields.number("amount", pack.amount);
    fields.number("price", pack.price);
    fields.number("at_hand", pack.at_hand);
    pack.unknown = fields.rest();
    return pack;
}

Shop read_shop(Reading& reading, JsonValue at) {
    Shop shop;
    Fields fields(reading, at, "/shop");
    fields.number("temperature_c", shop.temperature_c);
    fields.number("altitude_m", shop.altitude_m);
    fields.whole("people", shop.people);
    fields.whole("drivers", shop.drivers);
    fields.number("seconds_per_closure", shop.seconds_per_closure);
    fields.number("pour_l_s", shop.pour_l_s);
    fields.maybe_number("pour_s", shop.pour_s);
    fields.number("set_plate_s", shop.set_plate_s);
    fields.number("container_ml", shop.container_ml);
    fields.number("stir_room", shop.stir_room);
    fields.maybe_number("mixer_ml", shop.mixer_ml);
    fields.maybe_number("bucket_left_ml", shop.bucket_left_ml);
    fields.number("scale_step_g", shop.scale_step_g);
    fields.number("opens_h", shop.opens_h);
    fields.number("closes_h", shop.closes_h);
    fields.number("hour_price", shop.hour_price);
    fields.number("margin", shop.margin);
    if (!(shop.opens_h < shop.closes_h))
        reading.report("shop-hours", at, phrase("the shop closes before it opens"),
                       phrase("Closing must be later than opening"));
    fields.length("saw_step_mm", shop.saw_step_mm);
    fields.length("kerf_mm", shop.kerf_mm);
    fields.lengths("drills_mm", shop.drills_mm);
    fields.maybe_text("start", shop.start);
    fields.list("boards", most_entries,
                [&](JsonValue item) { shop.boards.push_back(read_board(reading, item)); });
    fields.list("stiffeners", most_entries,
                [&](JsonValue item) { shop.stiffeners.push_back(read_stiffener(reading, item)); });
    fields.list("closures", most_entries,
                [&](JsonValue item) { shop.closures.push_back(read_closure(reading, item)); });
    fields.list("tubes", most_entries,
                [&](JsonValue item) { shop.tubes.push_back(read_tube(reading, item)); });
    fields.list("supplies", most_entries, [&](JsonValue item) {
        const SupplyPack pack = read_supply(reading, item);
        if (std::any_of(shop.supplies.begin(), shop.supplies.end(),
                        [&](const SupplyPack& known) { return known.supply == pack.supply; }))
            reading.report("supply-twice", item, phrase("a package of this supply is in the list already"),
                           phrase("Keep one of them"));
        shop.supplies.push_back(pack);
    });
    shop.unknown = fields.rest();
    return shop;
}

} // namespace drawercast::job
