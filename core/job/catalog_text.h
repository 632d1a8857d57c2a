// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

/// The files of resources/catalog as text; the definitions are generated when the program is built.
namespace drawercast::job::catalog_text {

std::string_view foams();
std::string_view boards();
std::string_view stiffeners();
std::string_view closures();
std::string_view standard_objects();

} // namespace drawercast::job::catalog_text
