// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include <QObject>
#include <QThreadPool>
#include <QTimer>

#include <optional>
#include <string>

namespace drawercast::app {

/// Where the mold fills last while a pocket is still being moved: one solve beside the window for each
/// question, the questions that came meanwhile left out but for the last; a rest between two.
class AirGlimpse final : public QObject {
    Q_OBJECT
  public:
    explicit AirGlimpse(QObject* parent = nullptr);
    ~AirGlimpse() override; ///< waits

    /// Asks about a job that is only tried. `plan`: its quick plan of `drawer`.
    void ask(const job::Job& job, const std::string& drawer, const plan::DrawerPlan& plan);
    void forget(); ///< nothing is tried any more: an answer on its way is not told
    void wait();   ///< until the last question is answered; for tests

    /// Drawer mm; of a question a little older while the last one is worked out. Nothing: none yet, or there
    /// is no dose.
    const std::optional<shape::Vec>& at() const { return at_; }

  signals:
    void changed();

  private:
    struct Question {
        job::Job job;
        std::string drawer;
        plan::DrawerPlan plan;
    };
    void begin(Question question);
    void end(int trial, std::optional<shape::Vec> at);
    void go_on(); ///< with the last question that came meanwhile

    std::optional<Question> next_;
    std::optional<shape::Vec> at_;
    bool busy_ = false;
    int trial_ = 0; ///< grows with each forget()
    QTimer rest_;
    QThreadPool worker_;
};

} // namespace drawercast::app
