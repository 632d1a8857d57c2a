// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/sheet_area.h"

#include "job/edit.h"
#include "plan/say.h"

#include "canvas/hit.h"
#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "panes/badge.h"
#include "sheets/depth_ladder.h"
#include "theme/icons.h"
#include "window/ruler.h"
#include "window/title_strip.h"

#include <QGridLayout>
#include <QLabel>
#include <QTabBar>

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

int mends_of(const Document& document, const std::string& drawer) {
    int count = 0;
    for (const auto& plan : document.plan().drawers)
        if (plan.id == drawer)
            for (const auto& check : plan.checks)
                count += check.severity == layout::Severity::mend && !check.left_as_is;
    return count;
}

} // namespace

QString scale_text(double reduction) {
    const auto said = [](double value) {
        return QString::fromStdString(plan::fixed(value, value < 10 ? 1 : 0));
    };
    return reduction >= 1 ? QStringLiteral("1 : ") + said(reduction)
                          : said(1 / reduction) + QStringLiteral(" : 1");
}

SheetArea::SheetArea(Document& document, Selection& selection, const Preferences& preferences,
                     QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), preferences_(preferences),
      tabs_(new QTabBar(this)), canvas_(new SheetCanvas(document, selection, preferences, this)),
      above_(new Ruler(Qt::Horizontal, this)), left_(new Ruler(Qt::Vertical, this)),
      corner_(new QLabel(this)), strip_(new TitleStrip(this)) {
    tabs_->setProperty("numbered", true);
    tabs_->setDrawBase(false);
    tabs_->setExpanding(false);
    tabs_->setAccessibleName(tr("Sheets"));
    tabs_->setIconSize({18, 18});
    tabs_->addTab(tr("Drawer plan"));
    mends_ = new Badge(layout::Severity::mend, tabs_);
    tabs_->addTab(theme::icon(QStringLiteral("mirror")), tr("Pattern board"));
    tabs_->setTabToolTip(1, tr("Seen in the mold: mirrored left to right, enlarged by the shrinkage"));

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
    grid->addWidget(strip_, 3, 0, 1, 2);
    grid->setRowStretch(2, 1);
    grid->setColumnStretch(1, 1);

    connect(tabs_, &QTabBar::currentChanged, this, [this](int at) {
        canvas_->show_sheet(at == 0 ? SheetCanvas::Shown::drawer_plan : SheetCanvas::Shown::pattern_board);
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
    connect(&document_, &Document::shown_changed, this, &SheetArea::refresh);
    connect(&selection_, &Selection::changed, this, &SheetArea::refresh);
    connect(&preferences_, &Preferences::changed, this, &SheetArea::refresh);
    refresh();
}

void SheetArea::show_sheet(SheetCanvas::Shown shown) {
    tabs_->setCurrentIndex(shown == SheetCanvas::Shown::drawer_plan ? 0 : 1);
}

void SheetArea::set_theme(const theme::Theme& theme) { canvas_->set_theme(theme); }

void SheetArea::refresh() {
    show_tabs();
    show_rulers();
    show_strip();
}

void SheetArea::show_tabs() {
    const int mends = mends_of(document_, selection_.drawer());
    mends_->set_count(mends);
    tabs_->setTabButton(0, QTabBar::RightSide, mends > 0 ? mends_ : nullptr);
    mends_->setVisible(mends > 0);
    tabs_->setTabToolTip(0, mends > 0 ? mends_->accessibleName() : QString());
}

void SheetArea::show_rulers() {
    Ruler::Shown shown{canvas_->view(), document_.shown().display_units, std::nullopt};
    if (const auto* plan = canvas_->drawer_plan();
        plan != nullptr && canvas_->shown() == SheetCanvas::Shown::drawer_plan) {
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
    const bool plan_sheet = canvas_->shown() == SheetCanvas::Shown::drawer_plan;
    shown.sheet = plan_sheet ? tr("Drawer plan") : tr("Pattern board");
    shown.mirrored = !plan_sheet;
    shown.scale = scale_text(canvas_->reduction());
    shown.grid = preferences_.grid_shown()
                     ? QString::fromStdString(plan::say_length(preferences_.grid_mm(), job.display_units))
                     : tr("off");
    shown.snap = preferences_.snapping() ? tr("on") : tr("off");
    shown.unit = unit_name(job.display_units);
    shown.units = job.display_units;
    shown.job = document_.display_name();
    if (const auto* drawer = job::find_drawer(job, selection_.drawer())) {
        shown.drawer = QString::fromStdString(drawer->name.empty() ? drawer->id : drawer->name);
        if (plan_sheet) shown.ladder_mm = sheets::ladder_full_mm(drawer->insert_mm, job.display_units);
    }
    strip_->show(shown);
}

} // namespace drawercast::app
