// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/quick_quote.h"

#include "base/units.h"
#include "casting/dose.h"
#include "casting/fillet.h"
#include "casting/profile.h"
#include "job/catalog.h"
#include "job/ranges.h"
#include "layout/pocket.h"
#include "mold/plate_options.h"
#include "plan/cost.h"
#include "plan/foam_in_mold.h"
#include "runsheet/steps.h"
#include "shape/enlargement.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>

namespace drawercast::plan {

namespace {

constexpr double block_shape = 1.5; ///< length over width of a middling object (our guess)

/// One way the job may turn out.
struct Guess {
    double rise = 1; ///< of the foam's expansion
    double area_share = 0.5;
    double depth_share = quick_depth_share;
    double objects = 10;
    double hours = 1;
    double board_use = quick_board_use;
    int further_boards = quick_further_boards;
};

struct Outcome {
    double mixed_ml = 0;
    double hours = 0;
    double days = 0;
    double sheets = 0;
    Cost cost;
};

/// What is the same in all of them.
class Quoting {
  public:
    Quoting(const job::Job& job, const QuickIn& in, const casting::Profile& profile)
        : job_(job), in_(in), profile_(profile), board_(board()) {
        const auto firmness = job.foam->firmness;
        job::Drawer drawer;
        gap_mm_ = layout::gap_of(drawer, firmness);
        for (const QuickDrawer& one : in.drawers) area_mm2_ += insert_mm2(one);
    }

    Expected<Outcome> outcome(const Guess& guess) const {
        Outcome out;
        std::vector<runsheet::DrawerWork> works;
        double board_mm2 = 0, closures = 0;
        for (std::size_t i = 0; i < in_.drawers.size(); ++i) {
            const QuickDrawer& drawer = in_.drawers[i];
            const double blocks = guess.objects * insert_mm2(drawer) / area_mm2_;
            const auto dose = dose_of(drawer, blocks, guess);
            if (!dose) return dose.error();
            out.mixed_ml += dose->mixed_ml;
            const double around = 2 * (drawer.width_mm + drawer.depth_mm);
            closures += std::ceil(around / quick_closure_pitch_mm);
            board_mm2 += board_needed_mm2(drawer, guess);
            works.push_back(work(drawer, blocks, *dose));
            works.back().id = "d" + std::to_string(i + 1);
        }
        const double sheet_mm2 = board_.sheet_length_mm * board_.sheet_width_mm;
        out.sheets = std::ceil(board_mm2 / (sheet_mm2 * guess.board_use)) + guess.further_boards;
        auto tasks = runsheet::tasks_for(works, {job_.shop->temperature_c, job_.shop->people});
        for (auto& task : tasks) task.hands_min *= guess.hours;
        CostBasis basis;
        basis.hours = hours_of(tasks, job_.shop->people);
        basis.days = in_shop_hours(tasks, *job_.shop).days;
        basis.wood = out.sheets * board_.price;
        basis.closures = closures * screw_price();
        basis.mixed_ml = out.mixed_ml;
        for (job::Kit kit : job_.foam->kits) {
            kit.at_hand = 0;
            basis.kits.push_back(std::move(kit));
        }
        basis.hour_price = job_.shop->hour_price;
        basis.margin = job_.shop->margin;
        out.cost = cost_of(basis, 1);
        out.hours = out.cost.hours;
        out.days = basis.days;
        return out;
    }

  private:
    double k() const { return shape::enlargement_for(job_.foam->shrinkage); }
    double insert_mm2(const QuickDrawer& drawer) const {
        return (drawer.width_mm - 2 * gap_mm_) * (drawer.depth_mm - 2 * gap_mm_);
    }

    /// Blocks and clay of middling rectangles, all alike.
    Expected<casting::Dose> dose_of(const QuickDrawer& drawer, double blocks, const Guess& guess) const {
        const double area = insert_mm2(drawer) * k() * k(), high = drawer.insert_mm * k();
        const double under = area * guess.area_share;
        double clay = 0;
        if (blocks > 0) {
            const double wide = std::sqrt(under / blocks / block_shape);
            const double r = std::min(job_.mold.fillet_mm, high * guess.depth_share);
            const auto one = shape::contour_of(shape::Rectangle{wide * block_shape, wide, 0});
            if (one) clay = blocks * casting::fillet_alone(*one, r);
        }
        casting::Profile profile = profile_;
        for (double* rise : {&profile.expansion, &profile.expansion_low, &profile.expansion_high})
            *rise = 1 + (*rise - 1) * guess.rise;
        return casting::dose_of(
            {profile, job_.foam, job_.shop, area * high - under * high * guess.depth_share - clay, area});
    }

    double board_needed_mm2(const QuickDrawer& drawer, const Guess& guess) const {
        const double t = board_.thickness_mm, w = drawer.width_mm * k(), d = drawer.depth_mm * k();
        const double covers = 2 * (w + 4 * t) * (d + 4 * t);
        const double walls = 2 * (w + d + 2 * t) * drawer.insert_mm * k();
        const double layers = std::ceil(drawer.insert_mm * guess.depth_share / t);
        return covers + walls + insert_mm2(drawer) * guess.area_share * layers;
    }

    runsheet::DrawerWork work(const QuickDrawer& drawer, double blocks, const casting::Dose& dose) const {
        const double around = 2 * (drawer.width_mm + drawer.depth_mm);
        runsheet::DrawerWork work;
        work.blocks = static_cast<int>(std::ceil(blocks));
        work.closures = static_cast<int>(std::ceil(around / quick_closure_pitch_mm));
        work.vents = static_cast<int>(std::ceil(around / job_.mold.vent_spacing_mm));
        work.insert_m2 = insert_mm2(drawer) / units::mm2_per_m2;
        work.batches = dose.batches;
        work.demold_min = profile_.demold_min;
        work.crush = job_.foam->crush;
        return work;
    }

    /// The cheapest by area of those whose edge takes a screw, else the thickest.
    job::Board board() const {
        const auto& boards = job::boards_of(*job_.shop);
        const auto cost = [](const job::Board& one) {
            return one.price / (one.sheet_length_mm * one.sheet_width_mm);
        };
        const double least_mm = mold::least_edge_mm(job::closures_of(*job_.shop));
        const job::Board* best = &boards.front();
        for (const auto& one : boards) {
            const bool thick = one.thickness_mm >= least_mm, was = best->thickness_mm >= least_mm;
            if (thick ? !was || cost(one) < cost(*best) : !was && one.thickness_mm > best->thickness_mm)
                best = &one;
        }
        return *best;
    }

    double screw_price() const {
        double sum = 0;
        int count = 0;
        for (const auto& one : job::closures_of(*job_.shop))
            if (one.kind == job::ClosureKind::screw) sum += one.price, ++count;
        return count > 0 ? sum / count : 0;
    }

    const job::Job& job_;
    const QuickIn& in_;
    const casting::Profile& profile_;
    job::Board board_;
    double gap_mm_ = 0;
    double area_mm2_ = 0;
};

/// Every guess with one thing at one end of it.
std::vector<Guess> ends_of(const Guess& middle, double uncertainty) {
    std::vector<Guess> ends(14, middle);
    ends[0].rise = 1 - uncertainty, ends[1].rise = 1 + uncertainty;
    ends[2].area_share *= 1 - quick_area_off;
    ends[3].area_share = std::min(0.95, middle.area_share * (1 + quick_area_off));
    ends[4].depth_share = quick_depth_low, ends[5].depth_share = quick_depth_high;
    ends[6].objects *= 1 - quick_objects_off, ends[7].objects *= 1 + quick_objects_off;
    ends[8].hours = quick_hours_low, ends[9].hours = quick_hours_high;
    ends[10].board_use = quick_board_use_low, ends[11].board_use = quick_board_use_high;
    ends[12].further_boards = quick_further_low, ends[13].further_boards = quick_further_high;
    return ends;
}

Ranged ranged(const Outcome& middle, const std::vector<Outcome>& ends,
              const std::function<double(const Outcome&)>& value) {
    const double expected = value(middle);
    double below = 0, above = 0;
    for (std::size_t i = 0; i + 1 < ends.size(); i += 2) {
        const double a = value(ends[i]) - expected, b = value(ends[i + 1]) - expected;
        const double down = std::min({a, b, 0.0}), up = std::max({a, b, 0.0});
        below += down * down, above += up * up;
    }
    return {std::max(0.0, expected - std::sqrt(below)), expected, expected + std::sqrt(above)};
}

std::optional<Problem> refused(const QuickIn& in) {
    const auto problem = [](Phrase what, Phrase fix) {
        return Problem{"quick-quote", {}, std::move(what), std::move(fix)};
    };
    if (in.drawers.empty())
        return problem(phrase("there is no drawer to quote"), phrase("Give one drawer at least"));
    const auto within = [](double value, const job::Range& range) {
        return value > range.least && value <= range.most;
    };
    for (const QuickDrawer& drawer : in.drawers) {
        constexpr double least_side_mm = 50;
        for (const double side : {drawer.width_mm, drawer.depth_mm})
            if (side < least_side_mm || !within(side, job::range_of("/outline/size_mm")))
                return problem(phrase("a drawer must be 50 mm to 10 m wide and deep"),
                               phrase("Give its inside size"));
        if (!within(drawer.insert_mm, job::range_of("/drawers/*/insert_mm")))
            return problem(phrase("an insert must be over 5 mm and at most 500 mm thick"),
                           phrase("Give its thickness"));
    }
    if (in.objects < 0 || in.objects > 10000)
        return problem(phrase("there may be 0 to 10000 objects"), phrase("Give about how many"));
    if (!(in.area_share > 0 && in.area_share <= 0.9))
        return problem(phrase("objects may cover up to 90 % of an insert, and must cover some of it"),
                       phrase("Give about how much"));
    return std::nullopt;
}

} // namespace

Expected<QuickQuote> quick_quote(const job::Job& job, const QuickIn& in) {
    if (auto problem = refused(in)) return *problem;
    const auto profile = profile_today(job);
    if (!profile) return profile.error();
    const Quoting quoting(job, in, *profile);
    Guess guess;
    guess.area_share = in.area_share, guess.objects = in.objects;
    const auto middle = quoting.outcome(guess);
    if (!middle) return middle.error();
    std::vector<Outcome> ends;
    for (const Guess& end : ends_of(guess, profile->uncertainty)) {
        const auto outcome = quoting.outcome(end);
        ends.push_back(outcome ? *outcome : *middle); // an end that can't be cast says nothing of the price
    }
    const auto over = [&](double (*value)(const Outcome&)) { return ranged(*middle, ends, value); };
    QuickQuote quote;
    quote.mixed_ml = over([](const Outcome& one) { return one.mixed_ml; });
    quote.hours = over([](const Outcome& one) { return one.hours; });
    quote.days = over([](const Outcome& one) { return one.days; });
    quote.days = {std::floor(quote.days.low), quote.days.expected, std::ceil(quote.days.high)};
    quote.sheets = over([](const Outcome& one) { return one.sheets; });
    quote.sheets = {std::floor(quote.sheets.low), quote.sheets.expected, std::ceil(quote.sheets.high)};
    quote.foam = over([](const Outcome& one) { return one.cost.foam; });
    quote.wood = over([](const Outcome& one) { return one.cost.wood; });
    quote.work = over([](const Outcome& one) { return one.cost.work; });
    quote.total = over([](const Outcome& one) { return one.cost.total; });
    for (const auto& kit : job.foam->kits) quote.foam_priced = quote.foam_priced || kit.price > 0;
    quote.work_priced = job.shop->hour_price > 0;
    return quote;
}

} // namespace drawercast::plan
