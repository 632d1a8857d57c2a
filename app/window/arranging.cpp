// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/arranging.h"

#include "document/beside.h"

#include <QElapsedTimer>
#include <QMetaObject>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr int between_tells_ms = 50;  ///< a search asks far oftener than anybody can look
constexpr double longest_ms = 60'000; ///< nobody waits longer; a slow machine gets its best so far then

} // namespace

Arranging::Arranging(Task task, QObject* parent) : QObject(parent), task_(std::move(task)) {
    worker_.setMaxThreadCount(1);
}

Arranging::~Arranging() {
    stop_ = true;
    worker_.waitForDone();
}

void Arranging::begin() {
    work_beside_window(worker_, *this, [this] { run(); });
}

/// On the worker's thread; everything told is queued to the window's.
void Arranging::run() {
    QElapsedTimer since;
    QElapsedTimer whole;
    since.start();
    whole.start();
    const auto watch = [&](double searched) {
        const double done = std::max(searched, static_cast<double>(whole.elapsed()) / longest_ms);
        if (since.elapsed() >= between_tells_ms) {
            since.restart();
            QMetaObject::invokeMethod(
                this, [this, done] { emit progressed(done); }, Qt::QueuedConnection);
        }
        return done >= 1 || stop_.load();
    };
    const auto tell = [this](const arrange::Arranged& found) {
        QMetaObject::invokeMethod(
            this, [this, found] { emit better(found); }, Qt::QueuedConnection);
    };
    arrange::Arranged found = task_(watch, tell);
    QMetaObject::invokeMethod(
        this, [this, found = std::move(found)] { emit over(found); }, Qt::QueuedConnection);
}

} // namespace drawercast::app
