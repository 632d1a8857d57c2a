// SPDX-License-Identifier: GPL-3.0-or-later
#include "fuzz/targets.h"

#include "base/demand.h"
#include "base/length.h"
#include "job/read.h"
#include "job/svg_outlines.h"
#include "job/write.h"

#include "core/base/as_shown.h"

namespace drawercast::fuzz {

void read_job(std::string_view bytes) {
    const auto job = job::read_job(bytes);
    if (!job) {
        DRAWERCAST_DEMAND(!job.error().empty() && !job.error().front().what.empty(), "a refusal says why");
        return;
    }
    const auto text = job::write_job(*job);
    const auto back = job::read_job(text);
    DRAWERCAST_DEMAND(back && *back == *job, "a job that was read can be written and read again");
    DRAWERCAST_DEMAND(job::write_job(*back) == text, "writing again gives the same text");
}

void parse_length(std::string_view bytes) {
    for (const auto unit : {LengthUnit::mm, LengthUnit::inch, LengthUnit::inch_32})
        for (const auto mark : {DecimalMark::point, DecimalMark::comma}) {
            const auto mm = drawercast::parse_length(bytes, unit, mark);
            if (!mm) continue;
            const auto back = drawercast::parse_length(length_text(*mm, unit, mark), unit, mark);
            DRAWERCAST_DEMAND(back && *back == as_shown(*mm, unit), "a shown length can be typed back");
        }
}

void svg_outlines(std::string_view bytes) {
    const auto read = job::svg_outlines(bytes);
    if (!read) {
        DRAWERCAST_DEMAND(!read.error().what.empty(), "a refusal says why");
        return;
    }
    DRAWERCAST_DEMAND(!read->outlines.empty(), "a drawing without outlines is refused");
    for (const auto& outline : read->outlines) {
        DRAWERCAST_DEMAND(outline.polygon.corners.size() <= 5001, "corners are limited");
        const auto contour = shape::contour_of(outline.polygon);
        DRAWERCAST_DEMAND(!contour || shape::area(*contour) > 0, "an outline that is one has an area");
    }
}

} // namespace drawercast::fuzz
