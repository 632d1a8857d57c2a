// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/builder.h"

#include <QObject>
#include <QThreadPool>
#include <QTimer>

#include <atomic>
#include <memory>
#include <optional>

namespace drawercast::app {

/// The long part of the answer, worked out beside the window: what was begun for an older job is stopped, and
/// only the answer for the last one asked about is told.
class Building final : public QObject {
    Q_OBJECT
  public:
    explicit Building(QObject* parent = nullptr);
    ~Building() override; ///< stops and waits

    /// Begins soon: an edit that follows at once costs nothing. `quick`: the planner's answer for `job`.
    void ask(const job::Job& job, const plan::Plan& quick);
    bool busy() const { return asked_.has_value(); }
    void wait(); ///< until what was asked is told; for tests

  signals:
    void built(const drawercast::plan::Plan& plan);
    void progressed(double done); ///< 0 … 1
    void busy_changed();

  private:
    struct Question {
        job::Job job;
        plan::Plan quick;
    };
    void begin();
    void end(int number, const std::shared_ptr<std::optional<plan::Plan>>& answer);

    std::optional<Question> asked_;
    plan::Builder builder_; ///< touched by the worker alone
    std::shared_ptr<std::atomic_bool> stop_ = std::make_shared<std::atomic_bool>(false);
    int number_ = 0;
    QTimer soon_;
    QThreadPool worker_;
};

} // namespace drawercast::app
