// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/unknown.h"
#include "shape/vec.h"

#include <optional>
#include <string>
#include <string_view>

namespace drawercast::job {

/// Writes JSON text in order, two spaces a level: members of wide objects on lines of their own, narrow ones
/// inside one line. Calls must nest properly: that is the caller's to keep, and demanded.
class JsonLines {
  public:
    enum class Width { wide, narrow };

    void begin_object(Width width);
    void end_object();
    void begin_list(Width width);
    void end_list();
    void key(std::string_view name);

    void number(double value);
    void whole(int value);
    void text(std::string_view value);
    void flag(bool value);
    void null();
    void raw(std::string_view json);
    void point(shape::Vec p);

    void member(std::string_view name, double value) { key(name), number(value); }
    void member(std::string_view name, std::string_view value) { key(name), text(value); }
    void member_whole(std::string_view name, int value) { key(name), whole(value); }
    void member_flag(std::string_view name, bool value) { key(name), flag(value); }
    /// null, or `word` in quotes, for nothing.
    void maybe(std::string_view name, const std::optional<double>& value, std::string_view word = {});
    void maybe(std::string_view name, const std::optional<std::string>& value, std::string_view word = {});
    void maybe(std::string_view name, const std::optional<int>& value);
    void rest(const Unknowns& unknown);

    std::string take(); ///< the text, ending with a newline; every level must be closed

  private:
    struct Level {
        Width width;
        bool empty = true;
    };
    void before_item();
    void begin(char bracket, Width width);
    void end(char bracket);
    void nothing(std::string_view word);
    void line(std::size_t depth);

    std::string out_;
    std::vector<Level> levels_;
    bool after_key_ = false;
};

} // namespace drawercast::job
