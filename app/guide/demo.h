// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include "document/document.h"

#include <QObject>
#include <QString>

#include <optional>

namespace drawercast::app::guide {

/// A demo job of the program, "field-service" or "standard-objects", as read_job() reads it.
ExpectedAll<job::Job> read_demo(const QString& name);

/// The first drawer of the field service demo job.
job::Job demo_job(job::DisplayUnits units);

/// What the guide's pictures are drawn from: the first drawer of a job, worked out as any job is. Its plate
/// and vents take seconds and come later, on a worker.
class Demo final : public QObject {
    Q_OBJECT
  public:
    explicit Demo(job::Job job, QObject* parent = nullptr); ///< with a drawer at least

    void set_units(job::DisplayUnits units);

    const job::Job& job() const { return document_.job(); }
    const job::Drawer& drawer() const { return *document_.job().drawers.front(); }
    const plan::Plan& plan() const; ///< with plate, vents and cuts once built()
    const plan::DrawerPlan& drawer_plan() const { return plan().drawers.front(); }
    bool built() const { return document_.last_built().has_value(); }
    void wait(); ///< until it is, for tests

    /// The same drawer with one pocket moved until a wall is thin, and that check.
    struct Thin {
        job::Job job;
        plan::Plan plan;
        layout::Check check;
    };
    const std::optional<Thin>& thin() const;

  signals:
    void changed();

  private:
    Document document_;
    mutable std::optional<Thin> thin_; ///< found when first asked for
    mutable bool looked_ = false;
};

} // namespace drawercast::app::guide
