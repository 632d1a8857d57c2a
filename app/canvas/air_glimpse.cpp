// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/air_glimpse.h"

#include "job/edit.h"
#include "plan/air_stage.h"

#include "document/behind.h"
#include "document/beside.h"

#include <QCoreApplication>
#include <QMetaObject>

#include <utility>

namespace drawercast::app {

namespace {

constexpr int rest_ms =
    50; ///< between two solves: seen as often as an eye follows, the processor left to the drag

} // namespace

AirGlimpse::AirGlimpse(QObject* parent) : QObject(parent) {
    worker_.setMaxThreadCount(1);
    rest_.setSingleShot(true);
    rest_.setInterval(rest_ms);
    connect(&rest_, &QTimer::timeout, this, &AirGlimpse::go_on);
}

AirGlimpse::~AirGlimpse() { worker_.waitForDone(); }

void AirGlimpse::ask(const job::Job& job, const std::string& drawer, const plan::DrawerPlan& plan) {
    Question question{job, drawer, plan};
    if (busy_ || rest_.isActive())
        next_ = std::move(question);
    else
        begin(std::move(question));
}

void AirGlimpse::forget() {
    ++trial_;
    next_.reset();
    at_.reset();
}

void AirGlimpse::begin(Question question) {
    busy_ = true;
    work_beside_window(worker_, *this, [this, question = std::move(question), trial = trial_] {
        work_behind_window(Behind::glimpse);
        std::optional<shape::Vec> at;
        if (const auto* drawer = job::find_drawer(question.job, question.drawer))
            if (const auto last = plan::last_air(question.job, *drawer, question.plan)) at = last->vec();
        QMetaObject::invokeMethod(
            this, [this, trial, at] { end(trial, at); }, Qt::QueuedConnection);
    });
}

void AirGlimpse::end(int trial, std::optional<shape::Vec> at) {
    busy_ = false;
    rest_.start();
    if (trial != trial_ || at == at_) return;
    at_ = at;
    emit changed();
}

void AirGlimpse::go_on() {
    if (auto next = std::exchange(next_, std::nullopt)) begin(*std::move(next));
}

void AirGlimpse::wait() {
    do {
        if (rest_.isActive()) {
            rest_.stop();
            go_on();
        }
        worker_.waitForDone();
        QCoreApplication::sendPostedEvents(this);
    } while (busy_ || next_);
}

} // namespace drawercast::app
