// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/form_context.h"

#include "plan/say.h"

#include "language/spoken.h"

#include <QLocale>

namespace drawercast::app {

LengthUnit FormContext::length_unit() const { return plan::length_unit(units); }

QString FormContext::length(double mm) const {
    return QString::fromStdString(length_digits(mm, length_unit(), mark));
}

FormContext form_context(const job::Job& job, std::string_view drawer) {
    FormContext context;
    context.units = job.display_units;
    context.firmness = job.foam->firmness;
    const bool comma =
        QLocale().decimalPoint() == QLatin1String(",") || language::figures("0.5").contains(u',');
    context.mark = comma ? DecimalMark::comma : DecimalMark::point;
    if (!job.drawers.empty()) context.insert_mm = job.drawers.front()->insert_mm;
    for (const auto& one : job.drawers)
        if (one->id == drawer) context.insert_mm = one->insert_mm;
    return context;
}

} // namespace drawercast::app
