// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/phrase.h"

#include <boost/system/result.hpp>

#include <string>
#include <utility>
#include <vector>

namespace drawercast {

/// What holds something wrong, and where in its text that stands; either may be empty.
struct Where {
    std::string name; ///< "/objects/3/count", "job.drawercast.json", "i7"
    Phrase spot;      ///< "line 41, column 16"

    Where() = default;
    Where(const char* name_) : name(name_) {}
    Where(std::string name_) : name(std::move(name_)) {}
    Where(Phrase spot_) : spot(std::move(spot_)) {}
    Where(std::string name_, Phrase spot_) : name(std::move(name_)), spot(std::move(spot_)) {}
    bool empty() const { return name.empty() && spot.empty(); }
    bool operator==(const Where&) const = default;
};

/// Something the maker or the machine got wrong, told so that it can be mended.
struct Problem {
    std::string code; ///< stable word for programs, e.g. "number-range"; never translated
    Where where;
    Phrase what; ///< what is wrong, one sentence without a full stop
    Phrase fix;  ///< what to do about it, one sentence without a full stop; may be empty

    Problem() = default;
    /// All four, so that no text is a Problem by itself and an Expected<std::string> stays unambiguous.
    Problem(std::string code_, Where where_, Phrase what_, Phrase fix_)
        : code(std::move(code_)), where(std::move(where_)), what(std::move(what_)), fix(std::move(fix_)) {}
    bool operator==(const Problem&) const = default;
};

/// "/objects/3/count (line 41, column 16)", or whichever of the two there is.
std::string english(const Where& where);

/// The problem in English on one line: "where: what. fix."
std::string one_line(const Problem& problem);

template <class T>
using Expected = boost::system::result<T, Problem>;

/// For readers that can report several problems of one input at once; never empty when returned as an error.
using Problems = std::vector<Problem>;

template <class T>
using ExpectedAll = boost::system::result<T, Problems>;

} // namespace drawercast

namespace boost::system {
/// Asking a failed result for its value is our own mistake: it ends in the one catch at the entry point.
[[noreturn]] void throw_exception_from_error(const drawercast::Problem& problem, const source_location& at);
[[noreturn]] void throw_exception_from_error(const drawercast::Problems& problems, const source_location& at);
} // namespace boost::system
