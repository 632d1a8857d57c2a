// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/check_report.h"

#include "base/without_controls.h"
#include "job/read.h"
#include "job/write.h"
#include "plan/sentences.h"

#include "sheets/check_words.h"

#include <algorithm>
#include <vector>

namespace drawercast::subcommands {

using layout::Severity;

namespace {

std::string padded(std::string text, std::size_t width) {
    text.resize(std::max(width, text.size()), ' ');
    return text;
}

std::string counted(long count, const char* one, const char* many) {
    return std::to_string(count) + (count == 1 ? one : many);
}

std::string counts(const std::vector<layout::Check>& checks) {
    const auto count = [&](Severity severity) {
        return std::count_if(checks.begin(), checks.end(), [&](const auto& check) {
            return check.severity == severity && !check.left_as_is;
        });
    };
    const auto left =
        std::count_if(checks.begin(), checks.end(), [](const auto& check) { return check.left_as_is; });
    std::string text = std::to_string(count(Severity::mend)) + " to mend";
    if (const auto looks = count(Severity::look)) text += ", " + std::to_string(looks) + " to look at";
    if (const auto notes = count(Severity::note)) text += ", " + counted(notes, " note", " notes");
    if (left > 0) text += ", " + std::to_string(left) + " left as is";
    return text;
}

std::string line_of(const layout::Check& check, const std::string& zone, const job::Job& job) {
    const std::string severity =
        check.left_as_is ? "left as is" : std::string(layout::text_of(check.severity));
    return "  " + padded(severity, 10) + "  " + padded(std::string(layout::text_of(check.code)), 16) + "  " +
           padded(zone, 4) + "  " + without_controls(english(plan::sentence(check, job))) + "\n";
}

/// What the file says under a name that is not known: a slip of the pen goes by the default, unseen.
std::string unknown_report(const job::UnknownKeys& keys) {
    const auto count = static_cast<long>(keys.paths.size() + keys.more);
    if (count == 0) return {};
    std::string report = "job file: " + counted(count, " note", " notes") + "\n";
    const std::string head = "  " + padded("note", 10) + "  " + padded("unknown-key", 16) + "        ";
    for (const std::string& path : keys.paths)
        report += head + "key not known here: " + without_controls(path) + ", kept but not used\n";
    if (keys.more > 0) report += head + "and " + std::to_string(keys.more) + " more\n";
    return report;
}

} // namespace

std::string check_report(const job::Job& job, const plan::Plan& plan) {
    std::string report;
    for (std::size_t i = 0; i < plan.drawers.size() && i < job.drawers.size(); ++i) {
        const auto& answer = plan.drawers[i];
        report +=
            without_controls(answer.id + " " + job.drawers[i]->name) + ": " + counts(answer.checks) + "\n";
        for (const auto& check : answer.checks)
            report += line_of(check, sheets::zone_of(check, answer, job.display_units), job);
    }
    if (!plan.checks.empty()) report += "whole job: " + counts(plan.checks) + "\n";
    for (const auto& check : plan.checks) report += line_of(check, {}, job);
    return report + unknown_report(job::unknown_keys(job::write_job(job)));
}

} // namespace drawercast::subcommands
