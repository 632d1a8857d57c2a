// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "job/store.h"

#include "app/pdf_reader.h"
#include "print/templates.h"

#include <string>
#include <vector>

/// Jobs for tests of what is put on paper, and the way there and back.
namespace drawercast::test {

/// Two round pockets of different size beside each other, left large and right small: nothing about it is
/// symmetric.
job::Job asymmetric_job(double width_mm, double depth_mm);

/// A job of resources/demo. Fails the running test where it can't be read.
job::Job demo_job(const std::string& name);

inline const std::vector<std::string> demo_names{"field-service", "standard-objects"};

/// The demo as a shop sees it that wants far wider walls and edges: dozens of looks.
job::Job crowded_job();

/// The job's templates as a PDF, and what is drawn in it.
std::vector<InkPage> printed(const job::Job& job, const print::TemplateChoice& choice);
std::vector<InkPage> printed(const job::Job& job, const plan::Plan& plan,
                             const print::TemplateChoice& choice);

} // namespace drawercast::test
