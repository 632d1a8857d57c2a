// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/file_system.h"

#include <optional>
#include <string>
#include <string_view>

namespace drawercast::job {

/// Where a file is to be saved, links followed, and what is there now.
struct Target {
    std::string path;
    std::optional<unsigned> mode; ///< permissions of the file there; nothing: there is none
    bool plain = true;            ///< false: a device or a pipe, which is written to, not replaced
};

/// Refuses a folder, and a file that is not to be written (a rename would replace it all the same).
Expected<Target> find_target(const std::string& path);

/// "PATH: WHAT: reason of errno".
Problem file_problem(const std::string& path, const Phrase& what, const Phrase& fix);

/// A name beside `path`, of this process and of this call: a worker may save beside the window.
std::string draft_path(const std::string& path);

/// A file written under another name in the target's folder, then put in its place by a rename; taken away
/// again, errno kept, where it does not get that far. At every moment the target is the old file or the new
/// one, whole.
class Draft {
  public:
    Draft(FileSystem& files, const Target& target);
    Draft(const Draft&) = delete;
    Draft& operator=(const Draft&) = delete;
    ~Draft();

    bool fill(std::string_view bytes); ///< writes, gives it the target's mode, syncs and closes; false: errno
    bool put_in_place();               ///< renames over the target and syncs the folder; false: errno

  private:
    void drop();

    FileSystem& files_;
    Target target_;
    std::string path_;
    int file_ = -1;
    bool there_ = false;
};

/// Writes all of `bytes`; false with errno set.
bool write_all(FileSystem& files, int file, std::string_view bytes);

} // namespace drawercast::job
