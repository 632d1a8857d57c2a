// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include "forms/form_context.h"
#include "window/placing.h"

#include <QWidget>

#include <optional>

class QGridLayout;
class QLabel;

namespace drawercast::app {

class Head;
class ValueEdit;

/// Where the chosen pockets stand, in fields to type into, and how they hold what is in them. Typed figures
/// take effect when a field is left or Enter is pressed; Escape puts back what stood there, or leaves.
class PlacementPane final : public QWidget {
    Q_OBJECT
  public:
    explicit PlacementPane(QWidget* parent = nullptr);

    struct Shown {
        int pockets = 0;   ///< chosen
        bool free = false; ///< none of them is locked
        std::optional<shape::Box> box;
        std::optional<double> turn_deg; ///< nothing where they differ
        QString words;                  ///< how it holds
        FormContext context;
        bool operator==(const Shown&) const = default;
    };
    void show_choice(const Shown& shown);
    void take_focus(); ///< the first field, all of it chosen

  signals:
    void put(drawercast::app::placing::Axis axis, double edge_mm);
    void turned(double turn_deg);
    void done(); ///< the keys are the sheet's again

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void make_fields();
    void fill();

    Shown shown_;
    Head* head_;
    QGridLayout* grid_;
    ValueEdit* left_ = nullptr;
    ValueEdit* front_ = nullptr;
    ValueEdit* turn_ = nullptr;
    QLabel* words_;
};

} // namespace drawercast::app
