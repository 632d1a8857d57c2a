// SPDX-License-Identifier: GPL-3.0-or-later
#include "fuzz/targets.h"

#include "base/demand.h"
#include "base/length.h"
#include "job/read.h"
#include "job/write.h"

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

} // namespace drawercast::fuzz
