// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/beside.h"

#include <QCoreApplication>
#include <QObject>
#include <QThread>
#include <QThreadPool>
#include <gtest/gtest.h>

#include <memory>
#include <stdexcept>

namespace drawercast::app {
namespace {

/// Events are handed out only where there is an application.
class Beside : public testing::Test {
  private:
    int count_ = 1;
    char name_[5] = "test";
    char* names_[2] = {name_, nullptr};
    std::unique_ptr<QCoreApplication> own_ =
        QCoreApplication::instance() ? nullptr : std::make_unique<QCoreApplication>(count_, names_);
};

TEST_F(Beside, work_is_done_on_another_thread) {
    QObject owner;
    QThreadPool pool;
    QThread* by = nullptr;
    work_beside_window(pool, owner, [&by] { by = QThread::currentThread(); });
    pool.waitForDone();
    EXPECT_NE(by, nullptr);
    EXPECT_NE(by, owner.thread());
}

TEST_F(Beside, a_fault_of_the_work_is_thrown_on_the_owners_thread) {
    QObject owner;
    QThreadPool pool;
    work_beside_window(pool, owner, [] { throw std::logic_error("a fault"); });
    pool.waitForDone();
    EXPECT_THROW(QCoreApplication::sendPostedEvents(&owner), std::logic_error);
    EXPECT_NO_THROW(QCoreApplication::sendPostedEvents(&owner)) << "once";
}

TEST_F(Beside, a_fault_of_what_is_gone_is_not_thrown) {
    {
        QObject owner;
        QThreadPool pool;
        work_beside_window(pool, owner, [] { throw std::logic_error("a fault"); });
        pool.waitForDone();
    }
    EXPECT_NO_THROW(QCoreApplication::sendPostedEvents());
}

} // namespace
} // namespace drawercast::app
