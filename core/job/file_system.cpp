// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/file_system.h"

#include <array>
#include <climits>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace drawercast::job {

int FileSystem::open_new(const std::string& path, unsigned mode) {
    return ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, static_cast<mode_t>(mode));
}

long FileSystem::write(int file, const char* bytes, std::size_t count) { return ::write(file, bytes, count); }

int FileSystem::set_mode(int file, unsigned mode) { return ::fchmod(file, static_cast<mode_t>(mode)); }

int FileSystem::sync(int file) { return ::fsync(file); }

int FileSystem::close(int file) { return ::close(file); }

int FileSystem::rename(const std::string& from, const std::string& to) {
    return ::rename(from.c_str(), to.c_str());
}

int FileSystem::link(const std::string& from, const std::string& to) {
    return ::link(from.c_str(), to.c_str());
}

int FileSystem::remove(const std::string& path) { return ::unlink(path.c_str()); }

int FileSystem::sync_folder(const std::string& path) {
    const int folder = ::open(path.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0) return -1;
    const int answer = ::fsync(folder);
    const int error = errno;
    ::close(folder);
    errno = error;
    return answer;
}

int open_to_read(const std::string& path) { return ::open(path.c_str(), O_RDONLY | O_CLOEXEC); }
int open_to_write(const std::string& path) { return ::open(path.c_str(), O_WRONLY | O_CLOEXEC); }
long read_some(int file, char* room, std::size_t count) { return ::read(file, room, count); }
int close_file(int file) { return ::close(file); }

std::optional<Standing> look_at(const std::string& path) {
    constexpr unsigned permissions = 07777;
    constexpr unsigned anybody_writes = 0222;
    struct stat info {};
    if (::stat(path.c_str(), &info) != 0) return std::nullopt;
    Standing standing;
    standing.folder = S_ISDIR(info.st_mode);
    standing.plain = S_ISREG(info.st_mode);
    standing.mode = info.st_mode & permissions;
    standing.writable = (info.st_mode & anybody_writes) != 0 && ::access(path.c_str(), W_OK) == 0;
    return standing;
}

std::string link_at(const std::string& path) {
    std::array<char, PATH_MAX> room;
    const ssize_t count = ::readlink(path.c_str(), room.data(), room.size());
    return count <= 0 ? std::string() : std::string(room.data(), static_cast<std::size_t>(count));
}

std::string process_number() { return std::to_string(::getpid()); }

} // namespace drawercast::job
