// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "runsheet/task.h"

#include <string>
#include <vector>

namespace drawercast::runsheet {

/// What each step of one drawer takes, in words: "sealer 67 mL". Empty where it is not known.
struct Materials {
    std::vector<Phrase> fix;
    std::vector<Phrase> first_coat; ///< of sealer, with the end grain's
    std::vector<Phrase> coat;       ///< each further one
    std::vector<Phrase> release;    ///< each coat
    std::vector<Phrase> pour;       ///< "part A 551 g"
    bool operator==(const Materials&) const = default;
};

/// What of one drawer's mold makes work.
struct DrawerWork {
    std::string id;
    std::string name;
    int blocks = 0;
    int closures = 0;     ///< 0: not worked out
    int vents = 0;        ///< likewise
    double insert_m2 = 0; ///< of one face
    int batches = 1;
    double demold_min = 0; ///< of the foam today, never below its label
    bool crush = false;
    std::string
        walls_after{}; ///< id of the drawer whose walls it takes over once that is open; empty: its own
    Materials materials;
    bool operator==(const DrawerWork&) const = default;
};

struct ShopWork {
    double temperature_c = 23;
    int people = 1;        ///< share what hands do, but for what one does alone
    bool us_units = false; ///< what must be true is said in inches and °F
    bool operator==(const ShopWork&) const = default;
};

/// The way of a cast from cutting to the airing of the fitted insert, for all drawers of a job. The order is
/// common practice (no source), the minutes are our guess: a stopwatch's times are better.
std::vector<Task> tasks_for(const std::vector<DrawerWork>& drawers, const ShopWork& shop);

/// What must be true before a pour is begun (common practice, no source); figures in US units are rounded.
std::vector<Phrase> pour_gates(const ShopWork& shop);

/// Parts warmer or colder than the shop was entered rise sooner or later than every second that is told.
inline constexpr double parts_within_c = 2; // of it (our guess)

inline constexpr double cool_shop_c = 18; ///< below it a cast is left alone longer
inline constexpr double cure_min = 120;   ///< before a mold is opened (common practice, no source)
inline constexpr double cool_cure_min = 240;
inline constexpr double flat_min = 24 * 60;   ///< lying flat before it is fitted (common practice, no source)
inline constexpr double airing_min = 48 * 60; ///< before electronics go in (common practice, no source)

} // namespace drawercast::runsheet
