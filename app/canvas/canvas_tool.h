// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/live_marks.h"
#include "canvas/view_map.h"
#include "sheets/ink.h"

#include <QPointF>
#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace drawercast::app {

/// What a menu on a sheet is about.
enum class MenuOf { pocket, check, vent, sheet };

/// What the pointer and the keys do on a sheet. Places come in view pixels. This one is for sheets that are
/// only looked at: it leaves everything to the view.
class CanvasTool {
  public:
    struct Keys {
        bool add = false;     ///< Shift: to the choice
        bool no_snap = false; ///< Ctrl: while held, nothing snaps
        bool operator==(const Keys&) const = default;
    };

    struct ArrowKey {
        shape::Vec way;    ///< of length 1, y up
        bool fine = false; ///< Shift
        shape::Vec by_mm() const { return way * (fine ? 0.1 : 1.0); }
    };

    CanvasTool() = default;
    CanvasTool(const CanvasTool&) = delete;
    CanvasTool& operator=(const CanvasTool&) = delete;
    virtual ~CanvasTool() = default;

    virtual void press(QPointF, Keys) {}
    virtual void move(QPointF, Keys) {} ///< pressed or not
    virtual void release(QPointF, Keys) {}
    virtual bool double_click(QPointF) { return false; }  ///< false: it counts as a press
    virtual void leave() {}                               ///< the pointer is elsewhere
    virtual void keys_changed(Keys) {}                    ///< with the pointer where it was
    virtual bool arrow(const ArrowKey&) { return false; } ///< moves what is chosen; false: there is nothing
    virtual bool next(int /*step*/) { return false; }     ///< chooses the next one; false: past the last

    virtual bool busy() const { return false; } ///< keys wait: something of the job hangs on the pointer
    virtual bool cancel() { return false; }     ///< gives up what is being tried; true: there was something
    virtual bool let_go() { return cancel(); }  ///< of what is tried, else of the choice; false: neither

    /// What a menu asked for there is about; that is chosen.
    virtual MenuOf menu_at(QPointF) { return MenuOf::sheet; }
    struct Menu {
        MenuOf of = MenuOf::sheet;
        std::optional<QPointF> at; ///< nothing: the middle of the view
    };
    virtual Menu menu_of_chosen() const { return {}; }
    virtual QString spoken() const { return {}; } ///< what is chosen, for those who listen

    virtual Qt::CursorShape cursor() const { return Qt::ArrowCursor; } ///< where the pointer was last
    virtual sheets::Inks live(const LiveFrame&) const { return {}; }   ///< the blue pencil
};

} // namespace drawercast::app
