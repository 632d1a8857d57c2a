// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/phrase.h"
#include "job/job.h"
#include "layout/check.h"

#include <string>

namespace drawercast::plan {

/// What a check says in a few words, with both numbers: "Wall 6.2 mm, needs 8". Lengths in the job's display
/// units.
Phrase title(const layout::Check& check, const job::Job& job);

/// Whom it concerns: "Data logger 1, Barometer"; empty where it concerns the drawer or the job as a whole.
std::string subjects_text(const layout::Check& check, const job::Job& job);

/// One sentence that says what to do; empty where nothing can be done.
Phrase advice(const layout::Check& check, const job::Job& job);

/// All three on one line.
Phrase sentence(const layout::Check& check, const job::Job& job);

/// The object's name, with its number where the job holds several of it: "Battery pack 2". The subject itself
/// where no object has that id.
std::string subject_name(std::string_view subject, const job::Job& job);

} // namespace drawercast::plan
