// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/length.h"
#include "job/job.h"

#include <QString>

namespace drawercast::app {

class DrawingAsking;

/// What a form must know of the job besides the value it changes: how numbers are shown, what "auto" comes
/// to, and who answers what it asks.
struct FormContext {
    job::DisplayUnits units = job::DisplayUnits::mm;
    DecimalMark mark = DecimalMark::point;
    job::Firmness firmness = job::Firmness::firm;
    double insert_mm = 60; ///< thickness of the drawer's insert that is being looked at
    /// Answers when an outline is read from a drawing; null: dialogs.
    DrawingAsking* drawing_asking = nullptr;
    bool operator==(const FormContext&) const = default;

    bool metric() const { return units == job::DisplayUnits::mm; }
    LengthUnit length_unit() const;
    QString length(double mm) const; ///< as a field shows it, without its unit
};

/// The context of a job; the drawer of that id gives the insert's thickness, else the first one. The decimal
/// mark is the desktop's.
FormContext form_context(const job::Job& job, std::string_view drawer = {});

} // namespace drawercast::app
