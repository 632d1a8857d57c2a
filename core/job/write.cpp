// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/write.h"

#include "job/words.h"
#include "job/write_parts.h"

namespace drawercast::job {

std::string write_job(const Job& job) {
    JsonLines out;
    out.begin_object(Width::wide);
    out.member("format", std::string_view("drawercast-job"));
    out.member_whole("version", format_version);
    out.member("title", job.title);
    out.member_whole("revision", job.revision);
    out.member("display_units", word_of(job.display_units, unit_words()));
    out.member("currency", job.currency);
    write_shop(out, *job.shop);
    out.key("foam");
    write_foam(out, *job.foam);
    write_mold(out, job.mold);
    write_minimums(out, job.minimums);
    write_list(out, "objects", job.objects, [](JsonLines& to, const auto& item) { write_object(to, *item); });
    write_list(out, "drawers", job.drawers, [](JsonLines& to, const auto& item) { write_drawer(to, *item); });
    write_list(out, "left_as_is", job.left_as_is, write_left_as_is);
    write_list(out, "as_built", job.as_built, write_as_built);
    write_list(out, "casts", job.casts, write_cast);
    write_list(out, "log", job.log, write_mark);
    out.rest(job.unknown);
    out.end_object();
    return out.take();
}

} // namespace drawercast::job
