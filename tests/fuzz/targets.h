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

/// Reads the outlines of a drawing; each that is read is within the limits.
void svg_outlines(std::string_view bytes);

/// Reads a pasted list; every row that is read is an object a job can be saved with, and no row is lost.
void pasted_list(std::string_view bytes);

/// Takes the bytes as two outlines, and holds set operations, offsets and distance to GEOS and to each other.
void plane(std::string_view bytes);

/// Reads what a picture's file says of itself; one that passes is within the limits.
void picture_header(std::string_view bytes);

} // namespace drawercast::fuzz
