// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/building.h"

#include "document/behind.h"
#include "document/beside.h"

#include <QCoreApplication>
#include <QMetaObject>

namespace drawercast::app {

namespace {

constexpr int soon_ms = 150; ///< longer than between two key presses of a nudge

} // namespace

Building::Building(QObject* parent) : QObject(parent) {
    worker_.setMaxThreadCount(1); // the builder remembers, so one after another
    soon_.setSingleShot(true);
    soon_.setInterval(soon_ms);
    connect(&soon_, &QTimer::timeout, this, &Building::begin);
}

Building::~Building() {
    *stop_ = true;
    worker_.waitForDone();
}

void Building::ask(const job::Job& job, const plan::Plan& quick) {
    const bool was_busy = busy();
    *stop_ = true; // what runs is for an older job
    ++number_;
    asked_ = Question{job, quick};
    soon_.start();
    if (!was_busy) emit busy_changed();
}

void Building::begin() {
    soon_.stop();
    stop_ = std::make_shared<std::atomic_bool>(false);
    work_beside_window(worker_, *this, [this, question = *asked_, stop = stop_, number = number_] {
        work_behind_window(Behind::answer);
        const auto watch = [&](double done) {
            QMetaObject::invokeMethod(
                this,
                [this, done, number] {
                    if (number == number_) emit progressed(done);
                },
                Qt::QueuedConnection);
            return stop->load();
        };
        auto answer =
            std::make_shared<std::optional<plan::Plan>>(builder_.build(question.job, question.quick, watch));
        QMetaObject::invokeMethod(
            this, [this, number, answer] { end(number, answer); }, Qt::QueuedConnection);
    });
}

void Building::end(int number, const std::shared_ptr<std::optional<plan::Plan>>& answer) {
    if (number != number_ || !*answer) return;
    asked_.reset();
    emit built(**answer);
    emit busy_changed();
}

void Building::wait() {
    if (soon_.isActive()) begin();
    worker_.waitForDone();
    QCoreApplication::sendPostedEvents(this);
}

} // namespace drawercast::app
