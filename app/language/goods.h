// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string>

namespace drawercast::language {

/// What is called so in the catalog and among the built-in tubes, in the program's language: a board,
/// closure, foam, kit or object, and where an object's size is from. Any other name is the maker's own and
/// stays.
QString goods_name(const std::string& name);

/// The other way: what a job calls the goods shown so.
std::string goods_key(const QString& shown);

} // namespace drawercast::language
