// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measure.h"
#include "job/foam.h"
#include "job/object.h"

#include <optional>
#include <string>
#include <vector>

/// What a maker makes of the outlines found in a photo, as values and pure functions.
namespace drawercast::app::photo {

enum class Shape { as_found, symmetric, rectangle, turned_rectangle, two_rectangles, disc };

/// One outline over the photo and what is said of the object it belongs to.
struct Outline {
    int number = 0; ///< to know it by, whatever becomes of the others; 0: none yet
    shape::Polygon
        seen; ///< as the photo shows it: mm, x right, y up from the flat picture's lower left corner
    double band_mm = 0; ///< of the line as seen
    bool maybe_shadow = false;
    bool maybe_part = false; ///< so near to another that both may be one shiny thing
    bool by_hand = false;    ///< its points were dragged: a new look at the photo leaves it alone
    bool brushed = false;    ///< a brush stroke meets it: there it is as good as the hand
    bool taken = true;       ///< into the object list
    std::string name;
    std::optional<double> height_mm; ///< of the object
    std::optional<double> edge_mm;   ///< height of its widest edge; nothing: as the object
    std::optional<double> depth_mm;  ///< of its pocket; nothing: as the object's height
    capture::Walls walls = capture::Walls::upright;
    Shape shape = Shape::as_found;
    bool band_in_fit = false;
    bool operator==(const Outline&) const = default;
};

/// An outline with its height taken out of it.
struct Measured {
    shape::Polygon polygon; ///< where it is in the flat picture
    double enlarged_by = 1; ///< how much larger its edge looked
    double band_mm = 0;
};

/// Height at which the outline's edge stood, mm; 0 where nothing is said yet.
double edge_height(const Outline& outline);

/// Without parallax, and in the shape that was chosen for it. Refused: outlines that cross themselves, an
/// edge nearly as high as the camera, a height where the camera's distance is unknown, a shape it has not.
Expected<Measured> measured(const Outline& outline, const capture::FlatPicture& flat);

/// A shape that an outline could be cut as, and what that costs.
struct Offer {
    Shape shape = Shape::as_found;
    double more_mm2 = 0; ///< area beyond the outline's own
    double reach_mm = 0; ///< past the outline at most
};
/// Those that the measured outline has; "as found" is the first.
std::vector<Offer> offers(const Outline& outline, const capture::FlatPicture& flat);

/// The object, about the middle of its box, without an id; demands a height. `fit`: of this foam, a side.
Expected<job::Object> object_of(const Outline& outline, const capture::FlatPicture& flat,
                                job::Firmness firmness);

/// The outlines after another look: what was said of one stays with it where the two cover each other. Those
/// changed by hand stay as they are. In the order they had, new ones last.
std::vector<Outline> looked_again(const std::vector<Outline>& before, const capture::Traced& found);

} // namespace drawercast::app::photo
