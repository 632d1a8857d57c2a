// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/store.h"

#include "job/draft.h"
#include "job/json_tree.h"
#include "job/read.h"
#include "job/write.h"

#include <array>
#include <utility>

namespace drawercast::job {

namespace {

Phrase elsewhere() { return phrase("Save it in another folder, or make room on the disk"); }

/// Said outright: a Saved can be made of a Problem too.
Expected<Saved> refused(Problem problem) { return {boost::system::in_place_error, std::move(problem)}; }

Problem unsavable(const Problem& problem) {
    return {"unsavable", problem.where, phrase("the job would not open again: %1", problem.what),
            problem.fix};
}

Problem backup_problem(const Where& where, const Phrase& what, const Phrase& fix) {
    return {"backup", where, what, fix};
}

bool linked(FileSystem& files, const std::string& from, const std::string& to) {
    const std::string fresh = draft_path(to);
    files.remove(fresh); // left by a process of the same number that was killed
    if (files.link(from, fresh) != 0) return false;
    if (files.rename(fresh, to) == 0) return true;
    const int error = errno;
    files.remove(fresh);
    errno = error;
    return false;
}

bool copied(FileSystem& files, const std::string& bytes, const Target& to) {
    Draft copy(files, to);
    return copy.fill(bytes) && copy.put_in_place();
}

/// Keeps the version on disk under its own name, so that there is no moment without either: by a hard link,
/// or a copy on file systems without.
std::optional<Problem> keep_before(const Target& target, std::string_view text, FileSystem& files) {
    if (!target.mode) return std::nullopt; // the first save
    const Target kept{target.path + ".before", target.mode, true};
    const auto old = read_file(target.path, most_json_bytes);
    if (old && old->empty()) return std::nullopt; // a script has made sure of the name
    if (!old || !read_job(*old))
        return backup_problem(
            kept.path,
            phrase("the file that was there is no job that can be read, so the backup was left as it is"),
            phrase("The job itself is saved"));
    if (*old == text) return std::nullopt; // saved twice: the version before is an older one
    if (linked(files, target.path, kept.path) || copied(files, *old, kept)) return std::nullopt;
    const Problem problem =
        file_problem(kept.path, phrase("the version before could not be kept"),
                     phrase("The job itself is saved; make room for \"%1\"", verbatim(kept.path)));
    return backup_problem(problem.where, problem.what, problem.fix);
}

} // namespace

Expected<Saved> save_job(const Job& job, const std::string& path, FileSystem& files) {
    const auto text = checked_text(job);
    if (!text) return refused(unsavable(text.error().front()));
    const auto target = find_target(path);
    if (!target) return refused(target.error());
    if (!target->plain)
        return refused({"file", path, phrase("this is no file that a job can be kept in"),
                        phrase("Give it another name")});
    Draft draft(files, *target);
    if (!draft.fill(*text)) return refused(file_problem(path, phrase("could not be written"), elsewhere()));
    Saved saved{keep_before(*target, *text, files)}; // once the new one is safely on the disk beside it
    if (!draft.put_in_place())
        return refused(file_problem(path, phrase("could not be replaced"), elsewhere()));
    return saved;
}

Expected<Saved> save_job(const Job& job, const std::string& path) {
    FileSystem files;
    return save_job(job, path, files);
}

Expected<Job> save_log(const std::vector<Mark>& log, const std::string& path) {
    auto there = load_job(path);
    if (!there) return there.error().front();
    there->log = log;
    const auto text = checked_text(*there);
    if (!text) return unsavable(text.error().front());
    const auto done = write_file(path, *text);
    if (!done) return done.error();
    return std::move(*there);
}

Expected<std::string> read_file(const std::string& path, std::size_t most) {
    const int file = uninterrupted([&] { return open_to_read(path); });
    if (file < 0)
        return file_problem(path, phrase("could not be opened"), phrase("Check the name and the folder"));
    std::string bytes;
    std::array<char, 65536> room;
    long count = 0;
    do {
        count = uninterrupted([&] { return read_some(file, room.data(), room.size()); });
        if (count > 0) bytes.append(room.data(), static_cast<std::size_t>(count));
    } while (count > 0 && bytes.size() <= most);
    const int error = errno;
    close_file(file);
    errno = error;
    if (count < 0)
        return file_problem(path, phrase("could not be read"),
                            phrase("Check that it is a file you may read"));
    if (bytes.size() > most)
        return Problem{"file-size", path,
                       phrase("is larger than %1 MB", figure(std::to_string(most / 1024 / 1024))),
                       phrase("Check that this is the right file")};
    return bytes;
}

ExpectedAll<Job> load_job(const std::string& path) {
    const auto bytes = read_file(path, most_json_bytes);
    if (!bytes) return Problems{bytes.error()};
    return read_job(*bytes);
}

Expected<void> write_file(const std::string& path, std::string_view bytes) {
    FileSystem files;
    const auto target = find_target(path);
    if (!target) return target.error();
    if (target->plain) {
        Draft draft(files, *target);
        if (draft.fill(bytes) && draft.put_in_place()) return {};
        return file_problem(path, phrase("could not be written"), elsewhere());
    }
    const int file = uninterrupted([&] { return open_to_write(path); });
    bool written = file >= 0 && write_all(files, file, bytes);
    if (file >= 0 && close_file(file) != 0) written = false;
    if (!written) return file_problem(path, phrase("could not be written"), phrase("Give it another name"));
    return {};
}

} // namespace drawercast::job
