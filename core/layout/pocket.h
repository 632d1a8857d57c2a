// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/drawer.h"
#include "job/foam.h"
#include "job/object.h"
#include "shape/fit.h"
#include "shape/frame.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace drawercast::layout {

/// The round underside of a lying cylinder: sides go straight down to the axis, then follow the circle.
struct Round {
    double radius_mm = 0;
    double axis_mm = 0; ///< depth of the axis below the face; < 0: the axis is above it
    bool operator==(const Round&) const = default;
};

/// One hollow of a pocket, finished size: a level (a lying round gives one for each cylinder) or a finger
/// notch.
template <class Frame>
struct Cut {
    enum class Kind { level, notch };
    Kind kind = Kind::level;
    int index = 0;                 ///< which level or notch of the object, from 0
    shape::Outline<Frame> outline; ///< at the insert's face, after the fit
    double depth_mm = 0;           ///< greatest depth below the face; through levels: the insert's thickness
    bool through = false;
    std::optional<Round> round;
    bool operator==(const Cut&) const = default;
};

/// An object's pocket about the object's own origin: its shape, whatever drawer and place it gets.
/// Depends on the object, its fit, the notches and (through levels) the insert's thickness only.
struct PocketForm {
    std::vector<Cut<shape::InObject>> cuts; ///< levels in order, then notches
    double greatest_depth_mm = 0;
    bool operator==(const PocketForm&) const = default;
};

/// Refused with code "fit-vanishes" where the fit leaves nothing of a level, or more than one piece.
Expected<PocketForm> pocket_form(const job::Object& object, const std::vector<job::Notch>& notches,
                                 const shape::Fit& fit, double insert_mm);

/// A pocket where it stands in its drawer.
struct PlacedPocket {
    std::string subject; ///< "i1#1"
    std::string object;  ///< id
    shape::Pose pose;
    std::shared_ptr<const PocketForm> form;
    std::vector<Cut<shape::InDrawer>> cuts; ///< as form->cuts, placed
    std::vector<shape::Box> boxes;          ///< of each cut
    shape::Box box;                         ///< of all
};

PlacedPocket place(const job::Pocket& pocket, std::shared_ptr<const PocketForm> form);

/// The fit of an object in this foam: its own, else the practice for the firmness (firm −0.5, medium −1, soft
/// −2 mm a side; common practice, no source).
shape::Fit fit_of(const job::Object& object, job::Firmness firmness);

/// The clear gap between insert and drawer: the drawer's own, else by firmness (0.5 firm and medium, 0 soft;
/// common practice, no source).
double gap_of(const job::Drawer& drawer, job::Firmness firmness);

} // namespace drawercast::layout
