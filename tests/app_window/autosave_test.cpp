// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"

#include "application.h"
#include "document/autosave.h"
#include "document/document.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

struct Kept : testing::Test {
    static void SetUpTestSuite() { test::application(); }

    void edit(Document& document, const char* title) {
        auto job = document.job();
        job.title = title;
        document.commit("title", job);
    }
    QStringList files() const { return QDir(folder.path()).entryList({"*.unsaved"}, QDir::Files); }

    QTemporaryDir folder;
};

TEST_F(Kept, untitled_work_outlives_the_program) {
    job::Job left;
    {
        Document document;
        Autosave autosave(document, folder.path());
        document.replace(job::new_job({}), {}, true);
        EXPECT_TRUE(files().isEmpty()) << "nothing of the maker's own yet";
        edit(document, "Field kit");
        autosave.write_now();
        autosave.wait();
        EXPECT_EQ(files().size(), 1);
        EXPECT_TRUE(autosave.leftovers().empty()) << "its own work is no leftover";
        left = document.job();
    } // the program ends without a save
    Document next;
    Autosave autosave(next, folder.path());
    const auto leftovers = autosave.leftovers();
    ASSERT_EQ(leftovers.size(), 1U);
    EXPECT_EQ(leftovers.front().job, left);
    EXPECT_TRUE(leftovers.front().original_path.isEmpty());
    Autosave::drop(leftovers.front());
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(Kept, where_a_job_came_from_holds_in_another_folder_too) {
    const QString before = QDir::currentPath();
    ASSERT_TRUE(QDir::setCurrent(folder.path()));
    {
        Document document;
        Autosave autosave(document, folder.path());
        document.replace(job::new_job({}), {}, true);
        EXPECT_FALSE(document.save("kit.drawercast.json"));
        EXPECT_EQ(document.path(), QFileInfo("kit.drawercast.json").absoluteFilePath());
        EXPECT_TRUE(document.open("kit.drawercast.json").empty());
        edit(document, "not saved");
        autosave.write_now();
        autosave.wait();
    }
    ASSERT_TRUE(QDir::setCurrent(before));
    Document next;
    const auto leftovers = Autosave(next, folder.path()).leftovers();
    ASSERT_EQ(leftovers.size(), 1U);
    EXPECT_TRUE(QFileInfo(leftovers.front().original_path).isAbsolute());
    EXPECT_TRUE(QFileInfo::exists(leftovers.front().original_path));
}

TEST_F(Kept, work_of_a_running_program_is_not_offered) {
    Document first, second;
    Autosave running(first, folder.path());
    edit(first, "open elsewhere");
    running.write_now();
    running.wait();
    Autosave other(second, folder.path());
    EXPECT_TRUE(other.leftovers().empty());
}

TEST_F(Kept, one_file_for_the_last_edit_and_none_after_a_save) {
    Document document;
    Autosave autosave(document, folder.path());
    for (const char* title : {"one", "two", "three"}) {
        edit(document, title);
        autosave.write_now();
        autosave.wait();
        EXPECT_EQ(files().size(), 1);
    }
    const QString path = folder.filePath("saved.drawercast.json");
    EXPECT_FALSE(document.save(path));
    EXPECT_TRUE(files().isEmpty());
    edit(document, "four");
    autosave.write_now();
    autosave.wait();
    ASSERT_EQ(files().size(), 1);
    document.undo_stack().undo();
    EXPECT_TRUE(files().isEmpty()) << "undone back to what was saved";
}

TEST_F(Kept, the_path_stays_with_the_work) {
    const QString path = folder.filePath("drawer.drawercast.json");
    {
        Document document;
        document.replace(job::new_job({}), {}, false);
        document.save(path);
        Autosave autosave(document, folder.path());
        edit(document, "changed");
        autosave.write_now();
        autosave.wait();
    }
    Document next;
    const auto leftovers = Autosave(next, folder.path()).leftovers();
    ASSERT_EQ(leftovers.size(), 1U);
    EXPECT_EQ(leftovers.front().original_path, path);
}

TEST_F(Kept, previews_are_never_written) {
    Document document;
    Autosave autosave(document, folder.path());
    auto job = document.job();
    job.title = "only tried";
    document.preview(job);
    autosave.write_now();
    autosave.wait();
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(Kept, torn_files_are_left_alone_and_not_offered) {
    QFile torn(folder.filePath("0123-4567.unsaved"));
    ASSERT_TRUE(torn.open(QIODevice::WriteOnly));
    torn.write("/some/path\n{\"format\": \"drawercast-j");
    torn.close();
    Document document;
    Autosave autosave(document, folder.path());
    EXPECT_TRUE(autosave.leftovers().empty());
    EXPECT_EQ(files().size(), 1);
}

TEST_F(Kept, trouble_is_said_once) {
    Document document;
    QFile file(folder.filePath("no-folder"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    Autosave autosave(document, file.fileName()); // a file where the folder should be
    int said = 0;
    QObject::connect(&autosave, &Autosave::failed, [&] { ++said; });
    for (const char* title : {"one", "two"}) {
        edit(document, title);
        autosave.write_now();
        autosave.wait();
    }
    EXPECT_EQ(said, 1);
}

} // namespace
} // namespace drawercast::app
