// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/value_edit.h"

namespace drawercast::app {

/// A ValueEdit for a length, which takes any typed length ("82,5", "8.25 cm", "3 1/4 in") and shows it in the
/// job's units.
class LengthEdit final : public ValueEdit {
    Q_OBJECT
  public:
    LengthEdit(const FormContext& context, const job::Range& range, QWidget* parent = nullptr);
};

/// Sizes and places of outlines, which the table of ranges leaves to the outline's own reader.
inline constexpr job::Range outline_size{"", 0, 10000, true};
inline constexpr job::Range outline_place{"", -10000, 10000};

} // namespace drawercast::app
