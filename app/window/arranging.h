// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/drawer.h"

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <functional>

namespace drawercast::app {

/// One search beside the window: what it finds is told as it gets better, and once it is over. Stopped, or
/// after a minute, it ends with its best so far.
class Arranging final : public QObject {
    Q_OBJECT
  public:
    /// The search itself, run by the worker.
    using Task = std::function<arrange::Arranged(const Watch& watch, const arrange::Tell& tell)>;

    explicit Arranging(Task task, QObject* parent = nullptr);
    ~Arranging() override; ///< stops and waits

    void begin();
    void stop() { stop_ = true; }

  signals:
    void better(const drawercast::arrange::Arranged& found);
    void progressed(double done); ///< 0 … 1
    void over(const drawercast::arrange::Arranged& found);

  private:
    void run();

    Task task_;
    std::atomic_bool stop_ = false;
    QThreadPool worker_;
};

} // namespace drawercast::app
