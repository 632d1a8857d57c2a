// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/sheet_contents.h"

#include "job/edit.h"
#include "plan/air_stage.h"
#include "plan/sentences.h"

#include "document/document.h"
#include "document/selection.h"
#include "language/in_words.h"

namespace drawercast::app {

const job::Drawer* SheetContents::drawer() const {
    return job::find_drawer(document_.shown(), selection_.drawer());
}

const plan::DrawerPlan* SheetContents::drawer_plan() const {
    return plan::find_drawer(document_.plan(), selection_.drawer());
}

const plan::DrawerPlan* SheetContents::built_plan() const {
    const auto& built = document_.last_built();
    const auto* drawer = built ? plan::find_drawer(*built, selection_.drawer()) : nullptr;
    return drawer != nullptr && drawer->insert ? drawer : nullptr;
}

std::shared_ptr<const air::Answer> SheetContents::air() const {
    const auto* plan = built_plan();
    const auto* drawer = job::find_drawer(document_.job(), selection_.drawer());
    if (plan == nullptr || !plan->air || !plan->air->model || drawer == nullptr) return nullptr;
    if (document_.built_is_current()) return plan->air;
    if (!tried_) tried_ = plan::air_tried(document_.job(), *drawer, *plan, *plan->air);
    return tried_;
}

bool SheetContents::old() const {
    return spec().slow && document_.last_built() && !document_.built_is_current();
}

void SheetContents::forget() {
    kept_.reset();
    mold_.reset();
    tried_.reset();
}

bool SheetContents::keeps(const Look& look) const {
    if (!kept_ || kept_->sheet != sheet_) return false;
    return spec().tool != SheetTool::turn ||
           (kept_->look.px_per_mm == look.px_per_mm && kept_->look.mold == look.mold);
}

std::optional<Drawn> SheetContents::drawn(const Look& look) const {
    if (spec().tool == SheetTool::arrange) return draw(document_.shown(), document_.plan(), look);
    if (keeps(look)) return kept_->drawn;
    const auto& built = document_.last_built();
    Kept kept{sheet_, look, {}};
    if (spec().slow && built)
        kept.drawn =
            draw(job::in_units(document_.last_built_job(), document_.shown().display_units), *built, look);
    else
        kept.drawn = draw(document_.shown(), document_.plan(), look); // of a slow one what there is already
    kept_ = std::move(kept);
    return kept_->drawn;
}

std::optional<Drawn> SheetContents::draw(const job::Job& job, const plan::Plan& plan,
                                         const Look& look) const {
    const auto* drawer = job::find_drawer(job, selection_.drawer());
    const auto* at = plan::find_drawer(plan, selection_.drawer());
    if (drawer == nullptr || at == nullptr) return std::nullopt;
    plan::DrawerPlan of_drawer = *at;
    if (spec().tool == SheetTool::vents && of_drawer.air)
        if (auto now = air()) of_drawer.air = std::move(now);
    const SheetIn in{
        job,
        plan,
        *drawer,
        of_drawer,
        [&]() -> const std::optional<casting::PatternBoard>& { return board(job, of_drawer); },
        look.zones,
        [&]() -> const std::optional<sheets::SeenMold>& { return mold(job, of_drawer, look.mold); },
        look.px_per_mm};
    return spec().draw(in);
}

const std::optional<casting::PatternBoard>& SheetContents::board(const job::Job& job,
                                                                 const plan::DrawerPlan& plan) const {
    if (!board_ || board_->drawer != plan.id || !(board_->job == job))
        board_ = Board{job, plan.id, plan::pattern_board(job, plan)};
    return board_->answer;
}

const std::optional<sheets::SeenMold>& SheetContents::mold(const job::Job& job, const plan::DrawerPlan& plan,
                                                           const buildup::Look& look) const {
    if (mold_ && mold_->look == look) return mold_->seen;
    mold_ = Mold{look, std::nullopt};
    if (const auto in = sheets::build_up_of(job, plan)) mold_->seen = sheets::seen_mold(*in, look);
    return mold_->seen;
}

QStringList SheetContents::missing() const {
    QStringList lines{sheet_words(spec().name), sheet_words(spec().missing)};
    constexpr int most = 3;
    int said = 0;
    if (const auto* plan = drawer_plan())
        for (const auto& check : plan->checks)
            if (layout::to_mend(check) && said++ < most)
                lines << in_words(plan::sentence(check, document_.shown()));
    return lines;
}

} // namespace drawercast::app
