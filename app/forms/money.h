// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/form_context.h"

#include <QString>

namespace drawercast::app {

/// "1250 EUR", "84.20": whole from 100 up, else with two decimals.
QString money_words(double amount, const std::string& currency, const FormContext& context);

} // namespace drawercast::app
