// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet's view, and the port to the tools; what is drawn is in sheet_canvas_draw.cpp, how events reach
// the tools in sheet_canvas_input.cpp.
#include "canvas/sheet_canvas.h"

#include "job/edit.h"

#include "canvas/canvas_access.h"
#include "canvas/stale_ribbon.h"
#include "canvas/still_marks.h"
#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "sheets/check_words.h"

#include <QAccessible>
#include <QScreen>

#include <algorithm>

namespace drawercast::app {

SheetCanvas::SheetCanvas(Document& document, Selection& selection, const Preferences& preferences,
                         QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), preferences_(preferences),
      theme_(theme::light_theme()), contents_(document, selection), arrange_(*this), vents_(*this),
      turn_([this] {
          if (contents_.spec().tool == SheetTool::turn) refit();
          emit look_changed();
      }),
      ruler_(*this), drop_(*this) {
    tell_readers_of_pockets();
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAcceptDrops(true);
    setMinimumSize(240, 140);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("Drawer plan"));
    connect(&document_, &Document::shown_changed, this, &SheetCanvas::on_shown_changed);
    connect(&document_, &Document::replaced, this, &SheetCanvas::on_replaced);
    connect(&document_.building(), &Building::progressed, this, &SheetCanvas::set_progress);
    connect(&document_.building(), &Building::busy_changed, this, [this] { set_progress(0); });
    connect(&glimpse_, &AirGlimpse::changed, this, &SheetCanvas::redraw_live);
    connect(&selection_, &Selection::changed, this, &SheetCanvas::on_selection_changed);
    connect(&preferences_, &Preferences::changed, this, &SheetCanvas::redraw);
}

void SheetCanvas::set_theme(const theme::Theme& theme) {
    theme_ = theme;
    refit();
}

void SheetCanvas::show_sheet(SheetId sheet) {
    if (sheet == contents_.sheet()) return;
    set_measuring(false);
    sheet_tool().cancel();
    sheet_tool().leave();
    contents_.set_sheet(sheet);
    show_cursor();
    setAccessibleName(sheet_words(contents_.spec().name));
    describe();
    fitted_ = true;
    refit();
}

void SheetCanvas::set_invitation(const QStringList& lines) {
    invitation_ = lines;
    redraw();
}

// ---- port ----

const job::Job& SheetCanvas::job() const { return document_.job(); }
const job::Job& SheetCanvas::shown() const { return document_.shown(); }

void SheetCanvas::preview(std::optional<job::Job> job, const std::vector<std::string>& moving) {
    if (!job) {
        if (moving_.empty() && !document_.previewing()) return redraw_live();
        end_moving();
        if (!document_.previewing()) return redraw();
        return document_.preview(std::nullopt);
    }
    if (moving != moving_) {
        if (const auto* plan = drawer_plan())
            for (const auto& subject : moving)
                if (const auto* pocket = find_pocket(*plan, subject)) ghosts_.push_back(outline_of(*pocket));
        moving_ = moving;
        redraw();
    } else if (document_.previewing() && *job == document_.shown()) {
        return redraw_live(); // a snap holds it where it is; the guides may be others
    }
    document_.preview(std::move(job));
}

void SheetCanvas::end_moving() {
    moving_.clear();
    ghosts_.clear();
    glimpse_.forget();
}

void SheetCanvas::commit(const QString& what, job::Job job) {
    end_moving();
    document_.commit(what, std::move(job));
}

void SheetCanvas::commit_nudge(const QString& what, job::Job job, const QString& key) {
    document_.commit(what, std::move(job), {key});
}

const std::vector<std::string>& SheetCanvas::chosen() const { return selection_.pockets(); }
void SheetCanvas::choose(std::vector<std::string> subjects) {
    selection_.choose_pockets(std::move(subjects));
}
std::optional<std::size_t> SheetCanvas::chosen_notch() const { return selection_.notch(); }
void SheetCanvas::choose_notch(const std::string& subject, std::size_t notch) {
    selection_.choose_notch(subject, notch);
}
void SheetCanvas::choose_check(layout::Check check) { selection_.choose_check(std::move(check)); }
std::optional<shape::Vec> SheetCanvas::chosen_vent() const { return selection_.vent(); }
void SheetCanvas::choose_vent(std::optional<shape::Vec> at) { selection_.choose_vent(at); }

std::optional<std::size_t> SheetCanvas::vent_chosen() const {
    return contents_.spec().tool == SheetTool::vents ? vents_.chosen() : std::nullopt;
}

bool SheetCanvas::snapping() const { return preferences_.snapping(); }
double SheetCanvas::grid_mm() const {
    return preferences_.grid_shown() ? preferences_.grid_mm(document_.shown().display_units) : 0;
}

void SheetCanvas::show_band(const std::optional<shape::Box>& band) {
    aids_.band = band;
    redraw_live();
}

const layout::Check* SheetCanvas::check_at(QPointF px) const {
    const auto* plan = drawer_plan();
    if (plan == nullptr || !arranging()) return nullptr;
    const shape::Box pointer{{px.x(), px.y()}, {px.x(), px.y()}};
    const auto& plates = layers_.plates();
    for (auto plate = plates.rbegin(); plate != plates.rend(); ++plate)
        if (shape::near(plate->box, pointer))
            for (const auto& check : plan->checks)
                if (sheets::key_of(check) == plate->key) return &check;
    return nullptr;
}

// ---- view ----

void SheetCanvas::set_view(const ViewMap& view) {
    view_ = view;
    layers_.forget_plates();
    redraw();
    emit view_changed();
}

void SheetCanvas::zoom_about(QPointF px, double factor) {
    fitted_ = false;
    set_view(view_.zoomed(factor, px));
}

void SheetCanvas::zoom_by(double factor) { zoom_about(QPointF(width() / 2.0, height() / 2.0), factor); }

void SheetCanvas::zoom_to(const shape::Box& box) {
    constexpr double margin_px = 36;
    fitted_ = false;
    set_view(ViewMap::fitted(box, size(), margin_px));
}

void SheetCanvas::pan(QPointF by_px) {
    fitted_ = false;
    set_view(view_.panned(by_px));
}

void SheetCanvas::refit() {
    if (fitted_ && isVisible()) return fit();
    redraw();
}

/// Names beside a picture are as large at any scale: a first fit tells the scale, others are drawn for it.
void SheetCanvas::fit() {
    fitted_ = true;
    constexpr int lettered_again = 3;
    const bool lettered = contents_.spec().tool == SheetTool::turn;
    if (lettered) view_ = ViewMap(); // whatever was in view before, the same picture comes of it
    for (int round = 0; lettered && round < lettered_again; ++round)
        view_ = fitted_to(contents_.drawn(sheet_look()).value_or(Drawn()));
    set_view(fitted_to(contents_.drawn(sheet_look()).value_or(Drawn())));
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

double SheetCanvas::reduction() const {
    const double px_per_mm = screen() ? screen()->logicalDotsPerInch() / 25.4 : theme::px_per_mm;
    return px_per_mm / view_.px_per_mm();
}

// ---- what changed ----

void SheetCanvas::on_shown_changed() {
    contents_.forget();
    vents_.renew();
    if (document_.previewing() && !moving_.empty()) {
        if (const auto* plan = drawer_plan(); arranging() && plan != nullptr)
            glimpse_.ask(document_.shown(), plan->id, *plan);
        return redraw_over();
    }
    if (!arrange_.busy() && !drop_.busy()) end_moving();
    describe();
    arranging() ? redraw() : refit(); // what was missing may be there now
}

/// What they hold and point at is of another drawer.
void SheetCanvas::drop_tools() {
    for (CanvasTool* one : {static_cast<CanvasTool*>(&arrange_), static_cast<CanvasTool*>(&vents_),
                            static_cast<CanvasTool*>(&turn_), static_cast<CanvasTool*>(&ruler_)}) {
        one->cancel();
        one->leave();
    }
}

void SheetCanvas::on_replaced() {
    drop_tools();
    contents_.forget();
    drop_.forget();
    glimpse_.forget();
    fitted_ = true;
    refit();
}

void SheetCanvas::on_selection_changed() {
    if (selection_.drawer() != shown_drawer_) {
        shown_drawer_ = selection_.drawer();
        contents_.forget();
        drop_tools();
        describe();
        fitted_ = true;
        return refit();
    }
    tell_chosen();
    if (selection_.check().has_value() != zones_) return redraw();
    redraw_live();
}

/// For those who listen: what is chosen, or what can be done.
void SheetCanvas::describe() {
    const bool nothing_yet = arranging() && drawer() != nullptr && drawer()->pockets.empty();
    setAccessibleDescription(nothing_yet ? invitation_.join(QStringLiteral("; ")) : sheet_tool().spoken());
}

void SheetCanvas::tell_chosen() {
    describe();
    const auto* plan = arranging() ? drawer_plan() : nullptr;
    const auto& chosen = selection_.pockets();
    if (plan == nullptr || chosen.empty()) return;
    const auto at = std::find_if(plan->pockets.begin(), plan->pockets.end(),
                                 [&](const auto& pocket) { return pocket->subject == chosen.back(); });
    if (at == plan->pockets.end()) return;
    QAccessibleEvent event(this, QAccessible::Focus);
    event.setChild(static_cast<int>(at - plan->pockets.begin()));
    QAccessible::updateAccessibility(&event);
}

void SheetCanvas::set_progress(double done) {
    progress_ = done;
    if (!contents_.spec().slow) return;
    update(ribbon_area(width()));
    if (!still_drawn_) redraw(); // its words tell how far it is
}

} // namespace drawercast::app
