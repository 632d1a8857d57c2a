// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet's view, and the port to the tools; what is drawn is in sheet_canvas_draw.cpp, what is taken from
// mouse and keys in sheet_canvas_input.cpp.
#include "canvas/sheet_canvas.h"

#include "job/edit.h"
#include "plan/air_stage.h"
#include "plan/say.h"
#include "plan/sentences.h"

#include "canvas/canvas_access.h"
#include "canvas/hit.h"
#include "canvas/still_marks.h"
#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "language/spoken.h"
#include "sheets/check_words.h"
#include "sheets/zones.h"

#include <QAccessible>
#include <QScreen>

#include <algorithm>

namespace drawercast::app {

namespace {
constexpr int nudged_ms = 1500;
}

SheetCanvas::SheetCanvas(Document& document, Selection& selection, const Preferences& preferences,
                         QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), preferences_(preferences),
      theme_(theme::light_theme()), tool_(*this), vent_tool_(*this), ruler_(*this) {
    tell_readers_of_pockets();
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAcceptDrops(true);
    setMinimumSize(240, 140);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("Drawer plan"));
    nudged_for_.setSingleShot(true);
    nudged_for_.setInterval(nudged_ms);
    connect(&nudged_for_, &QTimer::timeout, this, [this] {
        nudged_.clear();
        redraw_live();
    });
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

void SheetCanvas::show_sheet(SheetId shown) {
    if (shown == shown_) return;
    tool_.cancel();
    set_measuring(false);
    vent_tool_.cancel();
    hovered_vent_.reset();
    turning_from_.reset();
    unsetCursor();
    shown_ = shown;
    setAccessibleName(sheet_words(spec_of(shown).name));
    fitted_ = true;
    refit();
}

void SheetCanvas::set_invitation(const QStringList& lines) {
    invitation_ = lines;
    redraw();
}

// ---- port ----

const job::Job& SheetCanvas::job() const { return document_.job(); }

const plan::DrawerPlan* SheetCanvas::drawer_plan() const {
    return plan::find_drawer(document_.plan(), selection_.drawer());
}

const job::Drawer* SheetCanvas::drawer() const {
    return job::find_drawer(document_.shown(), selection_.drawer());
}

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

const std::vector<std::string>& SheetCanvas::chosen() const { return selection_.pockets(); }
void SheetCanvas::choose(std::vector<std::string> subjects) {
    selection_.choose_pockets(std::move(subjects));
}
std::optional<std::size_t> SheetCanvas::chosen_notch() const { return selection_.notch(); }
void SheetCanvas::choose_notch(const std::string& subject, std::size_t notch) {
    selection_.choose_notch(subject, notch);
}
const plan::DrawerPlan* SheetCanvas::built_plan() const {
    const auto& built = document_.last_built();
    if (!built) return nullptr;
    for (const auto& drawer : built->drawers)
        if (drawer.id == selection_.drawer() && drawer.insert) return &drawer;
    return nullptr;
}

std::shared_ptr<const air::Answer> SheetCanvas::air() const {
    const auto* plan = built_plan();
    const auto* drawer = job::find_drawer(document_.job(), selection_.drawer());
    if (plan == nullptr || !plan->air || !plan->air->model || drawer == nullptr) return nullptr;
    if (document_.built_is_current()) return plan->air;
    if (!tried_) tried_ = plan::air_tried(document_.job(), *drawer, *plan, *plan->air);
    return tried_;
}

std::optional<shape::Vec> SheetCanvas::chosen_vent() const { return selection_.vent(); }
void SheetCanvas::choose_vent(std::optional<shape::Vec> at) { selection_.choose_vent(at); }

bool SheetCanvas::snapping() const { return preferences_.snapping(); }
double SheetCanvas::grid_mm() const {
    return preferences_.grid_shown() ? preferences_.grid_mm(document_.shown().display_units) : 0;
}

void SheetCanvas::show_band(const std::optional<shape::Box>& band) {
    band_ = band;
    redraw_live();
}

// ---- view ----

void SheetCanvas::set_view(const ViewMap& view) {
    view_ = view;
    plates_.clear(); // they may find better places
    redraw();
    emit view_changed();
}

void SheetCanvas::zoom_by(double factor) {
    fitted_ = false;
    set_view(view_.zoomed(factor, QPointF(width() / 2.0, height() / 2.0)));
}

void SheetCanvas::zoom_to(const shape::Box& box) {
    constexpr double margin_px = 36;
    fitted_ = false;
    set_view(ViewMap::fitted(box, size(), margin_px));
}

void SheetCanvas::pan(QPointF by_px) {
    fitted_ = false;
    set_view(view_.panned(by_px));
}

void SheetCanvas::refit() { fitted_ ? fit() : redraw(); }

double SheetCanvas::reduction() const {
    const double px_per_mm = screen() ? screen()->logicalDotsPerInch() / 25.4 : theme::px_per_mm;
    return px_per_mm / view_.px_per_mm();
}

const layout::Check* SheetCanvas::check_at(QPointF px) const {
    const auto* plan = drawer_plan();
    if (plan == nullptr || !arranging()) return nullptr;
    const shape::Box pointer{{px.x(), px.y()}, {px.x(), px.y()}};
    for (auto plate = plates_.rbegin(); plate != plates_.rend(); ++plate)
        if (shape::near(plate->box, pointer))
            for (const auto& check : plan->checks)
                if (sheets::key_of(check) == plate->key) return &check;
    return nullptr;
}

// ---- what changed ----

void SheetCanvas::on_shown_changed() {
    forget_drawn();
    hovered_vent_.reset();
    vent_tool_.renew();
    if (document_.previewing() && !moving_.empty()) {
        if (const auto* plan = drawer_plan(); arranging() && plan != nullptr)
            glimpse_.ask(document_.shown(), plan->id, *plan);
        return redraw_over();
    }
    if (!tool_.busy() && !drop_) {
        end_moving();
    }
    arranging() ? redraw() : refit(); // what was missing may be there now
}

void SheetCanvas::forget_drawn() {
    kept_.reset();
    mold_.reset();
    tried_.reset();
}

void SheetCanvas::on_replaced() {
    tool_.cancel();
    ruler_.cancel();
    vent_tool_.cancel();
    forget_drawn();
    drop_.reset();
    glimpse_.forget();
    hovered_.clear();
    fitted_ = true;
    refit();
}

void SheetCanvas::on_selection_changed() {
    if (selection_.drawer() != shown_drawer_) {
        shown_drawer_ = selection_.drawer();
        forget_drawn();
        vent_tool_.cancel();
        fitted_ = true;
        return refit();
    }
    say_chosen();
    if (selection_.check().has_value() != zones_) return redraw();
    redraw_live();
}

/// For those who listen.
void SheetCanvas::say_chosen() {
    QStringList said;
    for (const auto& subject : selection_.pockets())
        if (const QString one = spoken(subject); !one.isEmpty()) said << one;
    setAccessibleDescription(said.join(QStringLiteral("; ")));
    const auto* plan = arranging() ? drawer_plan() : nullptr;
    if (plan == nullptr || selection_.pockets().empty()) return;
    for (std::size_t i = 0; i < plan->pockets.size(); ++i) {
        if (plan->pockets[i]->subject != selection_.pockets().back()) continue;
        QAccessibleEvent event(this, QAccessible::Focus);
        event.setChild(static_cast<int>(i));
        QAccessible::updateAccessibility(&event);
    }
}

QString SheetCanvas::spoken(const std::string& subject) const {
    const auto* plan = drawer_plan();
    const auto* pocket = plan == nullptr ? nullptr : find_pocket(*plan, subject);
    const auto found = job::find_pocket(document_.shown(), subject);
    if (pocket == nullptr || found.pocket == nullptr || !plan->insert) return {};
    const auto text = [](const std::string& utf8) { return QString::fromStdString(utf8); };
    const auto units = document_.shown().display_units;
    const auto middle = shape::Point<shape::InDrawer>::of(pocket->box.center());
    const QString words =
        tr("%1, %2 deep, zone %3")
            .arg(text(plan::subject_name(subject, document_.shown())),
                 language::figures(plan::say_length(pocket->form->greatest_depth_mm, units)),
                 text(sheets::zone_of(middle, shape::bounds(plan->insert->drawer.contour), units)));
    return found.pocket->locked ? tr("%1, locked").arg(words) : words;
}

} // namespace drawercast::app
