// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/builder.h"

#include "base/side_by_side.h"
#include "layout/left_as_is.h"
#include "plan/air_stage.h"
#include "plan/plate_stage.h"
#include "plan/stock_checks.h"
#include "plan/stock_stage.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <map>
#include <mutex>
#include <string>
#include <utility>
#include <vector>

namespace drawercast::plan {

/// What is worth remembering of each drawer, by its id.
struct Builder::Memory {
    std::map<std::string, AirStage> air;
    std::map<std::string, PlateStage> plate;
};

Builder::Builder() : memory_(std::make_unique<Memory>()) {}
Builder::~Builder() = default;
Builder::Builder(Builder&&) noexcept = default;
Builder& Builder::operator=(Builder&&) noexcept = default;

namespace {

constexpr double mapped = 0.25; ///< of a drawer's answer, once its air is followed (our guess)
constexpr double held = 0.8;    ///< of a round of plate and vents, once the plate is found

/// What is a part of longer work: 0 … 1 of it become `from` … `to`.
Watch part_of(const Watch& watch, double from, double to) {
    return [&watch, from, to](double done) { return watch(from + (to - from) * done); };
}

void tidy_checks(const job::Job& job, DrawerPlan& plan) {
    std::stable_sort(plan.checks.begin(), plan.checks.end(), layout::comes_before);
    layout::mark_left_as_is(plan.checks, job.left_as_is, plan.id);
}

std::size_t unvented(const DrawerPlan& plan) {
    if (!plan.air) return 0;
    const auto& shares = plan.air->vented.shares_ml;
    return static_cast<std::size_t>(
        std::count_if(shares.begin(), shares.end(), [](double ml) { return ml > air::vented_ml; }));
}

/// Plate and vents by turns: a plate for the air that is left so far, vents between what stands on it. Then
/// once more for the air those leave, with stiffeners off the places that could not be vented, until it holds
/// and nothing is left, or PlateStage::rounds are over: then the round counts that holds and leaves fewest
/// places, the earlier of equals.
void hold_and_vent(const job::Job& job, const job::Drawer& drawer, AirStage& air, PlateStage& plate,
                   DrawerPlan& plan, const Watch& watch) {
    std::vector<shape::Vec> last_places;
    DrawerPlan now = plan, best = plan;
    std::optional<std::pair<bool, std::size_t>> least; // of a round: whether it fails, and what it leaves
    for (std::size_t round = 0; round < PlateStage::rounds; ++round) {
        now.checks = plan.checks;
        const double begun = 1 - std::pow(0.5, round); // each round is as likely the last
        const Watch of_round = part_of(watch, begun, (1 + begun) / 2);
        if (!plate.design(job, last_places, round, now, part_of(of_round, 0, held))) return;
        if (!now.plate) return; // no dose: then no air stays either
        const mold::PlateDesign design = now.plate->answer.design;
        const bool holds = now.plate->answer.passes;
        if (!air.vent(job, drawer, clear_of(design), design.board.thickness_mm, now,
                      part_of(of_round, held, 1)))
            return;
        const std::pair found(!plate.check(job, now), unvented(now));
        if (!least || found < *least) least = found, best = now;
        const bool another = now.air && add_unvented(*now.air, last_places);
        if (design.stiffeners.empty() && !found.first) break; // nothing stands over them
        if (round == 0 && !holds) break;                      // under no less pressure will another
        if (!found.first && !another) break;
    }
    if (!plate.hold_below(job, best, watch)) return;
    plan = std::move(best);
    plate_words(job, plan);
}

} // namespace

std::optional<Plan> Builder::build(const job::Job& job, Plan quick, const Watch& watch) {
    struct Part {
        AirStage& air;
        PlateStage& plate;
        double far = 0;
    };
    std::vector<Part> parts;
    for (const DrawerPlan& plan : quick.drawers)
        parts.push_back({memory_->air[plan.id], memory_->plate[plan.id]});
    std::mutex telling;
    bool stopped = false;
    const auto watch_of = [&](std::size_t i) -> Watch {
        return [&, i](double done) { // some stages start over: what was told isn't taken back
            const std::lock_guard lock(telling);
            parts[i].far = std::max(parts[i].far, done);
            double sum = 0;
            for (const Part& part : parts) sum += part.far;
            return stopped = stopped || watch(sum / static_cast<double>(parts.size()));
        };
    };
    // Drawers know nothing of each other. Stages of one, in this order: air, then plate and vents. Each puts
    // its part and its checks into quick.drawers[i].
    side_by_side(parts.size(), [&](std::size_t i) {
        const Watch of_drawer = watch_of(i);
        if (of_drawer(0)) return;
        DrawerPlan& plan = quick.drawers[i];
        const job::Drawer& drawer = *job.drawers[i];
        if (!parts[i].air.map(job, drawer, plan, part_of(of_drawer, 0, mapped))) return;
        hold_and_vent(job, drawer, parts[i].air, parts[i].plate, plan, part_of(of_drawer, mapped, 1));
    });
    if (stopped) return std::nullopt;
    quick.stock = std::make_shared<const StockPlan>(stock_of(job, quick));
    for (DrawerPlan& plan : quick.drawers) {
        const auto more = stock_checks(*quick.stock, plan.id);
        plan.checks.insert(plan.checks.end(), more.begin(), more.end());
        tidy_checks(job, plan);
    }
    const auto gone = [&](const auto& known) {
        return std::none_of(quick.drawers.begin(), quick.drawers.end(),
                            [&](const DrawerPlan& plan) { return plan.id == known.first; });
    };
    std::erase_if(memory_->air, gone);
    std::erase_if(memory_->plate, gone);
    if (watch(1)) return std::nullopt;
    return quick;
}

} // namespace drawercast::plan
