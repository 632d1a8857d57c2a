// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace drawercast::plan {

/// Writes JSON text in order, two spaces a level. Calls must nest properly: that is the caller's to keep, and
/// demanded.
class JsonText {
  public:
    void begin_object();
    void end_object();
    void begin_array();
    void end_array();
    void key(std::string_view name);
    void text(std::string_view value);
    void number(double value); ///< finite; at most 9 significant digits
    void integer(long long value);
    void boolean(bool value);

    /// A whole member at once.
    void member(std::string_view name, double value) { key(name), number(value); }
    void member(std::string_view name, int value) { key(name), integer(value); }
    void member(std::string_view name, std::string_view value) { key(name), text(value); }

    std::string take(); ///< the text, ending with a newline; every level must be closed

  private:
    void before_value();
    void open(char bracket);
    void close(char bracket);
    void new_line();

    std::string out_;
    int depth_ = 0;
    bool first_ = true; ///< nothing written yet on this level
    bool after_key_ = false;
};

} // namespace drawercast::plan
