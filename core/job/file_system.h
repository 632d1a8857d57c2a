// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cerrno>
#include <cstddef>
#include <optional>
#include <string>

// The only file of core that asks the operating system for more of files than standard C++ knows; for them
// another system wants another file_system.cpp and nothing else.

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

int open_to_read(const std::string& path);  ///< a handle, or −1 with errno
int open_to_write(const std::string& path); ///< a device or a pipe that is there
long read_some(int file, char* room, std::size_t count);
int close_file(int file);

/// What stands at a path, links followed.
struct Standing {
    bool folder = false;
    bool plain = true;     ///< an ordinary file
    unsigned mode = 0;     ///< its permissions
    bool writable = false; ///< by this user, and not locked against everybody
};
std::optional<Standing> look_at(const std::string& path); ///< nothing: nothing is there
std::string link_at(const std::string& path);             ///< where a symbolic link points; empty: it is none

/// Of this process, unlike every other that runs now.
std::string process_number();

/// Asks again where a signal came between.
template <class Call>
auto uninterrupted(Call call) {
    for (;;) {
        const auto answer = call();
        if (answer != -1 || errno != EINTR) return answer;
    }
}

} // namespace drawercast::job
