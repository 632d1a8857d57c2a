// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/demand.h"
#include "job/catalog.h"
#include "job/paste.h"
#include "job/read.h"
#include "job/write.h"

#include "fuzz/targets.h"

#include <algorithm>

namespace drawercast::fuzz {

namespace {

bool ink(char c) { return c != ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\0'; }

std::size_t letters(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) { return ink(c); }));
}

/// What was read, as the window would add it: all in one job, which costs as much to open as a hundred
/// objects.
job::Job with_all(const std::vector<job::PastedRow>& rows) {
    job::Job job = job::new_job({});
    for (const auto& row : rows) {
        if (!row.read) continue;
        job::Object object = *row.read;
        object.id = "pasted" + std::to_string(job.objects.size());
        job.objects.emplace_back(std::move(object));
    }
    return job;
}

} // namespace

void pasted_list(std::string_view bytes) {
    const auto table = job::paste_table(bytes);
    if (!table) {
        DRAWERCAST_DEMAND(!table.error().what.empty(), "a refusal says why");
        return;
    }
    std::size_t kept = letters(table->beyond);
    for (const auto& row : table->rows) kept += letters(row.text);
    DRAWERCAST_DEMAND(kept <= letters(bytes), "no row is made up");
    for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch}) {
        const auto rows = job::read_pasted(bytes, job::paste_units(units));
        if (!rows) continue;
        for (const auto& row : *rows)
            DRAWERCAST_DEMAND(row.read || !row.read.error().what.empty(), "a row that is not read says why");
        const job::Job job = with_all(*rows);
        if (job.objects.empty()) continue;
        const auto back = job::read_job(job::write_job(job));
        DRAWERCAST_DEMAND(back && *back == job, "pasted objects can be saved and opened");
    }
}

} // namespace drawercast::fuzz
