// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/json_text.h"

#include "base/demand.h"
#include "base/json_quoted.h"
#include "base/number.h"

#include <string>

namespace drawercast::plan {

namespace {

constexpr int significant_digits =
    9; // more would show the machine's last-digit noise as if it meant something

} // namespace

void JsonText::new_line() {
    out_ += '\n';
    out_.append(static_cast<std::size_t>(depth_) * 2, ' ');
}

void JsonText::before_value() {
    if (after_key_) {
        after_key_ = false;
        return;
    }
    if (!first_) out_ += ',';
    if (depth_ > 0) new_line();
    first_ = false;
}

void JsonText::open(char bracket) {
    before_value();
    out_ += bracket;
    ++depth_;
    first_ = true;
}

void JsonText::close(char bracket) {
    DRAWERCAST_DEMAND(depth_ > 0 && !after_key_, "JSON levels are closed in order");
    --depth_;
    if (!first_) new_line();
    out_ += bracket;
    first_ = false;
}

void JsonText::begin_object() { open('{'); }
void JsonText::end_object() { close('}'); }
void JsonText::begin_array() { open('['); }
void JsonText::end_array() { close(']'); }

void JsonText::key(std::string_view name) {
    before_value();
    out_ += json_quoted(name) + ": ";
    after_key_ = true;
}

void JsonText::text(std::string_view value) {
    before_value();
    out_ += json_quoted(value);
}

void JsonText::number(double value) {
    before_value();
    out_ += rounded_text(value, significant_digits);
}

void JsonText::integer(long long value) {
    before_value();
    out_ += std::to_string(value);
}

void JsonText::boolean(bool value) {
    before_value();
    out_ += value ? "true" : "false";
}

std::string JsonText::take() {
    DRAWERCAST_DEMAND(depth_ == 0 && !after_key_, "every JSON level is closed");
    out_ += '\n';
    return std::move(out_);
}

} // namespace drawercast::plan
