// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read_parts.h"

namespace drawercast::job {

namespace {

constexpr std::size_t most_fits = 5000;

CastFit read_fit(Reading& reading, JsonValue at) {
    CastFit fit;
    Fields fields(reading, at, "/casts/*/fits/*");
    fields.text("pocket", fit.pocket);
    fields.length("wider_mm", fit.wider_mm);
    fit.unknown = fields.rest();
    return fit;
}

} // namespace

Cast read_cast(Reading& reading, JsonValue at) {
    Cast cast;
    Fields fields(reading, at, "/casts/*");
    fields.text("drawer", cast.drawer);
    fields.text("foam", cast.foam);
    fields.text("day", cast.day);
    fields.maybe_number("mixed_g", cast.mixed_g);
    fields.maybe_number("cast_g", cast.cast_g);
    fields.maybe_number("trimmed_g", cast.trimmed_g);
    fields.maybe_number("plugs_g", cast.plugs_g);
    fields.maybe_number("plugs_planned_ml", cast.plugs_planned_ml);
    fields.maybe_number("viscosity_pa_s", cast.viscosity_pa_s);
    fields.whole("batches", cast.batches);
    fields.maybe_length("bow_mm", cast.bow_mm);
    fields.maybe_length("bar_mm", cast.bar_mm);
    fields.maybe_length("bar_cured_mm", cast.bar_cured_mm);
    fields.maybe_number("wax_g", cast.wax_g);
    fields.maybe_number("clay_g", cast.clay_g);
    fields.flag("new_holes", cast.new_holes);
    fields.list("fits", most_fits, [&](JsonValue item) { cast.fits.push_back(read_fit(reading, item)); });
    fields.text("note", cast.note);
    cast.unknown = fields.rest();
    return cast;
}

Mark read_mark(Reading& reading, JsonValue at) {
    Mark mark;
    Fields fields(reading, at, "/log/*");
    fields.text("drawer", mark.drawer);
    fields.text("step", mark.step);
    fields.number("at_s", mark.at_s);
    fields.flag("back", mark.back);
    mark.unknown = fields.rest();
    return mark;
}

} // namespace drawercast::job
