// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/sheet_canvas.h"

#include "job/edit.h"

#include "canvas/hit.h"
#include "canvas/live_marks.h"
#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "sheets/drawer_plan.h"
#include "sheets/inking.h"
#include "sheets/paint.h"
#include "sheets/pattern_board.h"

#include <QEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QScreen>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr double margin_px = 12;

sheets::Vec vec(QPointF p) { return {p.x(), p.y()}; }

sheets::View sheet_view(const ViewMap& map) {
    return {theme::Medium::screen, map.px_per_mm(), 1, vec(map.to_px(shape::Vec{0, 0}))};
}

QRectF reach_of(const sheets::Inks& inks) {
    shape::Box box;
    for (const auto& ink : inks) box.add(sheets::reach_of(ink));
    return box.empty() ? QRectF() : QRectF(QPointF(box.min.x, box.min.y), QPointF(box.max.x, box.max.y));
}

} // namespace

struct SheetCanvas::Drawn {
    std::vector<sheets::Mark> marks;
    shape::Box area;
    shape::Vec lower_px;
    shape::Vec upper_px;
};

SheetCanvas::SheetCanvas(Document& document, Selection& selection, const Preferences& preferences,
                         QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), preferences_(preferences),
      theme_(theme::light_theme()), tool_(*this) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAcceptDrops(true);
    setMinimumSize(240, 200);
    setAttribute(Qt::WA_OpaquePaintEvent);
    connect(&document_, &Document::shown_changed, this, &SheetCanvas::on_shown_changed);
    connect(&document_, &Document::replaced, this, [this] {
        tool_.cancel();
        fitted_ = true;
        redraw();
    });
    connect(&selection_, &Selection::changed, this, &SheetCanvas::on_selection_changed);
    connect(&preferences_, &Preferences::changed, this, [this] { redraw(); });
}

void SheetCanvas::set_theme(const theme::Theme& theme) {
    theme_ = theme;
    redraw();
}

void SheetCanvas::show_sheet(Shown shown) {
    if (shown == shown_) return;
    tool_.cancel();
    shown_ = shown;
    fitted_ = true;
    redraw();
}

// ---- port ----

const job::Job& SheetCanvas::job() const { return document_.job(); }

const plan::DrawerPlan* SheetCanvas::drawer_plan() const {
    for (const auto& drawer : document_.plan().drawers)
        if (drawer.id == selection_.drawer()) return &drawer;
    return nullptr;
}

const job::Drawer* SheetCanvas::drawer() const {
    return job::find_drawer(document_.shown(), selection_.drawer());
}

void SheetCanvas::preview(std::optional<job::Job> job) {
    if (job && moving_.empty()) {
        moving_ = selection_.pockets();
        draw_still_picture();
    }
    const bool over = !job;
    document_.preview(std::move(job));
    if (over && !moving_.empty()) {
        moving_.clear();
        redraw();
    }
}

void SheetCanvas::commit(const QString& what, job::Job job) {
    moving_.clear();
    document_.commit(what, std::move(job));
    redraw();
}

const std::vector<std::string>& SheetCanvas::chosen() const { return selection_.pockets(); }
void SheetCanvas::choose(std::vector<std::string> subjects) {
    selection_.choose_pockets(std::move(subjects));
}
bool SheetCanvas::snapping() const { return preferences_.snapping(); }
double SheetCanvas::grid_mm() const { return preferences_.grid_shown() ? preferences_.grid_mm() : 0; }

void SheetCanvas::show_guides(const layout::Snap& snap) { guides_ = snap; }

void SheetCanvas::show_band(const std::optional<shape::Box>& band) {
    const auto grown = [&](const std::optional<shape::Box>& box) {
        return box ? view_.to_px(*box).adjusted(-3, -3, 3, 3).toAlignedRect() : QRect();
    };
    const QRect before = grown(band_);
    band_ = band;
    update(before.united(grown(band_)));
}

// ---- view ----

void SheetCanvas::set_view(const ViewMap& view) {
    if (view == view_ && !picture_.isNull()) return;
    view_ = view;
    draw_still_picture();
    redraw_moving();
    update();
    emit view_changed();
}

void SheetCanvas::fit() {
    fitted_ = true;
    const Drawn sheet = drawn();
    const QSizeF room(width() - sheet.lower_px.x - sheet.upper_px.x,
                      height() - sheet.lower_px.y - sheet.upper_px.y);
    set_view(ViewMap::fitted(sheet.area, room, margin_px).panned({sheet.lower_px.x, sheet.upper_px.y}));
}

void SheetCanvas::zoom_by(double factor) {
    fitted_ = false;
    set_view(view_.zoomed(factor, QPointF(width() / 2.0, height() / 2.0)));
}

void SheetCanvas::zoom_to(const shape::Box& box) {
    fitted_ = false;
    set_view(ViewMap::fitted(box, size(), 3 * margin_px));
}

void SheetCanvas::pan(QPointF by_px) {
    fitted_ = false;
    set_view(view_.panned(by_px));
}

double SheetCanvas::reduction() const {
    const double px_per_mm = screen() ? screen()->logicalDotsPerInch() / 25.4 : theme::px_per_mm;
    return px_per_mm / view_.px_per_mm();
}

// ---- drawing ----

SheetCanvas::Drawn SheetCanvas::drawn() const {
    const auto* plan = drawer_plan();
    const auto* shown_drawer = drawer();
    if (plan == nullptr || shown_drawer == nullptr) return {};
    if (shown_ == Shown::drawer_plan) {
        auto sheet = sheets::drawer_plan(document_.shown(), *shown_drawer, *plan);
        std::erase_if(sheet.marks, [](const sheets::Mark& mark) { // it stands in the title strip
            return std::holds_alternative<sheets::LegendMark>(mark.kind);
        });
        return {std::move(sheet.marks), sheet.area, sheet.lower_room_px, sheet.upper_room_px};
    }
    const auto& board = this->board(*plan);
    if (!board) return {};
    auto sheet = sheets::pattern_board(document_.shown(), *board, sheets::Finish::washed);
    return {std::move(sheet.marks), sheet.area, sheet.lower_room_px, sheet.upper_room_px};
}

const std::optional<casting::PatternBoard>& SheetCanvas::board(const plan::DrawerPlan& plan) const {
    if (!board_ || board_->drawer != plan.id || !(board_->job == document_.shown()))
        board_ = Board{document_.shown(), plan.id, plan::pattern_board(document_.shown(), plan)};
    return board_->answer;
}

bool SheetCanvas::moves(const std::string& subject) const {
    return !subject.empty() && std::find(moving_.begin(), moving_.end(), subject) != moving_.end();
}

void SheetCanvas::draw_still_picture() {
    if (size().isEmpty()) return;
    const double ratio = devicePixelRatioF();
    picture_ = QPixmap(size() * ratio);
    picture_.setDevicePixelRatio(ratio);
    picture_.fill(theme_.paper);
    QPainter painter(&picture_);
    painter.setRenderHint(QPainter::Antialiasing);
    Drawn sheet = drawn();
    const bool all = moving_.empty();
    std::erase_if(sheet.marks, [&](const sheets::Mark& mark) {
        return !all && (mark.layer == sheets::Layer::live || moves(mark.subject));
    });
    const auto view = sheet_view(view_);
    const auto grid_then_rest =
        std::stable_partition(sheet.marks.begin(), sheet.marks.end(),
                              [](const sheets::Mark& mark) { return mark.layer == sheets::Layer::ground; });
    std::vector<sheets::Mark> ground(sheet.marks.begin(), grid_then_rest);
    sheets::paint(sheets::ink_of(ground, view, theme_), painter);
    if (shown_ == Shown::drawer_plan) paint_grid(painter);
    // The whole once more, so that words know what they must not cover; the ground is drawn twice, which
    // costs little.
    sheet.marks.erase(sheet.marks.begin(), grid_then_rest);
    sheets::paint(sheets::ink_of(sheet.marks, view, theme_), painter);
}

void SheetCanvas::redraw_moving() {
    if (moving_.empty()) {
        over_.clear();
        over_reach_ = {};
        return;
    }
    Drawn sheet = drawn();
    std::erase_if(sheet.marks, [&](const sheets::Mark& mark) {
        return mark.layer != sheets::Layer::live && !moves(mark.subject);
    });
    over_ = sheets::ink_of(sheet.marks, sheet_view(view_), theme_);
    const QRectF before = over_reach_;
    over_reach_ = reach_of(over_).adjusted(-2, -2, 2, 2);
    if (const auto* plan = drawer_plan()) over_reach_ |= live_reach(scene(*plan));
    update((before | over_reach_).toAlignedRect());
}

void SheetCanvas::redraw() {
    if (fitted_) {
        view_ = ViewMap();
        picture_ = QPixmap();
        return fit();
    }
    draw_still_picture();
    redraw_moving();
    update();
}

void SheetCanvas::on_shown_changed() {
    if (document_.previewing() && !moving_.empty()) return redraw_moving();
    if (!tool_.busy()) moving_.clear();
    redraw();
}

void SheetCanvas::on_selection_changed() {
    if (selection_.drawer() != shown_drawer_) {
        shown_drawer_ = selection_.drawer();
        fitted_ = true;
        return redraw();
    }
    update(); // what is chosen is drawn over the picture
}

LiveScene SheetCanvas::scene(const plan::DrawerPlan& plan) const {
    return {plan,     document_.shown(), selection_.pockets(),
            hovered_, !moving_.empty(),  guides_,
            band_,    tool_.turn_ring(), view_,
            theme_};
}

void SheetCanvas::paint_grid(QPainter& painter) const {
    const auto* plan = drawer_plan();
    if (plan == nullptr || !plan->insert || !preferences_.grid_shown()) return;
    paint_grid_lines(painter, plan->insert->box, preferences_.grid_mm(), view_, theme_);
}

void SheetCanvas::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    painter.setClipRegion(event->region());
    const QRect area = event->rect();
    const double ratio = picture_.devicePixelRatio();
    painter.drawPixmap(QRectF(area), picture_,
                       QRectF(QPointF(area.topLeft()) * ratio, QSizeF(area.size()) * ratio));
    painter.setRenderHint(QPainter::Antialiasing);
    sheets::paint(over_, painter);
    paint_live(painter);
    if (hasFocus()) paint_focus_frame(painter, rect(), theme_);
}

void SheetCanvas::paint_live(QPainter& painter) const {
    if (shown_ != Shown::drawer_plan) return;
    const auto* plan = drawer_plan();
    if (plan == nullptr) return;
    paint_live_marks(painter, scene(*plan));
}

void SheetCanvas::resizeEvent(QResizeEvent*) { redraw(); }

void SheetCanvas::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) redraw();
    QWidget::changeEvent(event);
}

} // namespace drawercast::app
