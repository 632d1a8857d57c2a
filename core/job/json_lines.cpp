// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/json_lines.h"

#include "base/demand.h"
#include "base/json_quoted.h"
#include "base/number.h"

namespace drawercast::job {

void JsonLines::line(std::size_t depth) {
    out_ += '\n';
    out_.append(depth * 2, ' ');
}

void JsonLines::before_item() {
    if (after_key_) {
        after_key_ = false;
        return;
    }
    if (levels_.empty()) return;
    Level& level = levels_.back();
    if (!level.empty) out_ += ',';
    if (level.width == Width::wide)
        line(levels_.size());
    else if (!level.empty)
        out_ += ' ';
    level.empty = false;
}

void JsonLines::begin(char bracket, Width width) {
    before_item();
    out_ += bracket;
    // Inside a narrow one everything is narrow: one line stays one line.
    const bool inside_narrow = !levels_.empty() && levels_.back().width == Width::narrow;
    levels_.push_back({inside_narrow ? Width::narrow : width});
}

void JsonLines::end(char bracket) {
    DRAWERCAST_DEMAND(!levels_.empty() && !after_key_, "JSON levels are closed in order");
    const Level level = levels_.back();
    levels_.pop_back();
    if (level.width == Width::wide && !level.empty) line(levels_.size());
    out_ += bracket;
}

void JsonLines::begin_object(Width width) { begin('{', width); }
void JsonLines::end_object() { end('}'); }
void JsonLines::begin_list(Width width) { begin('[', width); }
void JsonLines::end_list() { end(']'); }

void JsonLines::text(std::string_view value) {
    before_item();
    out_ += json_quoted(value);
}

void JsonLines::key(std::string_view name) {
    text(name);
    out_ += ": ";
    after_key_ = true;
}

void JsonLines::raw(std::string_view json) {
    before_item();
    out_ += json;
}

void JsonLines::number(double value) { raw(number_text(value)); }
void JsonLines::whole(int value) { raw(std::to_string(value)); }
void JsonLines::flag(bool value) { raw(value ? "true" : "false"); }
void JsonLines::null() { raw("null"); }

void JsonLines::point(shape::Vec p) {
    begin_list(Width::narrow);
    number(p.x);
    number(p.y);
    end_list();
}

void JsonLines::nothing(std::string_view word) { word.empty() ? null() : text(word); }

void JsonLines::maybe(std::string_view name, const std::optional<double>& value, std::string_view word) {
    key(name);
    value ? number(*value) : nothing(word);
}

void JsonLines::maybe(std::string_view name, const std::optional<std::string>& value, std::string_view word) {
    key(name);
    value ? text(*value) : nothing(word);
}

void JsonLines::maybe(std::string_view name, const std::optional<int>& value) {
    key(name);
    value ? whole(*value) : null();
}

void JsonLines::rest(const Unknowns& unknown) {
    for (const auto& member : unknown) {
        key(member.key);
        raw(member.raw);
    }
}

std::string JsonLines::take() {
    DRAWERCAST_DEMAND(levels_.empty() && !after_key_, "every JSON level is closed");
    return std::move(out_) + "\n";
}

} // namespace drawercast::job
