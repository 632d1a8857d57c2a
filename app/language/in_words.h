// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <QString>

namespace drawercast {

/// What the core says, in the program's language: the sentence looked up, its values put in, figures with the
/// sign that language has before decimals.
QString in_words(const Phrase& phrase);

/// The problem on one line: "where: what. fix."
QString problem_line(const Problem& problem);

} // namespace drawercast
