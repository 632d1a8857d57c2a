// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read_parts.h"
#include "job/words.h"

namespace drawercast::job {

namespace {

constexpr std::size_t most_kits = 100;
constexpr std::size_t most_cups = 100;

Kit read_kit(Reading& reading, JsonValue at) {
    Kit kit;
    Fields fields(reading, at, "/foam/kits/*");
    fields.require("name");
    fields.text("name", kit.name);
    fields.number("volume_ml", kit.volume_ml);
    fields.number("price", kit.price);
    fields.whole("at_hand", kit.at_hand);
    kit.unknown = fields.rest();
    return kit;
}

Cup read_cup(Reading& reading, JsonValue at, const char* scope) {
    Cup cup;
    Fields fields(reading, at, scope);
    fields.flag("use", cup.use);
    fields.length("diameter_mm", cup.diameter_mm);
    fields.number("liquid_g", cup.liquid_g);
    fields.length("risen_mm", cup.risen_mm);
    fields.number("start_s", cup.start_s);
    fields.number("half_s", cup.half_s);
    fields.number("full_s", cup.full_s);
    fields.number("parts_c", cup.parts_c);
    fields.number("room_c", cup.room_c);
    cup.unknown = fields.rest();
    if (!(cup.start_s < cup.half_s && cup.half_s < cup.full_s))
        reading.report(
            "cup-times", at, phrase("the cup's times do not follow one another"),
            phrase("Enter start before half before full rise, in seconds from the start of mixing"));
    return cup;
}

/// Times and stresses that must follow one another for any formula to make sense.
void check_foam(Reading& reading, JsonValue at, const Foam& foam) {
    if (!(foam.rise_s > foam.pot_life_s))
        reading.report("foam-times", at, phrase("the foam has risen before its pot life is over"),
                       phrase("Full rise must come after the pot life: check both times"));
    if (foam.stress40_kpa < foam.stress25_kpa)
        reading.report("foam-stress", at, phrase("the foam is softer at 40 % than at 25 % compression"),
                       phrase("Check the two stresses"));
}

StiffenerChoice read_stiffener_choice(Reading& reading, JsonValue at) {
    StiffenerChoice choice;
    Fields fields(reading, at, "/mold/stiffeners");
    fields.whole("count", choice.count);
    fields.text("name", choice.name);
    fields.word("along", choice.along, along_words());
    fields.flag("glued", choice.glued);
    choice.unknown = fields.rest();
    return choice;
}

} // namespace

Foam read_foam(Reading& reading, JsonValue at) {
    Foam foam;
    Fields fields(reading, at, "/foam");
    fields.text("name", foam.name);
    fields.number("expansion", foam.expansion);
    fields.number("reference_c", foam.reference_c);
    fields.number("ratio_a", foam.ratio_a);
    fields.number("ratio_b", foam.ratio_b);
    fields.number("density_a_g_ml", foam.density_a_g_ml);
    fields.number("density_b_g_ml", foam.density_b_g_ml);
    fields.maybe_number("overpack", foam.overpack, "auto");
    fields.number("mix_s", foam.mix_s);
    fields.number("pot_life_s", foam.pot_life_s);
    fields.number("rise_s", foam.rise_s);
    fields.number("demold_min", foam.demold_min);
    fields.number("shrinkage", foam.shrinkage);
    fields.number("pigment_of_b", foam.pigment_of_b);
    fields.number("stress25_kpa", foam.stress25_kpa);
    fields.number("stress40_kpa", foam.stress40_kpa);
    fields.number("viscosity_pa_s", foam.viscosity_pa_s);
    fields.maybe_number("activation_kj_mol", foam.activation_kj_mol);
    fields.number("mold_hotter_k", foam.mold_hotter_k);
    fields.word("firmness", foam.firmness, firmness_words());
    fields.flag("crush", foam.crush);
    fields.list("kits", most_kits, [&](JsonValue item) { foam.kits.push_back(read_kit(reading, item)); });
    fields.maybe_part("cup", [&](JsonValue part) { foam.cup = read_cup(reading, part, "/foam/cup"); });
    fields.list("cups", most_cups,
                [&](JsonValue item) { foam.cups.push_back(read_cup(reading, item, "/foam/cups/*")); });
    foam.unknown = fields.rest();
    check_foam(reading, at, foam);
    return foam;
}

Mold read_mold(Reading& reading, JsonValue at) {
    Mold mold;
    Fields fields(reading, at, "/mold");
    fields.flag("share_walls", mold.share_walls);
    fields.length("fillet_mm", mold.fillet_mm);
    fields.length("film_mm", mold.film_mm);
    fields.word("corner", mold.corner, corner_words());
    fields.flag("gasket", mold.gasket);
    fields.maybe_length("spacing_mm", mold.spacing_mm, "auto");
    fields.maybe_text("board", mold.board, "auto");
    fields.maybe_text("box_board", mold.box_board, "auto");
    fields.maybe_text("closure", mold.closure, "auto");
    fields.maybe_part(
        "stiffeners", [&](JsonValue part) { mold.stiffeners = read_stiffener_choice(reading, part); },
        "auto");
    fields.length("vent_spacing_mm", mold.vent_spacing_mm);
    fields.number("pressure_factor", mold.pressure_factor);
    mold.unknown = fields.rest();
    return mold;
}

Minimums read_minimums(Reading& reading, JsonValue at) {
    Minimums minimums;
    Fields fields(reading, at, "/minimums");
    fields.maybe_length("wall_mm", minimums.wall_mm);
    fields.maybe_number("wall_ratio", minimums.wall_ratio);
    fields.maybe_length("edge_mm", minimums.edge_mm);
    fields.maybe_length("floor_mm", minimums.floor_mm);
    minimums.unknown = fields.rest();
    return minimums;
}

} // namespace drawercast::job
