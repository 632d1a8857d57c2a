// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/job.h"

#include <optional>
#include <string>
#include <string_view>

namespace drawercast::job {

/// The file operations a save is made of, so that a test can make each of them fail. All answer 0 or a
/// handle, or −1 with errno set, as POSIX does.
class FileSystem {
  public:
    virtual ~FileSystem() = default;
    virtual int open_new(const std::string& path, unsigned mode); ///< exclusive, for writing
    virtual long write(int file, const char* bytes, std::size_t count);
    virtual int sync(int file);
    virtual int close(int file);
    virtual int rename(const std::string& from, const std::string& to);
    virtual int link(const std::string& from, const std::string& to);
    virtual int remove(const std::string& path);
    virtual int sync_folder(const std::string& path);
};

struct Saved {
    std::optional<Problem> backup_problem; ///< the job is safe, its last version could not be kept beside it
};

/// Saves a job so that whatever happens the file holds the old job or the new one, whole: the text is read
/// back and compared before it touches the disk, written under another name in the same folder, synced, and
/// renamed over. The version before stays beside it as "NAME.before". Symbolic links are followed, the file's
/// mode is kept.
Expected<Saved> save_job(const Job& job, const std::string& path, FileSystem& files);
Expected<Saved> save_job(const Job& job, const std::string& path);

/// The job in a file. A file that can't be read is one Problem of code "file".
ExpectedAll<Job> load_job(const std::string& path);

/// A whole file's bytes, at most `most` of them.
Expected<std::string> read_file(const std::string& path, std::size_t most);

/// Replaces a file by `bytes`, whole or not at all; no backup.
Expected<void> write_file(const std::string& path, std::string_view bytes);

} // namespace drawercast::job
