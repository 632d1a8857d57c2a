// SPDX-License-Identifier: GPL-3.0-or-later
// What the canvas draws, layer by layer.
#include "job/edit.h"

#include "canvas/hit.h"
#include "canvas/ink_difference.h"
#include "canvas/sheet_canvas.h"
#include "canvas/still_marks.h"
#include "canvas/vent_live.h"
#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "sheets/check_words.h"
#include "sheets/drawer_plan.h"
#include "sheets/paint.h"

#include <QPaintEvent>
#include <QPainter>

#include <algorithm>
#include <iterator>
#include <set>

namespace drawercast::app {

namespace {

constexpr int focus_px = 2;
constexpr double moving_wash = 0.75; ///< opacity

void append(sheets::Inks& inks, sheets::Inks more) {
    inks.insert(inks.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

} // namespace

bool SheetCanvas::shows_old() const {
    return spec_of(shown_).slow && document_.last_built() && !document_.built_is_current();
}

/// Sheets to look at are drawn once for what is shown; a slow one of the last job worked out.
std::optional<Drawn> SheetCanvas::drawn() const {
    const auto& spec = spec_of(shown_);
    if (spec.arranged) return draw(document_.shown(), document_.plan());
    const double px_per_mm = spec.turned ? view_.px_per_mm() : 0;
    if (kept_ && kept_->sheet == shown_ && kept_->px_per_mm == px_per_mm) return kept_->drawn;
    Kept kept{shown_, px_per_mm, {}};
    const auto& built = document_.last_built();
    if (spec.slow && built)
        kept.drawn = draw(job::in_units(document_.last_built_job(), document_.shown().display_units), *built);
    else
        kept.drawn = draw(document_.shown(), document_.plan()); // of a slow one what there is already
    kept_ = std::move(kept);
    return kept_->drawn;
}

std::optional<Drawn> SheetCanvas::draw(const job::Job& job, const plan::Plan& plan) const {
    const auto* drawer = job::find_drawer(job, selection_.drawer());
    const auto* at = plan::find_drawer(plan, selection_.drawer());
    if (drawer == nullptr || at == nullptr) return std::nullopt;
    plan::DrawerPlan of_drawer = *at;
    if (spec_of(shown_).vents && of_drawer.air)
        if (auto now = air()) of_drawer.air = std::move(now);
    const SheetIn in{job,
                     plan,
                     *drawer,
                     of_drawer,
                     [&]() -> const std::optional<casting::PatternBoard>& { return board(job, of_drawer); },
                     zones_ ? sheets::Zones::lettered : sheets::Zones::none,
                     [&]() -> const std::optional<sheets::SeenMold>& { return mold(job, of_drawer); },
                     view_.px_per_mm()};
    return spec_of(shown_).draw(in);
}

const std::optional<casting::PatternBoard>& SheetCanvas::board(const job::Job& job,
                                                               const plan::DrawerPlan& plan) const {
    if (!board_ || board_->drawer != plan.id || !(board_->job == job))
        board_ = Board{job, plan.id, plan::pattern_board(job, plan)};
    return board_->answer;
}

const std::optional<sheets::SeenMold>& SheetCanvas::mold(const job::Job& job,
                                                         const plan::DrawerPlan& plan) const {
    if (mold_ && mold_->look == look_) return mold_->seen;
    mold_ = Mold{look_, std::nullopt};
    if (const auto in = sheets::build_up_of(job, plan)) mold_->seen = sheets::seen_mold(*in, look_);
    return mold_->seen;
}

/// Names beside a picture are as large at any scale: a first fit tells the scale, others are drawn for it.
void SheetCanvas::fit() {
    fitted_ = true;
    constexpr int lettered_again = 3;
    if (turning()) view_ = ViewMap(); // whatever was in view before, the same picture comes of it
    for (int round = 0; turning() && round < lettered_again; ++round)
        view_ = fitted_to(drawn().value_or(Drawn()));
    set_view(fitted_to(drawn().value_or(Drawn())));
}

ViewMap SheetCanvas::fitted_to(Drawn sheet) const {
    constexpr double margin_px = 12;
    constexpr double most_for_words = 0.4; // of a small view: the drawing comes first
    const auto held = [](double& lower, double& upper, double size) {
        const double share = most_for_words * size / std::max(lower + upper, 1.0);
        if (share < 1) lower *= share, upper *= share;
    };
    held(sheet.lower_px.x, sheet.upper_px.x, width());
    held(sheet.lower_px.y, sheet.upper_px.y, height());
    const QSizeF room(width() - sheet.lower_px.x - sheet.upper_px.x,
                      height() - sheet.lower_px.y - sheet.upper_px.y);
    return ViewMap::fitted(sheet.area, room, margin_px).panned({sheet.lower_px.x, sheet.upper_px.y});
}

bool SheetCanvas::moves(const std::string& subject) const {
    return !subject.empty() && std::find(moving_.begin(), moving_.end(), subject) != moving_.end();
}

sheets::Inks SheetCanvas::still_ink() {
    const auto view = sheet_view(view_);
    const auto made = drawn();
    still_drawn_ = made.has_value();
    if (!made) return words_ink(missing(), QRectF(rect()).center());
    const Drawn& sheet = *made;
    const auto* plan = drawer_plan();
    sheets::Inking ground(view, theme_);
    for (const auto& mark : sheet.marks)
        if (mark.layer == sheets::Layer::ground) ground.ink(mark);
    auto inks = ground.take();
    const bool plan_sheet = arranging() && plan != nullptr && drawer() != nullptr;
    if (plan_sheet && plan->insert && preferences_.grid_shown())
        append(inks, grid_ink(plan->insert->box, grid_mm(), view_, theme_));
    sheets::Inking still(view, theme_, ground.taken(), {});
    for (const auto& mark : sheet.marks)
        if (mark.layer == sheets::Layer::still && !moves(mark.subject)) still.ink(mark);
    append(inks, still.take());
    still_taken_ = still.taken();
    if (venting())
        if (const auto now = air()) append(inks, vent_lock_ink(*now, view_, theme_));
    if (!plan_sheet) return inks;
    append(inks, lock_ink(*plan, *drawer(), view_, theme_));
    if (drawer()->pockets.empty() && moving_.empty()) append(inks, invitation_ink(*plan));
    for (const auto& ghost : ghosts_)
        append(inks, sheets::ink_of(
                         {{sheets::Layer::still, {}, sheets::PathMark{ghost, theme::LineRole::under, {}}}},
                         view, theme_));
    return inks;
}

sheets::Inks SheetCanvas::invitation_ink(const plan::DrawerPlan& plan) const {
    if (!plan.insert) return {};
    return words_ink(invitation_, view_.to_px(plan.insert->box).center());
}

/// A heading and lines below it.
sheets::Inks SheetCanvas::words_ink(const QStringList& lines, QPointF middle) const {
    if (lines.isEmpty()) return {};
    constexpr double pitch_px = 24, heading_px = 18, row_px = 13;
    shape::Vec at{middle.x(), middle.y() - pitch_px * static_cast<double>(lines.size()) / 2};
    sheets::Inks inks{sheets::About{}};
    for (const QString& line : lines) {
        const bool heading = &line == &lines.front();
        const theme::Lettering face{heading ? theme::Face::drafting : theme::Face::regular,
                                    heading ? heading_px : row_px, 1};
        sheets::write(inks, line, at, face, heading ? theme_.ink : theme_.ink2, sheets::Align::center);
        at.y += heading ? pitch_px * 1.4 : pitch_px;
    }
    return inks;
}

void SheetCanvas::redraw() {
    zones_ = selection_.check().has_value();
    update(picture_.draw({size(), devicePixelRatioF(), view_, theme_.paper}, still_ink()));
    redraw_over();
}

void SheetCanvas::redraw_over() {
    sheets::Inks washes, over;
    std::vector<sheets::SetPlate> plates;
    taken_ = still_taken_;
    const auto* plan = drawer_plan();
    const auto* shown_drawer = drawer();
    if (arranging() && plan != nullptr && shown_drawer != nullptr) {
        const auto view = sheet_view(view_);
        const auto& job = document_.shown();
        sheets::Inking moving(view, theme_, still_taken_, {});
        for (const auto& mark : sheets::pocket_washes(job, *shown_drawer, *plan, moving_)) moving.ink(mark);
        washes = moving.take();
        sheets::Inking rest(view, theme_, moving.taken(), plates_);
        for (const auto& mark : sheets::pocket_words(job, *plan, moving_)) rest.ink(mark);
        for (const auto& mark : sheets::check_marks(job, *plan)) rest.ink(mark);
        over = rest.take();
        taken_ = rest.taken();
        plates = rest.plates();
    }
    update(changed_region(washes_, washes) + changed_region(over_, over));
    washes_ = std::move(washes);
    over_ = std::move(over);
    plates_ = std::move(plates);
    redraw_live();
}

const std::vector<std::string>& SheetCanvas::measured() const { return moving_.empty() ? nudged_ : moving_; }

std::optional<LiveScene> SheetCanvas::scene() const {
    const auto* plan = drawer_plan();
    if (!arranging() || plan == nullptr) return std::nullopt;
    LiveScene scene{*plan,
                    document_.shown(),
                    drop_ ? moving_ : selection_.pockets(),
                    measured(),
                    selection_.notch(),
                    hovered_,
                    guides_,
                    band_,
                    note_,
                    drop_ || measuring_ ? std::nullopt : tool_.turn_ring(),
                    std::nullopt,
                    measuring_ ? ruler_.under() : std::nullopt,
                    std::nullopt,
                    view_,
                    size(),
                    theme_,
                    taken_};
    if (const auto& measured = ruler_.measured(); measuring_ && measured)
        scene.measured = std::pair(measured->from, measured->to);
    if (!moving_.empty()) scene.last_air = glimpse_.at();
    if (const auto& check = selection_.check())
        for (const auto& plate : plates_)
            if (plate.key == sheets::key_of(*check)) scene.plate = plate.box;
    return scene;
}

void SheetCanvas::redraw_live() {
    const auto scene = this->scene();
    sheets::Inks live = scene ? live_ink(*scene) : sheets::Inks();
    if (const auto air = venting() && still_drawn_ ? this->air() : nullptr)
        live = vent_ink({*air, document_.job().display_units, vent_tool_.chosen(), hovered_vent_,
                         vent_tool_.trial(), view_, size(), theme_, still_taken_});
    const QRegion changed = changed_region(live_, live);
    live_ = std::move(live);
    if (!changed.isEmpty()) update(changed);
}

void SheetCanvas::update_frame() { update(QRegion(rect()) - rect().adjusted(3, 3, -3, -3)); }

void SheetCanvas::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    const QRegion region = event->region();
    picture_.paint(painter, region);
    painter.setClipRegion(region);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setOpacity(moving_wash);
    paint_inside(washes_, painter, region);
    painter.setOpacity(1);
    paint_inside(live_, painter, region); // its words keep off names and checks, its lines go under them
    paint_inside(over_, painter, region);
    paint_ribbon(painter);
    if (!hasFocus()) return;
    painter.setPen(QPen(theme_.blue, focus_px));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

void SheetCanvas::resizeEvent(QResizeEvent*) { refit(); }

void SheetCanvas::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) redraw();
    QWidget::changeEvent(event);
}

} // namespace drawercast::app
