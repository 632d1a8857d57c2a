// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QSlider;
class QToolButton;

namespace drawercast::app {

class SheetCanvas;

/// Below the build-up: turns it in steps, takes it apart by a slider.
class BuildUpBar final : public QWidget {
    Q_OBJECT
  public:
    explicit BuildUpBar(SheetCanvas& canvas, QWidget* parent = nullptr);

  private:
    QToolButton* step_button(const QString& icon, const QString& words, double turn_deg);
    void show_look();

    SheetCanvas& canvas_;
    QLabel* turned_;
    QSlider* apart_;
};

} // namespace drawercast::app
