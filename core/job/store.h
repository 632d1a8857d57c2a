// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/file_system.h"
#include "job/job.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace drawercast::job {

struct Saved {
    std::optional<Problem> backup_problem; ///< the job is safe, its last version could not be kept beside it
};

/// Saves a job so that whatever happens the file holds the old job or the new one, whole: the text is read
/// back and compared before it touches the disk, written under another name in the same folder, synced, and
/// renamed over. The version before stays beside it as "NAME.before", as long as it can be read as a job and
/// is another one. Symbolic links are followed, the file's mode is kept; a file that may not be written to is
/// left alone. Problems: "unsavable" (the job itself), "file".
Expected<Saved> save_job(const Job& job, const std::string& path, FileSystem& files);
Expected<Saved> save_job(const Job& job, const std::string& path);

/// Puts a log into the job that stands in a file, leaving all else there, and the version before, as it is:
/// what was done is kept at once, whatever else is edited meanwhile. Returns what the file holds then.
/// Problems: those of reading it, "unsavable", "file".
Expected<Job> save_log(const std::vector<Mark>& log, const std::string& path);

/// The job in a file. A file that can't be read is one Problem of code "file".
ExpectedAll<Job> load_job(const std::string& path);

/// A whole file's bytes, at most `most` of them ("file-size").
Expected<std::string> read_file(const std::string& path, std::size_t most);

/// Replaces a file by `bytes`, whole or not at all; no backup. A device or a pipe is written to as it is.
Expected<void> write_file(const std::string& path, std::string_view bytes);

} // namespace drawercast::job
