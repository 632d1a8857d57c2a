// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "canvas/view_map.h"

#include <QWidget>

#include <optional>

namespace drawercast::app {

/// The scale along a sheet's upper or left edge, in the job's unit, with the extent of what is chosen.
class Ruler final : public QWidget {
    Q_OBJECT
  public:
    explicit Ruler(Qt::Orientation orientation, QWidget* parent = nullptr);

    struct Shown {
        ViewMap view;
        job::DisplayUnits units = job::DisplayUnits::mm;
        std::optional<shape::Box> extent; ///< of what is chosen
        bool operator==(const Shown&) const = default;
    };
    void show(const Shown& shown);
    void set_pointer(std::optional<double> mm);

    static constexpr int thickness_px = 22;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void update_tick();
    double to_px(double mm) const;
    double to_mm(double px) const;
    void paint_tick(QPainter& painter, double px, int length) const;
    void paint_figure(QPainter& painter, double px, const QString& figure) const;

    Qt::Orientation orientation_;
    Shown shown_;
    std::optional<double> pointer_;
};

/// Steps of a ruler in mm: figures stand at least `least_px` apart, on 1, 2, 5 times a power of ten, in inch
/// units on whole or halved inches.
struct RulerSteps {
    double figure_mm = 10;
    int ticks = 10; ///< parts of a figure's step
};
RulerSteps ruler_steps(double px_per_mm, job::DisplayUnits units, double least_px);

} // namespace drawercast::app
