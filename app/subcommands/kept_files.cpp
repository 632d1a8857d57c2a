// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/kept_files.h"

#include "job/json_tree.h"
#include "job/store.h"

#include <filesystem>
#include <system_error>

namespace drawercast::subcommands {

namespace {

bool writes_pdf(Verb verb) {
    return verb == Verb::templates || verb == Verb::summary || verb == Verb::measuring_sheet;
}

/// A job of any version, or one with a slip in it, is a maker's work too: so it is not read, only looked at.
bool looks_like_a_job(const std::string& path) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(path, error)) return false;
    const auto bytes = job::read_file(path, job::most_json_bytes);
    if (!bytes) return false;
    const auto first = bytes->find_first_not_of("\xEF\xBB\xBF \t\r\n");
    return first != std::string::npos && (*bytes)[first] == '{' &&
           bytes->find("\"drawercast-job\"") != std::string::npos;
}

} // namespace

/// A device or a pipe loses nothing, so only ordinary files count.
bool same_file(const std::string& a, const std::string& b) {
    std::error_code error;
    return std::filesystem::is_regular_file(a, error) && std::filesystem::equivalent(a, b, error);
}

Problem input_lost(const std::string& out) {
    return {"file", out, verbatim("this is the file that is read, and it would be lost"),
            verbatim("Give --out another name")};
}

std::optional<Problem> loses_a_file(const Command& command) {
    if (command.out.empty()) return std::nullopt;
    if (!command.job.empty() && same_file(command.out, command.job)) return input_lost(command.out);
    if (writes_pdf(command.verb) && looks_like_a_job(command.out))
        return Problem{"file", command.out, verbatim("this is a job, and a PDF would take its place"),
                       verbatim("Give --out another name")};
    return std::nullopt;
}

} // namespace drawercast::subcommands
