// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/draft.h"

#include <atomic>
#include <cstring>
#include <utility>

namespace drawercast::job {

namespace {

constexpr unsigned new_file_mode = 0666; // less the user's umask

std::string folder_of(const std::string& path) {
    const auto slash = path.rfind('/');
    if (slash == std::string::npos) return ".";
    return slash == 0 ? "/" : path.substr(0, slash);
}

/// Where a chain of symbolic links ends, so that they stay links; the last one may point to nothing.
std::string resolved(std::string path) {
    constexpr int most_links = 40; // as many as the system follows
    for (int i = 0; i < most_links; ++i) {
        const std::string next = link_at(path);
        if (next.empty()) return path;
        path = next.front() == '/' ? next : folder_of(path) + "/" + next;
    }
    return path;
}

} // namespace

Problem file_problem(const std::string& path, const Phrase& what, const Phrase& fix) {
    return {"file", path, phrase("%1: %2", what, verbatim(std::strerror(errno))), fix};
}

Expected<Target> find_target(const std::string& path) {
    Target target{resolved(path), std::nullopt, true};
    const auto there = look_at(target.path);
    if (!there) return target;
    if (there->folder)
        return Problem{"file", path, phrase("this is a folder"), phrase("Give the file a name in it")};
    target.plain = there->plain;
    target.mode = there->mode;
    if (!there->writable)
        return Problem{"file", path, phrase("the file may not be written to"),
                       phrase("Save it under another name")};
    return target;
}

bool write_all(FileSystem& files, int file, std::string_view bytes) {
    while (!bytes.empty()) {
        const long count = uninterrupted([&] { return files.write(file, bytes.data(), bytes.size()); });
        if (count == 0) errno = ENOSPC; // no progress and no reason: a full disk, rather than try for ever
        if (count <= 0) return false;
        bytes.remove_prefix(static_cast<std::size_t>(count));
    }
    return true;
}

std::string draft_path(const std::string& path) {
    static std::atomic<unsigned> drafts{0};
    return path + ".part-" + process_number() + "-" + std::to_string(++drafts);
}

Draft::Draft(FileSystem& files, const Target& target)
    : files_(files), target_(target), path_(draft_path(target.path)) {
    files_.remove(path_); // left by a process of the same number that was killed
    file_ = uninterrupted([&] { return files_.open_new(path_, target_.mode.value_or(new_file_mode)); });
    there_ = file_ >= 0;
}

Draft::~Draft() { drop(); }

void Draft::drop() {
    const int error = errno; // the reason is still to be told
    if (file_ >= 0) files_.close(std::exchange(file_, -1));
    if (std::exchange(there_, false)) files_.remove(path_);
    errno = error;
}

bool Draft::fill(std::string_view bytes) {
    if (file_ < 0 || !write_all(files_, file_, bytes)) return false;
    if (target_.mode && uninterrupted([&] { return files_.set_mode(file_, *target_.mode); }) != 0)
        return false;
    if (uninterrupted([&] { return files_.sync(file_); }) != 0) return false;
    const int file =
        std::exchange(file_, -1); // never closed twice: Linux gives the handle up whatever it answers
    return files_.close(file) == 0 || errno == EINTR;
}

bool Draft::put_in_place() {
    if (uninterrupted([&] { return files_.rename(path_, target_.path); }) != 0) return false;
    there_ = false;
    // The new file is in place either way; this only makes sure of it should the power fail now. Some file
    // systems cannot.
    uninterrupted([&] { return files_.sync_folder(folder_of(target_.path)); });
    return true;
}

} // namespace drawercast::job
