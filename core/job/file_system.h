// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cerrno>
#include <cstddef>
#include <string>

namespace drawercast::job {

/// The operations a save is made of, so that a test can make each of them fail or the process end at it. All
/// answer 0, a handle or a count, or −1 with errno set, as POSIX does.
class FileSystem {
  public:
    virtual ~FileSystem() = default;
    virtual int open_new(const std::string& path, unsigned mode); ///< exclusive, for writing
    virtual long write(int file, const char* bytes, std::size_t count);
    virtual int set_mode(int file, unsigned mode);
    virtual int sync(int file);
    virtual int close(int file);
    virtual int rename(const std::string& from, const std::string& to);
    virtual int link(const std::string& from, const std::string& to);
    virtual int remove(const std::string& path);
    virtual int sync_folder(const std::string& path);
};

/// Asks again where a signal came between.
template <class Call>
auto uninterrupted(Call call) {
    for (;;) {
        const auto answer = call();
        if (answer != -1 || errno != EINTR) return answer;
    }
}

} // namespace drawercast::job
