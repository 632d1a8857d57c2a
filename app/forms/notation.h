// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"

#include "forms/form_context.h"

#include <QString>

#include <functional>

namespace drawercast::app {

/// How a value of the job is shown and typed: the unit in words, and both ways between them.
struct Notation {
    QString unit; ///< "mm", "°F"; empty: a bare number
    std::function<QString(double)> shown;
    std::function<Expected<double>(const QString&)> typed;
};

Notation length_notation(const FormContext& context);
/// Metric jobs in the job's own unit, the others in US customary.
Notation quantity_notation(Quantity quantity, const FormContext& context);
/// A number shown in `unit`, of which one is `scale` in the job: 0.01 for percent.
Notation number_notation(const FormContext& context, const QString& unit, double scale = 1);

/// `value` at up to six digits, with the context's decimal mark.
QString number_words(double value, DecimalMark mark);

} // namespace drawercast::app
