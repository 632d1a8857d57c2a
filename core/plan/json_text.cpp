// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/json_text.h"

#include "base/number.h"

namespace drawercast::plan {

namespace {

constexpr int significant_digits =
    9; // more would show the machine's last-digit noise as if it meant something

} // namespace

void JsonText::number(double value) { out_.raw(rounded_text(value, significant_digits)); }

} // namespace drawercast::plan
