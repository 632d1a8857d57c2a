// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <string>
#include <string_view>

namespace drawercast::job {

/// Six hexadecimal digits of what a job says, its log left out: a print-out that carries others is of an
/// older job. FNV-1a of 64 bits (Fowler, Noll, Vo; IETF draft-eastlake-fnv) over the job's file text, folded
/// to 24: two different jobs look alike once in 16 million.
std::string fingerprint(const Job& job);

/// The same of what one drawer's papers are drawn from: revision, other drawers, and objects that lie in
/// others alone are left out.
std::string drawer_fingerprint(const Job& job, std::string_view drawer);

/// The hash itself, to be tried against published values.
unsigned long long fnv1a_64(const std::string& bytes);

} // namespace drawercast::job
