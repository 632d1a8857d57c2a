// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/length_edit.h"

namespace drawercast::app {

LengthEdit::LengthEdit(const FormContext& context, const job::Range& range, QWidget* parent)
    : ValueEdit(length_notation(context), range, parent) {}

} // namespace drawercast::app
