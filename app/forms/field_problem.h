// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QString>

#include <string>
#include <string_view>
#include <vector>

class QWidget;

namespace drawercast::app {

/// Something to mend in a form, and where.
struct FieldProblem {
    std::string path;         ///< within the form's value: "/levels/0/depth_mm"; empty: of the whole
    QString words;            ///< one sentence
    QString label = {};       ///< of the field, where it has one
    QWidget* field = nullptr; ///< to go to
};
using FieldProblems = std::vector<FieldProblem>;

/// What the job reader has against a value that stands at `base` in `job`: paths are taken from there on,
/// line and column left out.
FieldProblems problems_of(const job::Job& job, std::string_view base);

/// Those at or below `path`, with their paths from there on; taken out of `problems`.
FieldProblems taken_below(FieldProblems& problems, std::string_view path);

/// Whether the place `path` is `of` or within it.
bool is_below(std::string_view path, std::string_view of);

} // namespace drawercast::app
