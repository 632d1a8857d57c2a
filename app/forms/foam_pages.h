// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/foam.h"

#include "forms/bindings.h"
#include "forms/form_context.h"

namespace drawercast::app {

/// The numbers of a foam, each with unit, range, and where it is to be had from.
void add_rise_rows(FieldRows& rows, Bindings<job::Foam>& numbers, const FormContext& context);
void add_cured_rows(FieldRows& rows, Bindings<job::Foam>& numbers, const FormContext& context);
void add_cup_rows(FieldRows& rows, Bindings<job::Cup>& numbers, const FormContext& context);

} // namespace drawercast::app
