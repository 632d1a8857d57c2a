// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/builder.h"

#include "base/demand.h"


namespace drawercast::plan {

/// What is worth remembering of each drawer, by its id.
struct Builder::Memory {};

Builder::Builder() : memory_(std::make_unique<Memory>()) {}
Builder::~Builder() = default;
Builder::Builder(Builder&&) noexcept = default;
Builder& Builder::operator=(Builder&&) noexcept = default;

std::optional<Plan> Builder::build(const job::Job&, Plan quick, const Watch& watch) {
    const double drawers = static_cast<double>(quick.drawers.size());
    for (std::size_t i = 0; i < quick.drawers.size(); ++i) {
        if (watch(static_cast<double>(i) / drawers)) return std::nullopt;
        // Stages of one drawer, in this order: air, plate, vents. Each puts its part and its checks into
        // quick.drawers[i].
    }
    if (watch(1)) return std::nullopt;
    return quick;
}

Plan whole(const job::Job& job) {
    auto plan = Builder().build(job, compute(job), never_stop);
    DRAWERCAST_DEMAND(plan.has_value(), "nobody asked to stop");
    return std::move(*plan);
}

} // namespace drawercast::plan
