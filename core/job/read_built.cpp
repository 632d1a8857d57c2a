// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read_parts.h"

namespace drawercast::job {

namespace {

constexpr std::size_t most_built_blocks = 5000;

BuiltBlock read_built_block(Reading& reading, JsonValue at) {
    BuiltBlock block;
    Fields fields(reading, at, "/as_built/*/blocks/*");
    fields.require("pocket");
    fields.text("pocket", block.pocket);
    fields.whole("body", block.body);
    fields.maybe_length("height_mm", block.height_mm);
    fields.length("grown_mm", block.grown_mm);
    block.unknown = fields.rest();
    return block;
}

} // namespace

AsBuilt read_as_built(Reading& reading, JsonValue at) {
    AsBuilt built;
    Fields fields(reading, at, "/as_built/*");
    fields.require("drawer");
    fields.text("drawer", built.drawer);
    fields.maybe_length("width_mm", built.width_mm);
    fields.maybe_length("depth_mm", built.depth_mm);
    fields.lengths("walls_mm", built.walls_mm);
    fields.list("blocks", most_built_blocks,
                [&](JsonValue item) { built.blocks.push_back(read_built_block(reading, item)); });
    fields.text("note", built.note);
    built.unknown = fields.rest();
    return built;
}

} // namespace drawercast::job
