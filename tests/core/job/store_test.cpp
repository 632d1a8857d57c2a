// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/edit.h"
#include "job/store.h"
#include "job/write.h"

#include <gtest/gtest.h>

#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sys/stat.h>

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

/// Fails at the n-th operation, once, the way a full disk or an unplugged one would.
class Failing : public FileSystem {
  public:
    Failing(int at, int error) : at_(at), error_(error) {}
    int open_new(const std::string& path, unsigned mode) override {
        return fails() ? -1 : FileSystem::open_new(path, mode);
    }
    long write(int file, const char* bytes, std::size_t count) override {
        if (fails()) { // half of it arrives
            FileSystem::write(file, bytes, count / 2);
            errno = error_;
            return -1;
        }
        return FileSystem::write(file, bytes, std::min<std::size_t>(count, 700)); // short writes throughout
    }
    int sync(int file) override { return fails() ? -1 : FileSystem::sync(file); }
    int close(int file) override {
        const int answer = FileSystem::close(file);
        return fails() ? -1 : answer;
    }
    int rename(const std::string& from, const std::string& to) override {
        return fails() ? -1 : FileSystem::rename(from, to);
    }
    int link(const std::string& from, const std::string& to) override {
        return fails() ? -1 : FileSystem::link(from, to);
    }
    int sync_folder(const std::string& path) override { return fails() ? -1 : FileSystem::sync_folder(path); }
    int operations() const { return done_; }

  private:
    bool fails() {
        if (done_++ != at_) return false;
        errno = error_;
        return true;
    }
    int at_;
    int error_;
    int done_ = 0;
};

TEST_F(Store, whatever_step_fails_the_old_or_the_new_job_is_there_whole) {
    ASSERT_TRUE(save_job(job_of(1), path_));
    Failing counting(-1, 0);
    ASSERT_TRUE(save_job(job_of(2), path_, counting));
    for (const int error : {ENOSPC, EIO, EACCES, EROFS}) {
        for (int step = 0; step < counting.operations(); ++step) {
            fs::remove(path_);
            fs::remove(path_ + ".before");
            ASSERT_TRUE(save_job(job_of(1), path_));
            Failing failing(step, error);
            const auto saved = save_job(job_of(2), path_, failing);
            const auto now = load_job(path_);
            ASSERT_TRUE(now) << "step " << step;
            EXPECT_EQ(now->revision, saved ? 2 : 1) << "step " << step;
            for (const auto& entry : fs::directory_iterator(folder_))
                EXPECT_EQ(entry.path().string().find(".part-"), std::string::npos) << "step " << step;
        }
    }
}

TEST_F(Store, an_interrupted_call_is_asked_again) {
    Failing counting(-1, 0);
    ASSERT_TRUE(save_job(job_of(1), path_, counting));
    for (int step = 0; step < counting.operations(); ++step) {
        fs::remove(path_);
        Failing failing(step, EINTR);
        const auto saved = save_job(job_of(1), path_, failing);
        if (saved) {
            EXPECT_EQ(load_job(path_)->revision, 1);
        }
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
}

TEST_F(Store, a_job_that_would_not_open_again_is_not_written) {
    Job job = job_of(1);
    job.mold.fillet_mm = -3; // no form lets this in; the save is the last gate
    const auto saved = save_job(job, path_);
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, "unsavable");
    EXPECT_FALSE(fs::exists(path_));
}

TEST_F(Store, other_files_are_replaced_whole) {
    ASSERT_TRUE(write_file(path_, "one"));
    ASSERT_TRUE(write_file(path_, "two"));
    EXPECT_EQ(*read_file(path_, 100), "two");
    EXPECT_FALSE(read_file(path_, 2));
    EXPECT_EQ(files(), 1u);
}

} // namespace
} // namespace drawercast::job
