// SPDX-License-Identifier: GPL-3.0-or-later
// What the canvas draws, layer by layer.
#include "base/contains.h"

#include "canvas/sheet_canvas.h"
#include "canvas/stale_ribbon.h"
#include "canvas/still_marks.h"
#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "sheets/check_words.h"
#include "sheets/drawer_plan.h"

#include <QPaintEvent>
#include <QPainter>

#include <iterator>
#include <utility>

namespace drawercast::app {

namespace {

constexpr int focus_px = 2;

void append(sheets::Inks& inks, sheets::Inks more) {
    inks.insert(inks.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

} // namespace

SheetContents::Look SheetCanvas::sheet_look() const {
    return {view_.px_per_mm(), zones_ ? sheets::Zones::lettered : sheets::Zones::none, turn_.look()};
}

bool SheetCanvas::moves(const std::string& subject) const {
    return !subject.empty() && contains(moving_, subject);
}

QStringList SheetCanvas::missing() const {
    if (contents_.spec().slow && document_.building().busy())
        return {tr("Working it out…"),
                tr("air, plate and cuts: %1 %").arg(static_cast<int>(progress_ * 100))};
    return contents_.missing();
}

sheets::Inks SheetCanvas::still_ink(sheets::Taken& taken) {
    const auto view = sheet_view(view_);
    const auto sheet = contents_.drawn(sheet_look());
    still_drawn_ = sheet.has_value();
    if (!sheet) return words_ink(missing(), QRectF(rect()).center(), theme_);
    sheets::Inking ground(view, theme_);
    for (const auto& mark : sheet->marks)
        if (mark.layer == sheets::Layer::ground) ground.ink(mark);
    auto inks = ground.take();
    const auto* plan = arranging() ? drawer_plan() : nullptr;
    if (plan != nullptr && plan->insert && preferences_.grid_shown())
        append(inks, grid_ink(plan->insert->box, grid_mm(), view_, theme_));
    sheets::Inking still(view, theme_, ground.taken(), {});
    for (const auto& mark : sheet->marks)
        if (mark.layer == sheets::Layer::still && !moves(mark.subject)) still.ink(mark);
    append(inks, still.take());
    taken = still.taken();
    if (contents_.spec().tool == SheetTool::vents)
        if (const auto now = air()) append(inks, vent_lock_ink(*now, view_, theme_));
    if (plan != nullptr && drawer() != nullptr) append(inks, plan_ink(*plan, *drawer()));
    return inks;
}

/// What is drawn on the drawer plan besides its marks.
sheets::Inks SheetCanvas::plan_ink(const plan::DrawerPlan& plan, const job::Drawer& drawer) const {
    auto inks = lock_ink(plan, drawer, view_, theme_);
    if (plan.insert && drawer.pockets.empty() && moving_.empty())
        append(inks, words_ink(invitation_, view_.to_px(plan.insert->box).center(), theme_));
    for (const auto& ghost : ghosts_)
        append(inks, sheets::ink_of(
                         {{sheets::Layer::still, {}, sheets::PathMark{ghost, theme::LineRole::under, {}}}},
                         sheet_view(view_), theme_));
    return inks;
}

void SheetCanvas::redraw() {
    stale_ = !isVisible();
    if (stale_) return;
    zones_ = selection_.check().has_value();
    sheets::Taken taken;
    auto inks = still_ink(taken);
    update(layers_.set_still({size(), devicePixelRatioF(), view_, theme_.paper}, std::move(inks),
                             std::move(taken)));
    redraw_over();
}

void SheetCanvas::redraw_over() {
    CanvasLayers::Over over;
    over.taken = layers_.taken_still();
    const auto* plan = arranging() ? drawer_plan() : nullptr;
    const auto* shown_drawer = drawer();
    if (plan != nullptr && shown_drawer != nullptr) {
        const auto view = sheet_view(view_);
        const auto& job = document_.shown();
        sheets::Inking moving(view, theme_, layers_.taken_still(), {});
        for (const auto& mark : sheets::pocket_washes(job, *shown_drawer, *plan, moving_)) moving.ink(mark);
        over.washes = moving.take();
        sheets::Inking rest(view, theme_, moving.taken(), layers_.plates());
        for (const auto& mark : sheets::pocket_words(job, *plan, moving_)) rest.ink(mark);
        for (const auto& mark : sheets::check_marks(job, *plan)) rest.ink(mark);
        over.inks = rest.take();
        over.taken = rest.taken();
        over.plates = rest.plates();
    }
    update(layers_.set_over(std::move(over)));
    redraw_live();
}

void SheetCanvas::redraw_live() {
    LiveFrame frame{view_, size(), theme_, layers_.taken(), aids_, moving_, {}, {}};
    if (!moving_.empty()) frame.last_air = glimpse_.at();
    if (const auto& check = selection_.check()) frame.plate = layers_.plate_of(sheets::key_of(*check));
    const QRegion changed = layers_.set_live(!still_drawn_  ? sheets::Inks()
                                             : drop_.busy() ? arrange_.live(frame)
                                                            : tool().live(frame));
    if (!changed.isEmpty()) update(changed);
}

void SheetCanvas::update_frame() { update(QRegion(rect()) - rect().adjusted(3, 3, -3, -3)); }

void SheetCanvas::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    layers_.paint(painter, event->region());
    if (shows_old()) paint_ribbon(painter, width(), progress_, theme_);
    if (!hasFocus()) return;
    painter.setPen(QPen(theme_.blue, focus_px));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

void SheetCanvas::resizeEvent(QResizeEvent*) { refit(); }

void SheetCanvas::showEvent(QShowEvent* event) {
    if (stale_) refit();
    QWidget::showEvent(event);
}

void SheetCanvas::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) redraw();
    QWidget::changeEvent(event);
}

} // namespace drawercast::app
