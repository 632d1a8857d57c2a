// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/store.h"
#include "job/write.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <random>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace drawercast::job {
namespace {

namespace fs = std::filesystem;

class Store : public ::testing::Test {
  protected:
    void SetUp() override {
        std::string pattern = (fs::temp_directory_path() / "drawercast-store-XXXXXX").string();
        ASSERT_NE(::mkdtemp(pattern.data()), nullptr);
        folder_ = pattern;
        path_ = (folder_ / "job.drawercast.json").string();
    }
    void TearDown() override { fs::remove_all(folder_); }

    static Job job_of(int revision) {
        Job job = new_job({});
        job.revision = revision;
        return job;
    }
    std::size_t files() const {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
    }

    int leftovers() const {
        int count = 0;
        for (const auto& entry : fs::directory_iterator(folder_))
            if (entry.path().string().find(".part-") != std::string::npos) ++count;
        return count;
    }

    fs::path folder_;
    std::string path_;
};

TEST_F(Store, saves_and_loads) {
    const Job job = job_of(3);
    const auto saved = save_job(job, path_);
    ASSERT_TRUE(saved);
    EXPECT_FALSE(saved->backup_problem);
    const auto back = load_job(path_);
    ASSERT_TRUE(back);
    EXPECT_EQ(*back, job);
    EXPECT_EQ(files(), 1u);
}

TEST_F(Store, keeps_the_version_before) {
    ASSERT_TRUE(save_job(job_of(1), path_));
    ASSERT_TRUE(save_job(job_of(2), path_));
    ASSERT_TRUE(save_job(job_of(3), path_));
    EXPECT_EQ(load_job(path_)->revision, 3);
    EXPECT_EQ(load_job(path_ + ".before")->revision, 2);
    EXPECT_EQ(files(), 2u);
}

TEST_F(Store, keeps_mode_and_link) {
    const std::string real = (folder_ / "real.json").string();
    ASSERT_TRUE(save_job(job_of(1), real));
    ASSERT_EQ(::chmod(real.c_str(), 0640), 0);
    fs::create_symlink("real.json", path_);
    ASSERT_TRUE(save_job(job_of(2), path_));
    EXPECT_TRUE(fs::is_symlink(path_));
    EXPECT_EQ(load_job(real)->revision, 2);
    struct stat info {};
    ASSERT_EQ(::stat(real.c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 07777, 0640u);
}

TEST_F(Store, a_vanished_folder_is_said) {
    const auto saved = save_job(job_of(1), (folder_ / "gone" / "job.json").string());
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, "file");
    EXPECT_FALSE(load_job((folder_ / "gone").string()));
    EXPECT_FALSE(load_job(folder_.string())); // a folder is no job
}

TEST_F(Store, a_file_that_may_not_be_written_is_left_alone) {
    ASSERT_TRUE(save_job(job_of(1), path_));
    ASSERT_EQ(::chmod(path_.c_str(), 0444), 0); // a rename would replace it all the same
    const auto saved = save_job(job_of(2), path_);
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, "file");
    EXPECT_EQ(load_job(path_)->revision, 1);
    EXPECT_EQ(files(), 1u);
    EXPECT_FALSE(save_job(job_of(2), folder_.string()));
    EXPECT_FALSE(save_job(job_of(2), "/dev/null"));
}

TEST_F(Store, a_folder_that_may_not_be_written_is_said) {
    ASSERT_EQ(::chmod(folder_.c_str(), 0555), 0);
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        constexpr uid_t nobody = 65534; // nothing is forbidden to root
        if (::geteuid() == 0 && ::setuid(nobody) != 0) ::_exit(2);
        const auto saved = save_job(job_of(1), path_);
        ::_exit(!saved && saved.error().code == "file" ? 0 : 1);
    }
    int status = 1;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    EXPECT_EQ(status, 0);
    ASSERT_EQ(::chmod(folder_.c_str(), 0755), 0);
    EXPECT_EQ(files(), 0u);
}

TEST_F(Store, links_are_followed_to_the_end_even_to_nothing) {
    fs::create_directory(folder_ / "far");
    fs::create_symlink("far/job.json", folder_ / "middle");
    fs::create_symlink("middle", path_);
    ASSERT_TRUE(save_job(job_of(1), path_)); // nothing is there yet
    ASSERT_TRUE(save_job(job_of(2), path_));
    EXPECT_TRUE(fs::is_symlink(path_));
    EXPECT_TRUE(fs::is_symlink(folder_ / "middle"));
    EXPECT_EQ(load_job((folder_ / "far/job.json").string())->revision, 2);
    EXPECT_EQ(load_job((folder_ / "far/job.json.before").string())->revision, 1);
}

TEST_F(Store, only_a_good_and_other_version_becomes_the_backup) {
    ASSERT_TRUE(save_job(job_of(1), path_));
    ASSERT_TRUE(save_job(job_of(2), path_));
    ASSERT_TRUE(save_job(job_of(2), path_)); // saved twice
    EXPECT_EQ(load_job(path_ + ".before")->revision, 1);
    std::ofstream(path_) << "{ torn off";
    const auto saved = save_job(job_of(3), path_);
    ASSERT_TRUE(saved);
    ASSERT_TRUE(saved->backup_problem);
    EXPECT_EQ(saved->backup_problem->code, "backup");
    EXPECT_EQ(load_job(path_)->revision, 3);
    EXPECT_EQ(load_job(path_ + ".before")->revision, 1);
    std::ofstream(path_).close(); // as a script leaves it that makes sure of a name
    EXPECT_FALSE(save_job(job_of(4), path_)->backup_problem);
    EXPECT_EQ(load_job(path_ + ".before")->revision, 1);
}

/// Does something else at the n-th operation: fails it, or ends the process before it.
class Tampered : public FileSystem {
  public:
    explicit Tampered(int at) : at_(at) {}
    int open_new(const std::string& path, unsigned mode) override {
        return tampers() ? -1 : FileSystem::open_new(path, mode);
    }
    long write(int file, const char* bytes, std::size_t count) override {
        return tampers() ? -1
                         : FileSystem::write(file, bytes, std::min<std::size_t>(count, 1500)); // short writes
    }
    int set_mode(int file, unsigned mode) override {
        return tampers() ? -1 : FileSystem::set_mode(file, mode);
    }
    int sync(int file) override { return tampers() ? -1 : FileSystem::sync(file); }
    int close(int file) override {
        const bool failed = tampers();
        const int error = errno;
        const int answer = FileSystem::close(file);
        errno = error;
        return failed ? -1 : answer;
    }
    int rename(const std::string& from, const std::string& to) override {
        return tampers() ? -1 : FileSystem::rename(from, to);
    }
    int link(const std::string& from, const std::string& to) override {
        return no_links || tampers() ? -1 : FileSystem::link(from, to);
    }
    int sync_folder(const std::string& path) override {
        return tampers() ? -1 : FileSystem::sync_folder(path);
    }
    int operations() const { return done_; }
    bool no_links = false;

  protected:
    virtual void tamper() {} ///< sets errno, or does not return

  private:
    bool tampers() {
        if (done_++ != at_) return false;
        tamper();
        return true;
    }
    int at_;
    int done_ = 0;
};

class Failing : public Tampered { ///< the way a full disk or an unplugged one fails; or a signal comes
  public:
    Failing(int at, int error) : Tampered(at), error_(error) {}

  private:
    void tamper() override { errno = error_; }
    int error_;
};

class Killed : public Tampered { ///< the way kill -9 or a power cut ends it
  public:
    using Tampered::Tampered;

  private:
    void tamper() override { ::_exit(0); }
};

TEST_F(Store, whatever_step_fails_the_old_or_the_new_job_is_there_whole) {
    for (const bool no_links : {false, true}) {
        ASSERT_TRUE(save_job(job_of(1), path_));
        Tampered counting(-1);
        counting.no_links = no_links;
        ASSERT_TRUE(save_job(job_of(2), path_, counting));
        EXPECT_GE(counting.operations(), 8);
        for (const int error : {ENOSPC, EIO, EACCES, EROFS})
            for (int step = 0; step < counting.operations(); ++step) {
                SCOPED_TRACE(::testing::Message() << "step " << step << ", errno " << error);
                fs::remove(path_);
                fs::remove(path_ + ".before");
                ASSERT_TRUE(save_job(job_of(1), path_));
                Failing failing(step, error);
                failing.no_links = no_links;
                const auto saved = save_job(job_of(2), path_, failing);
                const auto now = load_job(path_);
                ASSERT_TRUE(now);
                EXPECT_EQ(now->revision, saved ? 2 : 1);
                EXPECT_EQ(leftovers(), 0);
                if (saved && !saved->backup_problem) {
                    EXPECT_EQ(load_job(path_ + ".before")->revision, 1);
                }
                if (!saved) {
                    EXPECT_NE(english(saved.error().what).find(std::strerror(error)), std::string::npos);
                }
            }
    }
}

TEST_F(Store, whenever_the_process_ends_the_old_or_the_new_job_is_there_whole) {
    ASSERT_TRUE(save_job(job_of(1), path_));
    Tampered counting(-1);
    ASSERT_TRUE(save_job(job_of(2), path_, counting));
    int old = 0;
    for (int step = 0; step < counting.operations(); ++step) {
        SCOPED_TRACE(step);
        ASSERT_TRUE(save_job(job_of(1), path_));
        const pid_t child = ::fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            Killed killed(step);
            save_job(job_of(2), path_, killed);
            ::_exit(1); // not reached: it ends at its step
        }
        int status = 0;
        ASSERT_EQ(::waitpid(child, &status, 0), child);
        ASSERT_EQ(status, 0);
        const auto now = load_job(path_);
        ASSERT_TRUE(now);
        if (now->revision == 1) ++old;
        ASSERT_TRUE(save_job(job_of(3), path_)); // and saving goes on
        EXPECT_EQ(load_job(path_)->revision, 3);
    }
    EXPECT_EQ(old, counting.operations() - 1); // the new one is there only once it was renamed
}

TEST_F(Store, killed_at_random_moments) {
    const int kills = std::getenv("DRAWERCAST_LONG") != nullptr ? 1000 : 200;
    ASSERT_TRUE(save_job(job_of(0), path_));
    std::mt19937 random(6);
    for (int i = 0; i < kills; ++i) {
        const pid_t child = ::fork();
        ASSERT_GE(child, 0);
        if (child == 0)
            for (int revision = 1;; ++revision) save_job(job_of(revision % 1000), path_);
        ::usleep(std::uniform_int_distribution<useconds_t>(500, 20'000)(random));
        ::kill(child, SIGKILL);
        ::waitpid(child, nullptr, 0);
        ASSERT_TRUE(load_job(path_)) << "after " << i;
    }
}

TEST_F(Store, an_interrupted_call_is_asked_again) {
    ASSERT_TRUE(save_job(job_of(1), path_));
    Tampered counting(-1);
    ASSERT_TRUE(save_job(job_of(2), path_, counting));
    for (int step = 0; step < counting.operations(); ++step) {
        SCOPED_TRACE(step);
        ASSERT_TRUE(save_job(job_of(1), path_));
        Failing interrupted(step, EINTR);
        ASSERT_TRUE(save_job(job_of(2), path_, interrupted));
        EXPECT_EQ(load_job(path_)->revision, 2);
    }
}

TEST_F(Store, a_failing_backup_does_not_stop_the_save) {
    ASSERT_TRUE(save_job(job_of(1), path_));
    fs::create_directory(path_ + ".before"); // nothing can be renamed over a folder
    const auto saved = save_job(job_of(2), path_);
    ASSERT_TRUE(saved);
    ASSERT_TRUE(saved->backup_problem);
    EXPECT_EQ(saved->backup_problem->code, "backup");
    EXPECT_EQ(load_job(path_)->revision, 2);
    EXPECT_EQ(leftovers(), 0);
}

TEST_F(Store, a_job_that_would_not_open_again_is_not_written) {
    Job job = job_of(1);
    job.mold.fillet_mm = -3; // no form lets this in; the save is the last gate
    const auto saved = save_job(job, path_);
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, "unsavable");
    job = job_of(1);
    job.mold.fillet_mm = 1e-9; // would come back as 0
    EXPECT_EQ(save_job(job, path_).error().code, "unsavable");
    EXPECT_FALSE(fs::exists(path_));
}

TEST_F(Store, other_files_are_replaced_whole) {
    ASSERT_TRUE(write_file(path_, "one"));
    ASSERT_TRUE(write_file(path_, "two"));
    EXPECT_EQ(*read_file(path_, 100), "two");
    EXPECT_FALSE(read_file(path_, 2));
    EXPECT_EQ(files(), 1u);
    EXPECT_FALSE(write_file((folder_ / "gone" / "x").string(), "one"));
}

TEST_F(Store, a_pipe_is_written_to_as_it_is) {
    EXPECT_TRUE(write_file("/dev/null", "one"));
    EXPECT_FALSE(write_file("/dev/full", "one"));
    ASSERT_EQ(::mkfifo(path_.c_str(), 0600), 0);
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) ::_exit(write_file(path_, "through the pipe") ? 0 : 1);
    const auto bytes = read_file(path_, 100);
    int status = 1;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    EXPECT_EQ(status, 0);
    ASSERT_TRUE(bytes);
    EXPECT_EQ(*bytes, "through the pipe");
    EXPECT_TRUE(fs::is_fifo(path_));
}

} // namespace
} // namespace drawercast::job
