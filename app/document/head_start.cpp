// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/head_start.h"

#include "job/store.h"

#include <exception>
#include <filesystem>
#include <utility>

namespace drawercast::app {
namespace {

plan::Planner answered(const std::string& path) {
    try {
        plan::Planner planner;
        if (!std::filesystem::is_regular_file(path)) return planner; // a pipe can be read once
        if (const auto job = job::load_job(path)) planner.fast(*job);
        return planner;
    } catch (const std::exception&) {
        return {};
    }
}

} // namespace

std::future<plan::Planner> head_start(std::string path) {
    return std::async(std::launch::async, [path = std::move(path)] { return answered(path); });
}

} // namespace drawercast::app
