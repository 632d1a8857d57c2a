// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/cost.h"

#include "base/demand.h"
#include "casting/kits.h"
#include "job/catalog.h"
#include "plan/stock_stage.h"
#include "stock/tubes.h"

#include <algorithm>

namespace drawercast::plan {

namespace {

template <class Goods>
double price_named(const std::vector<Goods>& list, const std::string& name) {
    const auto at =
        std::find_if(list.begin(), list.end(), [&](const Goods& one) { return one.name == name; });
    return at == list.end() ? 0 : at->price;
}

/// How many of a line are charged: all that are needed; of rods, clamps and straps, which come back, those
/// bought.
double charged_count(const job::Shop& shop, const stock::BuyLine& line) {
    if (line.goods != stock::Goods::closure) return line.needed;
    const auto& closures = job::closures_of(shop);
    const auto at = std::find_if(closures.begin(), closures.end(),
                                 [&](const job::Closure& one) { return one.name == line.name; });
    const bool used_up = at != closures.end() && at->kind == job::ClosureKind::screw;
    return used_up ? line.needed : line.buy;
}

double charged(const job::Shop& shop, const stock::BuyLine& line) {
    switch (line.goods) {
    case stock::Goods::board:
        return line.needed * price_named(job::boards_of(shop), line.name);
    case stock::Goods::stiffener:
        return line.needed * price_named(job::stiffeners_of(shop), line.name);
    case stock::Goods::tube:
        return line.needed * price_named(stock::tubes_of(shop), line.name);
    case stock::Goods::closure:
        return charged_count(shop, line) * price_named(job::closures_of(shop), line.name);
    case stock::Goods::screw:
    case stock::Goods::pin:
        return line.price;
    }
    return 0;
}

double package_price(const job::Shop& shop, stock::Supply supply) {
    for (const auto& pack : shop.supplies)
        if (pack.supply == stock::sold_as(supply)) return pack.price;
    return 0;
}

} // namespace

Hours hours_of(const std::vector<runsheet::Task>& tasks, int people) {
    Hours hours;
    for (const auto& task : tasks) (task.each_cast ? hours.each : hours.once) += task.hands_min * people / 60;
    return hours;
}

std::optional<CostBasis> cost_basis(const job::Job& job, const Plan& plan) {
    if (!plan.stock || plan.drawers.empty()) return std::nullopt;
    CostBasis basis;
    for (const auto& drawer : plan.drawers) {
        if (!drawer.dose) return std::nullopt;
        basis.mixed_ml += drawer.dose->mixed_ml;
    }
    for (const auto& line : plan.stock->buy) {
        const double price = charged(*job.shop, line);
        const bool small = line.goods == stock::Goods::closure || line.goods == stock::Goods::screw ||
                           line.goods == stock::Goods::pin;
        (small ? basis.closures : basis.wood) += price;
        basis.unpriced += price <= 0 && charged_count(*job.shop, line) > 0;
    }
    for (const auto& line : plan.stock->supplies) {
        if (!line.packages) continue;
        SupplyCost cost{0, 0, line.packages->amount, package_price(*job.shop, line.supply)};
        (stock::used_by_each_cast(line.supply) ? cost.each : cost.once) = line.amount;
        basis.supplies.push_back(cost);
    }
    basis.wood_priced = basis.wood > 0;
    const RunSheet sheet = run_sheet(job, plan);
    basis.hours = hours_of(sheet.tasks, job.shop->people);
    basis.days = sheet.schedule.days;
    for (job::Kit kit : job.foam->kits) {
        kit.at_hand = 0;
        basis.foam_priced = basis.foam_priced || kit.price > 0;
        basis.kits.push_back(std::move(kit));
    }
    basis.hour_price = job.shop->hour_price;
    basis.margin = job.shop->margin;
    return basis;
}

Cost cost_of(const CostBasis& basis, int sets) {
    DRAWERCAST_DEMAND(sets >= 1, "a run of one at least");
    Cost cost;
    cost.sets = sets;
    if (!basis.kits.empty()) cost.foam = casting::purchase_of({basis.mixed_ml * sets, basis.kits}).price;
    cost.wood = basis.wood;
    cost.closures = basis.closures;
    for (const SupplyCost& one : basis.supplies)
        cost.supplies += stock::packages_for(one.once + one.each * sets, one.package) * one.price;
    cost.hours = basis.hours.once + basis.hours.each * sets;
    cost.work = cost.hours * basis.hour_price;
    const double sum = cost.foam + cost.wood + cost.closures + cost.supplies + cost.work;
    cost.margin = sum * basis.margin;
    cost.total = sum + cost.margin;
    return cost;
}

} // namespace drawercast::plan
