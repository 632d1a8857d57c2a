// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/unknown.h"

#include <optional>
#include <string>
#include <vector>

/// What happened: looks accepted, molds and casts measured, the pour day's marks.
namespace drawercast::job {

struct LeftAsIs { ///< a look the maker accepts, until its figure gets worse than `value`
    std::string drawer;
    std::string code;
    std::vector<std::string> subjects; ///< sorted
    double value = 0;
    Unknowns unknown;
    bool operator==(const LeftAsIs&) const = default;
};

struct BuiltBlock {     ///< one body of a block that came out other than planned
    std::string pocket; ///< "i1#1"
    int body = 1;       ///< levels in order (each cylinder of a lying round), then notches; from 1
    std::optional<double> height_mm; ///< over the board, sealed; null: as planned
    double grown_mm = 0;             ///< wider than planned on each side; < 0: narrower
    Unknowns unknown = {};
    bool operator==(const BuiltBlock&) const = default;
};
struct AsBuilt { ///< a mold measured before the pour; mold sizes
    std::string drawer;
    std::optional<double> width_mm; ///< inside the box, left to right; null: as planned
    std::optional<double> depth_mm; ///< inside the box, front to back
    std::vector<double> walls_mm;   ///< heights over the board, wherever read; none: as planned
    std::vector<BuiltBlock> blocks;
    std::string note;
    Unknowns unknown;
    bool operator==(const AsBuilt&) const = default;
};

struct Mark {           ///< what the maker marked as done, and when
    std::string drawer; ///< id; empty: of the whole job
    std::string step;   ///< plan/pour_log.h says which there are
    double at_s = 0;    ///< since 1970-01-01, UTC
    bool back = false;  ///< the last mark of that step is taken back
    Unknowns unknown = {};
    bool operator==(const Mark&) const = default;
};

struct CastFit {         ///< a pocket of a cast, measured
    std::string pocket;  ///< "i1#1"
    double wider_mm = 0; ///< than planned, the whole width; < 0: narrower
    Unknowns unknown = {};
    bool operator==(const CastFit&) const = default;
};
struct Cast { ///< what came out of a mold; null: not measured
    std::string drawer;
    std::string foam; ///< its name then
    std::string day;
    std::optional<double> mixed_g;          ///< into the buckets
    std::optional<double> cast_g;           ///< the insert
    std::optional<double> trimmed_g;        ///< flash, the plugs of the vents apart
    std::optional<double> plugs_g;          ///< what came through the vents
    std::optional<double> plugs_planned_ml; ///< squeeze-out that was reckoned with
    std::optional<double> viscosity_pa_s;   ///< at which it was
    int batches = 1;
    std::optional<double> bow_mm;       ///< of the insert's back
    std::optional<double> bar_mm;       ///< a length in the mold
    std::optional<double> bar_cured_mm; ///< the same on the cured insert
    std::optional<double> wax_g;        ///< release that went on the mold
    std::optional<double> clay_g;       ///< renewed
    bool new_holes = false;             ///< the closures' holes were shifted before it
    std::vector<CastFit> fits;
    std::string note;
    Unknowns unknown = {};
    bool operator==(const Cast&) const = default;
};

} // namespace drawercast::job
