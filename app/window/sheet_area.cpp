// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/sheet_area.h"

#include "job/edit.h"
#include "job/shown_name.h"

#include "canvas/hit.h"
#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "language/say.h"
#include "panes/badge.h"
#include "sheets/depth_ladder.h"
#include "theme/icons.h"
#include "window/build_up_bar.h"
#include "window/cut_order.h"
#include "window/printed.h"
#include "window/ruler.h"
#include "window/run_list.h"
#include "window/title_strip.h"

#include <QGridLayout>
#include <QKeySequence>
#include <QLabel>
#include <QTabBar>

#include <optional>

namespace drawercast::app {

namespace {

QString unit_name(job::DisplayUnits units) {
    switch (units) {
    case job::DisplayUnits::inch:
        return SheetArea::tr("in");
    case job::DisplayUnits::inch_32:
        return SheetArea::tr("in/32");
    case job::DisplayUnits::mm:
        break;
    }
    return SheetArea::tr("mm");
}

constexpr int run_row = 4;

/// Of the shown drawer; those of the job as a whole where they are to be seen on a sheet of their own.
int mends_of(const Document& document, const std::string& drawer, SheetId sheet) {
    int count = 0;
    if (const auto* plan = plan::find_drawer(document.plan(), drawer))
        for (const auto& check : plan->checks) count += layout::to_mend(check) && sheet_of(check) == sheet;
    if (spec_of(sheet).tool == SheetTool::arrange) return count;
    for (const auto& check : document.plan().checks)
        count += layout::to_mend(check) && sheet_of(check) == sheet;
    return count;
}

} // namespace

QString scale_text(double reduction) {
    const auto said = [](double value) { return language::fixed(value, value < 10 ? 1 : 0); };
    return reduction >= 1 ? QStringLiteral("1 : ") + said(reduction)
                          : said(1 / reduction) + QStringLiteral(" : 1");
}

SheetArea::SheetArea(Document& document, Selection& selection, const Preferences& preferences,
                     QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), preferences_(preferences),
      tabs_(new QTabBar(this)), canvas_(new SheetCanvas(document, selection, preferences, this)),
      above_(new Ruler(Qt::Horizontal, this)), left_(new Ruler(Qt::Vertical, this)),
      corner_(new QLabel(this)), look_(new BuildUpBar(*canvas_, this)), cuts_(new CutOrder(document, this)),
      run_(new RunList(document, this)), strip_(new TitleStrip(this)) {
    tabs_->setProperty("numbered", true);
    tabs_->setDrawBase(false);
    tabs_->setExpanding(false);
    tabs_->setAccessibleName(tr("Sheets"));
    tabs_->setIconSize({18, 18});
    tabs_->setUsesScrollButtons(true);
    for (const auto& spec : sheet_specs()) {
        const int at = tabs_->addTab(sheet_words(spec.name));
        if (spec.seen == Seen::mold) tabs_->setTabIcon(at, theme::icon(QStringLiteral("mirror")));
        mends_.push_back(new Badge(layout::Severity::mend, tabs_));
    }

    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(0);
    grid->addWidget(tabs_, 0, 0, 1, 2);
    corner_->setAlignment(Qt::AlignCenter);
    corner_->setToolTip(tr("Unit of the rulers"));
    grid->addWidget(corner_, 1, 0);
    grid->addWidget(above_, 1, 1);
    grid->addWidget(left_, 2, 0);
    grid->addWidget(canvas_, 2, 1);
    grid->addWidget(look_, 3, 0, 1, 2);
    grid->addWidget(run_, run_row, 0, 1, 2);
    grid->addWidget(cuts_, run_row, 0, 1, 2);
    grid->addWidget(strip_, run_row + 1, 0, 1, 2);
    grid->setRowStretch(2, 3);
    grid->setColumnStretch(1, 1);

    connect(tabs_, &QTabBar::currentChanged, this, [this](int at) {
        canvas_->show_sheet(sheet_specs()[static_cast<std::size_t>(at)].id);
        refresh();
        emit sheet_changed();
    });
    connect(canvas_, &SheetCanvas::view_changed, this, [this] {
        show_rulers();
        show_strip();
    });
    connect(canvas_, &SheetCanvas::pointer_at, this, [this](QPointF mm) {
        above_->set_pointer(mm.x());
        left_->set_pointer(mm.y());
    });
    connect(canvas_, &SheetCanvas::pointer_left, this, [this] {
        above_->set_pointer(std::nullopt);
        left_->set_pointer(std::nullopt);
    });
    connect(cuts_, &CutOrder::chosen, this, &SheetArea::show_cut);
    connect(&document_, &Document::shown_changed, this, &SheetArea::refresh);
    for (const auto signal : {&Document::committed, &Document::replaced, &Document::written})
        connect(&document_, signal, this, &SheetArea::show_printed);
    connect(&selection_, &Selection::changed, this, &SheetArea::refresh);
    connect(&preferences_, &Preferences::changed, this, &SheetArea::refresh);
    refresh();
}

void SheetArea::show_sheet(SheetId shown) {
    const auto& specs = sheet_specs();
    for (std::size_t i = 0; i < specs.size(); ++i)
        if (specs[i].id == shown) tabs_->setCurrentIndex(static_cast<int>(i));
}

void SheetArea::show_cut(const sheets::CutPlace& cut) {
    constexpr double around_mm = 60; // so that short cuts are seen where they lie
    const auto& built = document_.last_built();
    if (!built || !built->stock || selection_.drawer().empty()) return;
    const auto place =
        sheets::place_of_cut(document_.last_built_job(), *built->stock, selection_.drawer(), cut);
    canvas_->zoom_to(place.grown(around_mm));
}

void SheetArea::show_printed() {
    changed_ = changed_since_printed(document_.path(), document_.job(), preferences_);
    strip_->setToolTip(changed_);
    show_strip();
}

void SheetArea::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    show_tabs();
}

void SheetArea::set_theme(const theme::Theme& theme) { canvas_->set_theme(theme); }

void SheetArea::refresh() {
    const auto& spec = spec_of(canvas_->sheet());
    look_->setVisible(spec.tool == SheetTool::turn);
    const bool days = spec.seen == Seen::days;
    run_->setVisible(days);
    const auto& built = document_.last_built();
    const bool cuts = canvas_->sheet() == SheetId::box_and_cuts && built && built->stock;
    cuts_->setVisible(cuts);
    static_cast<QGridLayout*>(layout())->setRowStretch(run_row, days ? 2 : cuts ? 1 : 0);
    for (QWidget* ruler :
         {static_cast<QWidget*>(above_), static_cast<QWidget*>(left_), static_cast<QWidget*>(corner_)})
        ruler->setVisible(spec.seen != Seen::put_together && !days); // nothing is measured there
    show_tabs();
    show_rulers();
    show_strip();
}

/// Whether the tabs' long names would not stand beside each other.
bool SheetArea::short_of_room() const {
    constexpr int around_px = 42, sign_px = 34, badge_px = 30;
    QFont bold = tabs_->font();
    bold.setBold(true); // as the shown one is
    const QFontMetrics metrics(bold);
    int wanted = 0;
    for (std::size_t i = 0; i < mends_.size(); ++i) {
        const auto& spec = sheet_specs()[i];
        wanted += metrics.horizontalAdvance(sheet_words(spec.name)) + around_px +
                  (spec.seen == Seen::mold ? sign_px : 0) + (mends_[i]->count() > 0 ? badge_px : 0);
    }
    return wanted > width();
}

/// Told anew only where something is another: Qt lays all tabs out again for each word it is told.
void SheetArea::show_tabs() {
    Tabs now{width(), tabs_->font(), {}};
    for (const auto& spec : sheet_specs())
        now.mends.push_back(mends_of(document_, selection_.drawer(), spec.id));
    if (now == shown_tabs_) return;
    shown_tabs_ = now;
    for (std::size_t i = 0; i < mends_.size(); ++i) mends_[i]->set_count(now.mends[i]);
    const bool narrow = short_of_room();
    for (std::size_t i = 0; i < mends_.size(); ++i) {
        const auto& spec = sheet_specs()[i];
        const int at = static_cast<int>(i);
        const QString name = sheet_words(narrow ? spec.short_name : spec.name);
        if (tabs_->tabText(at) != name) tabs_->setTabText(at, name);
        auto* badge = mends_[i];
        const int mends = badge->count();
        if ((tabs_->tabButton(at, QTabBar::RightSide) != nullptr) != (mends > 0))
            tabs_->setTabButton(at, QTabBar::RightSide, mends > 0 ? badge : nullptr);
        badge->setVisible(mends > 0);
        const QString key = QKeySequence(QLatin1String(spec.key), QKeySequence::PortableText)
                                .toString(QKeySequence::NativeText);
        const QString tip = tr("%1 (%2)", "what a sheet shows, its key").arg(sheet_words(spec.tip), key);
        tabs_->setTabToolTip(at, mends > 0 ? tip + QStringLiteral("\n") + badge->accessibleName() : tip);
    }
}

void SheetArea::show_rulers() {
    Ruler::Shown shown{canvas_->view(), document_.shown().display_units, std::nullopt};
    if (const auto* plan = canvas_->drawer_plan();
        plan != nullptr && spec_of(canvas_->sheet()).tool == SheetTool::arrange) {
        const auto box = box_of(*plan, selection_.pockets());
        if (!box.empty()) shown.extent = box;
    }
    above_->show(shown);
    left_->show(shown);
    corner_->setText(shown.units == job::DisplayUnits::mm ? tr("mm") : tr("in"));
}

void SheetArea::show_strip() {
    const auto& job = document_.shown();
    TitleStrip::Shown shown;
    const auto& spec = spec_of(canvas_->sheet());
    shown.sheet = sheet_words(spec.name);
    shown.seen = spec.seen;
    if (spec.seen != Seen::days) shown.scale = scale_text(canvas_->reduction());
    if (spec.seen == Seen::drawer || spec.seen == Seen::mold) { // where things are placed
        const auto units = job.display_units;
        shown.grid =
            preferences_.grid_shown() ? language::say_length(preferences_.grid_mm(units), units) : tr("off");
        shown.snap = preferences_.snapping() ? tr("on") : tr("off");
    }
    shown.unit = unit_name(job.display_units);
    shown.units = job.display_units;
    shown.job = document_.display_name();
    shown.changed = !changed_.isEmpty();
    if (const auto* drawer = job::find_drawer(job, selection_.drawer())) {
        shown.drawer = QString::fromStdString(job::shown_name(*drawer));
        if (spec.tool == SheetTool::arrange)
            shown.ladder_mm = sheets::ladder_full_mm(drawer->insert_mm, job.display_units);
    }
    strip_->show(shown);
}

} // namespace drawercast::app
