// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "buildup/picture.h"
#include "plan/plan.h"

#include "sheets/sheet.h"

#include <QString>

#include <optional>
#include <vector>

namespace drawercast::sheets {

/// The plane of the build-up picture: nothing there has a scale of its own to measure by.
struct InPicture;

inline std::string_view frame_words(const Sheet<InPicture>&) { return "Mold, put together"; }
inline bool is_mirrored(const Sheet<InPicture>&) { return true; }

/// What the picture is made of; absent where the drawer has no pattern board.
std::optional<buildup::SceneIn> build_up_of(const job::Job& job, const plan::DrawerPlan& plan);

/// What is seen of the mold, at whatever scale it is drawn: the costly part of the picture.
struct SeenMold {
    struct Name {
        Vec point; ///< of the part, where it is seen
        QString text;
    };
    std::vector<buildup::Painted> faces; ///< each after all it may hide
    std::vector<Name> names;
    bool plate = false; ///< it is worked out
};
SeenMold seen_mold(const buildup::SceneIn& in, const buildup::Look& look);

/// The mold put together: base, blocks with clay, fillers, walls, foam, plate, stiffeners and closures, a
/// quarter cut away and hatched where it is cut. Names stand in columns beside it, in the order of what they
/// name; `px_per_mm`: logical pixels that a millimeter of the sheet will have, for the names' distance.
Sheet<InPicture> build_up(const SeenMold& mold, double px_per_mm);

} // namespace drawercast::sheets
