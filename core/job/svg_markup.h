// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace drawercast::job {

/// One start or end of an element.
struct SvgTag {
    std::string name; ///< without its namespace's prefix
    std::map<std::string, std::string, std::less<>> attributes;
    bool start = false;
    bool end = false;   ///< both for <a/>
    std::size_t at = 0; ///< byte where it begins

    std::string_view value(std::string_view attribute) const;
};

/// Reads the tags of a drawing one after the other (XML 1.0, the part a drawing needs). Text between tags is
/// passed over. Refused: entities of its own (they can grow without end), tags that do not close, elements
/// over 100 deep.
class SvgMarkup {
  public:
    explicit SvgMarkup(std::string_view text) : text_(text) {}

    /// Nothing at the end.
    Expected<std::optional<SvgTag>> next();

  private:
    Problem problem(const Phrase& what, const Phrase& fix) const;
    bool skipped(std::string_view opening, std::string_view closing);
    Expected<std::optional<SvgTag>> tag();
    Expected<std::string> attribute_value();
    std::string name();
    void skip_blanks();

    std::string_view text_;
    std::size_t at_ = 0;
    std::vector<std::string> open_;
    bool any_ = false;
};

} // namespace drawercast::job
