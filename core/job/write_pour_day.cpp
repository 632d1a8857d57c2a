// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/write_parts.h"

namespace drawercast::job {

namespace {

void built_block(JsonLines& out, const BuiltBlock& block) {
    out.begin_object(Width::narrow);
    out.member("pocket", block.pocket);
    out.member_whole("body", block.body);
    out.maybe("height_mm", block.height_mm);
    out.member("grown_mm", block.grown_mm);
    out.rest(block.unknown);
    out.end_object();
}

void cast_fit(JsonLines& out, const CastFit& fit) {
    out.begin_object(Width::narrow);
    out.member("pocket", fit.pocket);
    out.member("wider_mm", fit.wider_mm);
    out.rest(fit.unknown);
    out.end_object();
}

} // namespace

void write_as_built(JsonLines& out, const AsBuilt& built) {
    out.begin_object(Width::wide);
    out.member("drawer", built.drawer);
    out.maybe("width_mm", built.width_mm);
    out.maybe("depth_mm", built.depth_mm);
    write_numbers(out, "walls_mm", built.walls_mm);
    write_list(out, "blocks", built.blocks, built_block);
    out.member("note", built.note);
    out.rest(built.unknown);
    out.end_object();
}

void write_cast(JsonLines& out, const Cast& cast) {
    out.begin_object(Width::wide);
    out.member("drawer", cast.drawer);
    out.member("foam", cast.foam);
    out.member("day", cast.day);
    out.maybe("mixed_g", cast.mixed_g);
    out.maybe("cast_g", cast.cast_g);
    out.maybe("trimmed_g", cast.trimmed_g);
    out.maybe("plugs_g", cast.plugs_g);
    out.maybe("plugs_planned_ml", cast.plugs_planned_ml);
    out.maybe("viscosity_pa_s", cast.viscosity_pa_s);
    out.member_whole("batches", cast.batches);
    out.maybe("bow_mm", cast.bow_mm);
    out.maybe("bar_mm", cast.bar_mm);
    out.maybe("bar_cured_mm", cast.bar_cured_mm);
    out.maybe("wax_g", cast.wax_g);
    out.maybe("clay_g", cast.clay_g);
    out.member_flag("new_holes", cast.new_holes);
    write_list(out, "fits", cast.fits, cast_fit);
    out.member("note", cast.note);
    out.rest(cast.unknown);
    out.end_object();
}

void write_mark(JsonLines& out, const Mark& mark) {
    out.begin_object(Width::narrow);
    out.member("drawer", mark.drawer);
    out.member("step", mark.step);
    out.member("at_s", mark.at_s);
    if (mark.back) out.member_flag("back", mark.back);
    out.rest(mark.unknown);
    out.end_object();
}

} // namespace drawercast::job
