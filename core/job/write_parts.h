// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "job/json_lines.h"

#include <initializer_list>
#include <string_view>
#include <vector>

/// What write_job() is made of: a function for each part of the file.
namespace drawercast::job {

using Width = JsonLines::Width;

template <class Item, class Write>
void write_list(JsonLines& out, std::string_view key, const std::vector<Item>& items, Write write) {
    out.key(key);
    out.begin_list(Width::wide);
    for (const auto& item : items) write(out, item);
    out.end_list();
}

void write_numbers(JsonLines& out, std::string_view key, const std::vector<double>& values);
void write_outline(JsonLines& out, const shape::Given& given); ///< with its key
void write_pose(JsonLines& out, const shape::Pose& pose);      ///< as two members

void write_shop(JsonLines& out, const Shop& shop);
void write_foam(JsonLines& out, const Foam& foam);
void write_mold(JsonLines& out, const Mold& mold);
void write_minimums(JsonLines& out, const Minimums& minimums);
void write_object(JsonLines& out, const Object& object);
void write_drawer(JsonLines& out, const Drawer& drawer);
void write_left_as_is(JsonLines& out, const LeftAsIs& left);
void write_as_built(JsonLines& out, const AsBuilt& built);
void write_cast(JsonLines& out, const Cast& cast);
void write_mark(JsonLines& out, const Mark& mark);

} // namespace drawercast::job
