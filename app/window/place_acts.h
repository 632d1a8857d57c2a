// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/desk.h"
#include "window/placing.h"

#include <QObject>
#include <QPointF>

#include <optional>

namespace drawercast::app {

class Actions;

/// What Edit, Objects, Place and the checks' actions do: each is one commit, so one step of undo.
class PlaceActs final : public QObject {
    Q_OBJECT
  public:
    PlaceActs(const Desk& desk, Actions& actions, QObject* parent = nullptr);

    void set_pointer(std::optional<QPointF> mm) { pointer_ = mm; } ///< of the drawer plan
    void place(const std::string& object);

  signals:
    void said(const QString& sentence);

  private:
    void connect_edit();
    void connect_objects();
    void connect_place();
    void connect_checks();
    void commit(const QString& what, job::Job job);
    void turn(double by_deg);
    void align(const QString& what, placing::Line line);
    void spread(placing::Axis axis);
    void equal_walls(placing::Axis axis);
    void notch();
    std::optional<std::size_t> notch_meant() const;
    void take_notch_away();
    void ask_notch_sizes();
    job::Subjects free_ones();
    void to_other_drawer();
    void delete_object();
    std::optional<layout::Check> check_now() const;
    void set_left_as_is(bool left);
    job::Subjects free() const;
    shape::Vec pointer_or(shape::Vec other) const;

    Desk desk_;
    Actions& actions_;
    std::optional<QPointF> pointer_;
};

} // namespace drawercast::app
