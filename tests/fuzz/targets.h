// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

/// What is fuzzed: each takes any bytes and must come back. Both the fuzzers and the replay of kept inputs
/// call these.
namespace drawercast::fuzz {

/// Reads a job; one that reads must write and read back the same.
void read_job(std::string_view bytes);

/// Parses a length in every unit; one that parses must show and parse back.
void parse_length(std::string_view bytes);
void svg_outlines(std::string_view bytes);

} // namespace drawercast::fuzz
