// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/problem.h"

#include "base/without_controls.h"

#include <stdexcept>

namespace drawercast {

std::string english(const Where& where) {
    const std::string spot = english(where.spot);
    if (where.name.empty()) return spot;
    return spot.empty() ? where.name : where.name + " (" + spot + ")";
}

std::string one_line(const Problem& problem) {
    std::string line;
    if (!problem.where.empty()) line += english(problem.where) + ": ";
    line += english(problem.what) + ".";
    if (!problem.fix.empty()) line += " " + english(problem.fix) + ".";
    return without_controls(line);
}

} // namespace drawercast

namespace boost::system {

void throw_exception_from_error(const drawercast::Problem& problem, const source_location&) {
    throw std::logic_error("value of a failed result: " + drawercast::one_line(problem));
}

void throw_exception_from_error(const drawercast::Problems& problems, const source_location&) {
    throw std::logic_error("value of a failed result: " + (problems.empty()
                                                               ? std::string("no problem named")
                                                               : drawercast::one_line(problems.front())));
}

} // namespace boost::system
