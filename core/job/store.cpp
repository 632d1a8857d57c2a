// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/store.h"

#include "job/json_tree.h"
#include "job/read.h"
#include "job/write.h"

#include <array>
#include <cerrno>
#include <climits>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace drawercast::job {

namespace {

constexpr unsigned new_file_mode = 0666; // less the user's umask

/// Asks again where a signal came between.
template <class Call>
auto uninterrupted(Call call) {
    for (;;) {
        const auto answer = call();
        if (answer != -1 || errno != EINTR) return answer;
    }
}

std::string folder_of(const std::string& path) {
    const auto slash = path.rfind('/');
    if (slash == std::string::npos) return ".";
    return slash == 0 ? "/" : path.substr(0, slash);
}

Problem file_problem(const std::string& path, const std::string& what, const std::string& fix) {
    return {"file", path, what + ": " + std::strerror(errno), fix};
}

/// What `path` really is: where a symbolic link points, so that it stays a link. A link to nothing is
/// followed one step.
std::string resolved(const std::string& path) {
    std::array<char, PATH_MAX> room;
    if (::realpath(path.c_str(), room.data()) != nullptr) return room.data();
    const ssize_t count = ::readlink(path.c_str(), room.data(), room.size());
    if (count <= 0) return path;
    const std::string target(room.data(), static_cast<std::size_t>(count));
    return target.front() == '/' ? target : folder_of(path) + "/" + target;
}

/// A file being written under another name; taken away again unless it was kept.
class Draft {
  public:
    Draft(FileSystem& files, std::string path, unsigned mode)
        : files_(files), path_(std::move(path)),
          file_(uninterrupted([&] { return files_.open_new(path_, mode); })) {}
    Draft(const Draft&) = delete;
    Draft& operator=(const Draft&) = delete;
    ~Draft() {
        if (file_ >= 0) files_.close(file_);
        if (made_ && !kept_) files_.remove(path_);
    }

    bool fill(std::string_view bytes) {
        if (file_ < 0) return false;
        made_ = true;
        while (!bytes.empty()) {
            const long count = uninterrupted([&] { return files_.write(file_, bytes.data(), bytes.size()); });
            if (count < 0) return false;
            if (count == 0) {
                errno = ENOSPC; // no progress and no reason: treat it as a full disk rather than try for ever
                return false;
            }
            bytes.remove_prefix(static_cast<std::size_t>(count));
        }
        if (uninterrupted([&] { return files_.sync(file_); }) != 0) return false;
        const int file = std::exchange(file_, -1);
        return files_.close(file) == 0; // never retried: after EINTR the handle is gone on Linux
    }
    bool put_over(const std::string& target) {
        if (uninterrupted([&] { return files_.rename(path_, target); }) != 0) return false;
        kept_ = true;
        return true;
    }

  private:
    FileSystem& files_;
    std::string path_;
    int file_;
    bool made_ = false;
    bool kept_ = false;
};

std::string draft_name(const std::string& target) { return target + ".part-" + std::to_string(::getpid()); }

/// Keeps the version on disk under its own name; a hard link, so that there is no moment without either.
std::optional<Problem> keep_before(const std::string& target, FileSystem& files) {
    struct stat info {};
    if (::stat(target.c_str(), &info) != 0) return std::nullopt; // the first save
    const std::string kept = target + ".before";
    const std::string fresh = kept + ".part-" + std::to_string(::getpid());
    files.remove(fresh);
    if (files.link(target, fresh) == 0) {
        if (files.rename(fresh, kept) == 0) return std::nullopt;
    } else if (const auto bytes = read_file(target, most_json_bytes);
               bytes) { // file systems without hard links
        Draft draft(files, fresh, info.st_mode & 07777);
        if (draft.fill(*bytes) && draft.put_over(kept)) return std::nullopt;
    }
    Problem problem = file_problem(kept, "the version before could not be kept",
                                   "The job itself is saved; make room there");
    problem.code = "backup";
    files.remove(fresh);
    return problem;
}

Expected<void> replace_file(const std::string& target, std::string_view bytes, FileSystem& files) {
    struct stat info {};
    const bool known = ::stat(target.c_str(), &info) == 0;
    const std::string draft_path = draft_name(target);
    files.remove(draft_path); // of a run with the same number that was killed
    Draft draft(files, draft_path, known ? info.st_mode & 07777 : new_file_mode);
    if (!draft.fill(bytes))
        return file_problem(target, "could not be written",
                            "Save it in another folder, or make room on the disk");
    if (known && ::chmod(draft_path.c_str(), info.st_mode & 07777) != 0) // the umask took bits from it
        return file_problem(target, "its mode could not be kept", "Save it in another folder");
    if (!draft.put_over(target))
        return file_problem(target, "could not be replaced", "Save it in another folder");
    files.sync_folder(
        folder_of(target)); // the new job is in place either way; this only hurries it to the disk
    return {};
}

/// Said outright: a Saved can be made of a Problem too.
Expected<Saved> refused(Problem problem) { return {boost::system::in_place_error, std::move(problem)}; }

} // namespace

int FileSystem::open_new(const std::string& path, unsigned mode) {
    return ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, static_cast<mode_t>(mode));
}
long FileSystem::write(int file, const char* bytes, std::size_t count) { return ::write(file, bytes, count); }
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
    ::close(folder);
    return answer;
}

Expected<Saved> save_job(const Job& job, const std::string& path, FileSystem& files) {
    const std::string text = write_job(job);
    const auto again = read_job(text);
    if (!again)
        return refused({"unsavable", again.error().front().where,
                        "the job would not open again: " + again.error().front().what,
                        again.error().front().fix});
    if (!(*again == job))
        return refused({"unsavable", path, "the job would not open as it is now",
                        "Undo the last change and save again; this is a fault of the program"});
    const std::string target = resolved(path);
    Saved saved{keep_before(target, files)};
    if (const auto written = replace_file(target, text, files); !written) return refused(written.error());
    return saved;
}

Expected<Saved> save_job(const Job& job, const std::string& path) {
    FileSystem files;
    return save_job(job, path, files);
}

Expected<std::string> read_file(const std::string& path, std::size_t most) {
    const int file = uninterrupted([&] { return ::open(path.c_str(), O_RDONLY | O_CLOEXEC); });
    if (file < 0) return file_problem(path, "could not be opened", "Check the name and the folder");
    std::string bytes;
    std::array<char, 65536> room;
    for (;;) {
        const ssize_t count = uninterrupted([&] { return ::read(file, room.data(), room.size()); });
        if (count < 0) {
            const Problem problem =
                file_problem(path, "could not be read", "Check that it is a file you may read");
            ::close(file);
            return problem;
        }
        if (count == 0) break;
        bytes.append(room.data(), static_cast<std::size_t>(count));
        if (bytes.size() > most) {
            ::close(file);
            return Problem{"file-size", path, "is larger than any job", "Check that this is the right file"};
        }
    }
    ::close(file);
    return bytes;
}

ExpectedAll<Job> load_job(const std::string& path) {
    const auto bytes = read_file(path, most_json_bytes);
    if (!bytes) return Problems{bytes.error()};
    return read_job(*bytes);
}

Expected<void> write_file(const std::string& path, std::string_view bytes) {
    FileSystem files;
    return replace_file(resolved(path), bytes, files);
}

} // namespace drawercast::job
