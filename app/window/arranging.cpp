// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/arranging.h"

#include <QElapsedTimer>
#include <QMetaObject>

namespace drawercast::app {

namespace {

constexpr int between_tells_ms = 50; ///< a search asks far oftener than anybody can look

} // namespace

Arranging::Arranging(Task task, QObject* parent) : QObject(parent), task_(std::move(task)) {
    worker_.setMaxThreadCount(1);
}

Arranging::~Arranging() {
    stop_ = true;
    worker_.waitForDone();
}

void Arranging::begin() {
    worker_.start([this] { run(); });
}

/// On the worker's thread; everything told is queued to the window's.
void Arranging::run() {
    QElapsedTimer since;
    since.start();
    const auto watch = [&](double done) {
        if (since.elapsed() >= between_tells_ms) {
            since.restart();
            QMetaObject::invokeMethod(
                this, [this, done] { emit progressed(done); }, Qt::QueuedConnection);
        }
        return stop_.load();
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
