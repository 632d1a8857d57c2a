// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/file_system.h"

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

} // namespace drawercast::job
