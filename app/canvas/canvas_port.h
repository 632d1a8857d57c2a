// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "layout/snap.h"
#include "plan/plan.h"

#include "canvas/live_marks.h"
#include "canvas/view_map.h"

#include <QString>

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace drawercast::app {

/// What a tool sees of the program: the job, the plan of it, the choice, and ways to try and to commit. No
/// tool knows the window.
class CanvasPort {
  public:
    virtual ~CanvasPort() = default;

    virtual const job::Job& job() const = 0;                 ///< committed
    virtual const job::Job& shown() const = 0;               ///< with what is being tried
    virtual const plan::DrawerPlan* drawer_plan() const = 0; ///< of the drawer shown; null: none
    virtual const job::Drawer* drawer() const = 0;           ///< of shown(); null: none
    /// Shows another job in which `moving` are being moved; nothing puts it back.
    virtual void preview(std::optional<job::Job> job, const std::vector<std::string>& moving = {}) = 0;
    virtual void commit(const QString& what, job::Job job) = 0;
    /// By a key: those of the same `key` within a second are one step of undo.
    virtual void commit_nudge(const QString& what, job::Job job, const QString& key) = 0;

    virtual const std::vector<std::string>& chosen() const = 0;
    virtual void choose(std::vector<std::string> subjects) = 0;
    virtual std::optional<std::size_t> chosen_notch() const = 0; ///< of the one pocket chosen
    virtual void choose_notch(const std::string& subject, std::size_t notch) = 0;
    /// The check whose plate or badge stands at a place of the view; null: none.
    virtual const layout::Check* check_at(QPointF px) const = 0;
    virtual void choose_check(layout::Check check) = 0;

    /// Of the drawer shown, with what takes longer; of an older job while that is worked out. Null: none yet.
    virtual const plan::DrawerPlan* built_plan() const = 0;
    /// Its air and vents, the maker's vents as they are now: by a sketch while the answer is an old one.
    virtual std::shared_ptr<const air::Answer> air() const = 0;
    virtual std::optional<shape::Vec> chosen_vent() const = 0; ///< its place, drawer mm
    virtual void choose_vent(std::optional<shape::Vec> at) = 0;

    virtual const ViewMap& view() const = 0;
    virtual QSizeF view_size() const = 0;
    virtual void pan(QPointF by_px) = 0;

    virtual bool snapping() const = 0;  ///< the setting; a tool turns it off while Ctrl is held
    virtual double grid_mm() const = 0; ///< 0: off
    virtual void show_guides(const layout::Snap& snap) = 0; ///< until the next call; none: clears
    virtual void show_band(const std::optional<shape::Box>& band) = 0;
    virtual void show_note(const std::optional<LiveNote>& note) = 0;
    virtual void redraw_live() = 0;            ///< what tools show has changed
    virtual void say(const QString& text) = 0; ///< status line

    /// Forms a double click opens: of the chosen pocket's object or notch, of the chosen vent, of a new vent.
    enum class Form { object, notch, vent_drill, vent };
    virtual void ask_for(Form form) = 0;
};

} // namespace drawercast::app
