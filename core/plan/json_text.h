// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/json_lines.h"

#include <string>
#include <string_view>
#include <vector>

namespace drawercast::plan {

/// Writes figures as JSON: a line each, numbers rounded.
class JsonText {
  public:
    void begin_object() { out_.begin_object(job::JsonLines::Width::wide); }
    void end_object() { out_.end_object(); }
    void begin_array() { out_.begin_list(job::JsonLines::Width::wide); }
    void end_array() { out_.end_list(); }
    void key(std::string_view name) { out_.key(name); }
    void text(std::string_view value) { out_.text(value); }
    void number(double value); ///< finite; at most 9 significant digits, 0 below 1e-9
    void integer(long long value) { out_.raw(std::to_string(value)); }
    void boolean(bool value) { out_.flag(value); }

    void point(shape::Vec p); ///< [x, y]

    // a whole member at once
    void member(std::string_view name, double value) { key(name), number(value); }
    /// What can't be less than nothing: what a difference of large volumes leaves of one is noise.
    void amount(std::string_view name, double value) { member(name, value > 0 ? value : 0.0); }
    void member(std::string_view name, int value) { key(name), integer(value); }
    void member(std::string_view name, std::string_view value) { key(name), text(value); }

    void numbers(std::string_view name, const std::vector<double>& values);

    std::string take() { return out_.take(); } ///< ends with a newline; every level must be closed

  private:
    job::JsonLines out_;
};

} // namespace drawercast::plan
