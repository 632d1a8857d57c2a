// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/foam_pane.h"

#include "job/edit.h"

#include "document/document.h"
#include "document/selection.h"
#include "language/goods.h"
#include "panes/dose_gauge.h"
#include "panes/explain/deciding.h"
#include "panes/figure_button.h"
#include "panes/head.h"

#include <QGridLayout>
#include <QLabel>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

constexpr int columns = 6;
constexpr int frame_ms = 16; // while a pocket is dragged the sheet is painted first

const plan::DrawerPlan* shown_drawer(const Document& document, const Selection& selection) {
    return plan::find_drawer(document.plan(), selection.drawer());
}

} // namespace

FoamPane::FoamPane(Document& document, const Selection& selection, QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), head_(new Head("foam", tr("Foam"), this)),
      none_(new QLabel(this)), answer_(new QWidget(this)), grid_(new QGridLayout(answer_)),
      gauge_(new DoseGauge(answer_)), deciding_(new QLabel(answer_)), automatic_(new QToolButton(answer_)),
      unit_button_(new QToolButton(answer_)), later_(new QTimer(this)) {
    lay_out();
    connect_dose();
    later_->setSingleShot(true);
    later_->setInterval(frame_ms);
    connect(later_, &QTimer::timeout, this, &FoamPane::refresh);
    connect(unit_button_, &QToolButton::clicked, this, [this] {
        unit_ = unit_ == DosingUnit::mass ? DosingUnit::volume : DosingUnit::mass;
        refresh();
    });
    connect(&document, &Document::shown_changed, this, &FoamPane::refresh_soon);
    connect(&selection, &Selection::changed, this, &FoamPane::refresh);
    connect(&explain_, &ExplainHost::action_wanted, this, &FoamPane::action_wanted);
    connect(&explain_, &ExplainHost::guide_wanted, this, &FoamPane::guide_wanted);
    refresh();
}

void FoamPane::lay_out() {
    none_->setWordWrap(true);
    none_->setContentsMargins(12, 0, 12, 12);
    grid_->setContentsMargins(8, 0, 8, 8);
    grid_->setHorizontalSpacing(4);
    grid_->setVerticalSpacing(0);
    for (int column = 0; column < columns; ++column) grid_->setColumnStretch(column, 1);
    int row = 0;
    add_figure("a", row, 0, 2);
    add_figure("b", row, 2, 2);
    add_figure("mixed", row++, 4, 2);
    grid_->setRowMinimumHeight(row++, 4);
    add_figure("poured", row, 0, 3);
    add_figure("holds", row++, 3, 3);
    add_figure("batches", row, 0, 3);
    add_figure("insert", row++, 3, 3);
    add_figure("kits", row++, 0, columns);
    grid_->setRowMinimumHeight(row++, 6);
    add_figure("overpack", row, 0, 3);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(automatic_);
    buttons->addWidget(unit_button_);
    grid_->addLayout(buttons, row++, 3, 1, 3);
    grid_->addWidget(gauge_, row++, 0, 1, columns);
    grid_->addWidget(deciding_, row++, 0, 1, columns);
    add_figure("band", row++, 0, columns);
    grid_->setRowMinimumHeight(row++, 6);
    add_figure("closed", row++, 0, columns);
    add_figure("build_for", row++, 0, columns);
    add_figure("pour", row++, 0, columns);
    add_figure("touch", row, 0, 3);
    add_figure("contact", row++, 3, 3);
    deciding_->setWordWrap(true);
    deciding_->setContentsMargins(4, 0, 4, 4);
    automatic_->setText(tr("automatic"));
    automatic_->setCheckable(true);
    automatic_->setToolTip(tr("The least overpack that fills the mold at the low end"));
    unit_button_->setToolTip(tr("Dose by mass or by volume"));

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(head_);
    column->addWidget(none_);
    column->addWidget(answer_);
    column->addStretch(1);
}

void FoamPane::add_figure(const QString& id, int row, int column, int width) {
    const bool key = row == 0;
    auto* button = new FigureButton(key             ? FigureButton::Kind::key
                                    : id == u"pour" ? FigureButton::Kind::gauge
                                                    : FigureButton::Kind::row,
                                    answer_);
    button->setObjectName(id);
    connect(button, &FigureButton::clicked, this, [this, id] { explain(id); });
    grid_->addWidget(button, row, column, 1, width);
    buttons_[id] = button;
}

// ---- the dose ----

void FoamPane::connect_dose() {
    connect(gauge_, &DoseGauge::tried, this, [this](double overpack) {
        document_.preview(job::with_overpack(document_.job(), overpack));
        refresh();
    });
    connect(gauge_, &DoseGauge::chosen, this, [this](double overpack) { set_overpack(overpack); });
    connect(gauge_, &DoseGauge::dropped, this, [this] { document_.preview(std::nullopt); });
    connect(gauge_, &DoseGauge::automatic_wanted, this, [this] { set_overpack(std::nullopt); });
    connect(automatic_, &QToolButton::clicked, this, [this](bool on) {
        const auto* drawer = shown_drawer(document_, selection_);
        if (drawer == nullptr || !drawer->dose) return;
        set_overpack(on ? std::nullopt : std::optional(drawer->dose->overpack));
    });
}

void FoamPane::set_overpack(std::optional<double> overpack) {
    document_.commit(overpack ? tr("Overpack") : tr("Automatic overpack"),
                     job::with_overpack(document_.job(), overpack), {QStringLiteral("overpack")});
    refresh(); // a job equal to the one before says nothing, but what was pressed must be put right
}

// ---- what is shown ----

void FoamPane::refresh_soon() {
    if (document_.previewing() && !gauge_->dragging()) {
        if (!later_->isActive()) later_->start();
        return;
    }
    refresh();
}

void FoamPane::refresh() {
    later_->stop();
    const auto* drawer = shown_drawer(document_, selection_);
    figures_ = drawer == nullptr ? std::vector<FoamFigure>()
                                 : foam_figures(document_.shown(), document_.plan(), *drawer, unit_);
    const int mends = drawer == nullptr ? 0 : plan::count_to_mend(drawer->checks);
    head_->set_remark(drawer == nullptr ? QString()
                      : mends > 0       ? tr("not yet: %n to mend", nullptr, mends)
                                        : language::goods_name(document_.shown().foam->name));
    none_->setVisible(figures_.empty());
    none_->setText(drawer == nullptr
                       ? tr("How much of each part to mix, how hard it pushes and what to buy, once there "
                            "is a drawer.")
                       : tr("No dose yet: a check says what is missing."));
    answer_->setVisible(!figures_.empty());
    if (!figures_.empty()) {
        show_rows();
        refresh_gauges();
    }
    explain_.refresh(figures_);
}

void FoamPane::show_rows() {
    for (const auto& [id, button] : buttons_) {
        const auto* figure = find_figure(figures_, id);
        if (figure != nullptr)
            button->show(*figure);
        else
            button->hide();
    }
}

void FoamPane::refresh_gauges() {
    const auto* drawer = shown_drawer(document_, selection_);
    const auto answer = explain::Answer::of(document_.shown(), document_.plan(), *drawer, unit_);
    if (!answer) return;
    const auto deciding = explain::deciding(*answer);
    const double pour = explain::pour_share(*answer);
    buttons_["pour"]->show_gauge(pour, pour > 1, deciding.what == explain::Deciding::What::pour);
    if (deciding_->text() != deciding.sentence) deciding_->setText(deciding.sentence);
    if (drawer->band) gauge_->show({drawer->dose->overpack, drawer->band->low.fill, drawer->band->high.fill});
    gauge_->setVisible(drawer->band.has_value());
    automatic_->setChecked(drawer->dose->overpack_auto);
    const QString other = unit_ == DosingUnit::mass ? tr("by mass") : tr("by volume");
    if (unit_button_->text() != other) unit_button_->setText(other);
}

// ---- explanations ----

void FoamPane::explain(const QString& id) { explain_.explain(id, figures_); }
QString FoamPane::explained() const { return explain_.explained(); }
QString FoamPane::explanation() const { return explain_.explanation(); }

} // namespace drawercast::app
