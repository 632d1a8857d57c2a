// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/mold_pane.h"

#include "job/edit.h"

#include "document/document.h"
#include "document/selection.h"
#include "panes/figure_button.h"
#include "panes/head.h"
#include "panes/plot_view.h"
#include "sheets/pour_plot.h"
#include "sheets/squeeze_plot.h"
#include "theme/gauge_paint.h"
#include "theme/icons.h"
#include "theme/theme_of.h"

#include <QAction>
#include <QEvent>
#include <QPainter>
#include <QVBoxLayout>

#include <memory>

namespace drawercast::app {

namespace {

constexpr int plot_px = 150;
constexpr int pour_plot_px = 190;
constexpr std::array all_parts{MoldPart::plate, MoldPart::vents, MoldPart::closing};

std::size_t number(MoldPart part) { return static_cast<std::size_t>(part); }

} // namespace

/// Over figures that are of an older job; what lies under it can still be clicked.
class MoldPane::Hatch final : public QWidget {
  public:
    explicit Hatch(QWidget* parent) : QWidget(parent) {
        setAttribute(Qt::WA_TransparentForMouseEvents);
        hide();
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        theme::paint_old_answer(painter, QRectF(rect()), theme::theme_of(this));
    }
};

MoldPane::MoldPane(Document& document, const Selection& selection, QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), column_(new QVBoxLayout(this)) {
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(0);
    for (const MoldPart part : all_parts) add_part(part);
    connect(&document, &Document::shown_changed, this, &MoldPane::refresh);
    connect(&selection, &Selection::changed, this, &MoldPane::refresh);
    connect(&explain_, &ExplainHost::action_wanted, this, &MoldPane::action_wanted);
    connect(&explain_, &ExplainHost::guide_wanted, this, &MoldPane::guide_wanted);
    connect(&document.building(), &Building::busy_changed, this, &MoldPane::refresh);
    refresh();
}

void MoldPane::add_part(MoldPart which) {
    auto& part = parts_[number(which)];
    switch (which) {
    case MoldPart::plate:
        part.name = tr("Plate");
        part.head = new Head("plate", part.name, this);
        break;
    case MoldPart::vents:
        part.name = tr("Vents");
        part.head = new Head("vent", part.name, this);
        break;
    case MoldPart::closing:
        part.name = tr("Closing");
        part.head = new Head("run-sheet", part.name, this);
        break;
    }
    part.fold = new QAction(this);
    connect(part.fold, &QAction::triggered, this, [this, which] { fold(which, !opened(which)); });
    part.head->set_actions({part.fold});
    part.body = new QWidget(this);
    auto* inside = new QVBoxLayout(part.body);
    inside->setContentsMargins(8, 0, 8, 8);
    inside->setSpacing(0);
    part.rows = new QVBoxLayout;
    part.rows->setSpacing(0);
    inside->addLayout(part.rows);
    part.chart = new PlotView(which == MoldPart::closing ? pour_plot_px : plot_px, part.body);
    inside->addWidget(part.chart);
    part.hatch = new Hatch(part.body);
    part.body->installEventFilter(this);
    column_->addWidget(part.head);
    column_->addWidget(part.body);
    fold(which, false);
}

bool MoldPane::opened(MoldPart part) const { return parts_[number(part)].wanted; }

void MoldPane::fold(MoldPart which, bool open) {
    auto& part = parts_[number(which)];
    part.wanted = open;
    name_fold(part);
    part.fold->setToolTip(open ? tr("Show the head alone") : tr("Show the figures"));
    part.fold->setIcon(theme::icon(open ? QStringLiteral("up") : QStringLiteral("forward")));
    bool some = false;
    for (const auto& one : figures_) some = some || one.part == which;
    renew_chart(which);
    part.body->setVisible(open && some);
    if (open) explain_.leave();
}

/// Its button shows an arrow alone: the name is for those who listen, and tells what stands beside it.
void MoldPane::name_fold(const Part& part) {
    const QString act = part.wanted ? tr("Fold") : tr("Show");
    const QString what = part.remark.isEmpty() ? part.name : part.name + QStringLiteral(", ") + part.remark;
    part.fold->setText(what + QStringLiteral(": ") + act);
}

void MoldPane::open_for(std::optional<MoldPart> first) {
    int at = 0;
    const auto put = [&](MoldPart which) {
        auto& part = parts_[number(which)];
        column_->removeWidget(part.head);
        column_->removeWidget(part.body);
        column_->insertWidget(at++, part.head);
        column_->insertWidget(at++, part.body);
        fold(which, first.has_value());
    };
    if (first) put(*first);
    for (const MoldPart part : all_parts)
        if (part != first) put(part);
}

const plan::DrawerPlan* MoldPane::built() const {
    const auto& built = document_.last_built();
    return built ? plan::find_drawer(*built, selection_.drawer()) : nullptr;
}

job::Job MoldPane::built_job() const {
    return job::in_units(document_.last_built_job(), document_.shown().display_units);
}

FigureButton& MoldPane::button(const MoldFigure& figure) {
    auto& known = buttons_[figure.figure.id];
    if (known == nullptr) {
        known = new FigureButton(figure.limit ? FigureButton::Kind::gauge : FigureButton::Kind::row,
                                 parts_[number(figure.part)].body);
        known->setObjectName(figure.figure.id);
        connect(known, &FigureButton::clicked, this, [this, id = figure.figure.id] { explain(id); });
        parts_[number(figure.part)].rows->addWidget(known);
    }
    return *known;
}

std::vector<FoamFigure> MoldPane::plain() const {
    std::vector<FoamFigure> all;
    for (const auto& one : figures_) all.push_back(one.figure);
    return all;
}

/// Each step of a drag shows another job, and none of them another answer.
void MoldPane::refresh() {
    const Shows now{document_.built_number(), selection_.drawer(), document_.shown().display_units,
                    document_.built_is_current(), document_.building().busy()};
    if (now == shows_) return;
    const bool same_answer = now.same_answer(shows_);
    shows_ = now;
    const auto* drawer = built();
    const job::Job job = built_job();
    const auto answer = drawer == nullptr
                            ? std::optional<explain::Answer>()
                            : explain::Answer::of(job, *document_.last_built(), *drawer, DosingUnit::mass);
    old_ = drawer != nullptr && !document_.built_is_current();
    figures_ = answer ? mold_figures(*answer) : std::vector<MoldFigure>();
    for (const auto& [id, button] : buttons_) button->hide();
    for (const auto& one : figures_) {
        auto& shown = button(one);
        shown.show(one.figure);
        if (one.limit) shown.show_gauge(one.limit->share, one.limit->breached, one.limit->decides);
    }
    for (const MoldPart part : all_parts) {
        refresh_part(part, answer);
        if (!same_answer) parts_[number(part)].chart_old = true;
        renew_chart(part);
    }
    explain_.refresh(plain());
}

void MoldPane::refresh_part(MoldPart which, const std::optional<explain::Answer>& answer) {
    auto& part = parts_[number(which)];
    const QString remark = answer ? mold_remark(which, *answer) : QString();
    const bool busy = document_.building().busy();
    part.remark = old_ && !remark.isEmpty() ? tr("as before the last change")
                  : remark.isEmpty()        ? (busy ? tr("working it out…") : tr("not yet"))
                                            : remark;
    part.head->set_remark(part.remark);
    name_fold(part);
    part.fold->setEnabled(!remark.isEmpty());
    part.body->setVisible(part.wanted && !remark.isEmpty());
    part.hatch->setVisible(old_);
    part.hatch->raise();
}

/// A plot takes time, so it is made only where it is seen, and once for an answer.
void MoldPane::renew_chart(MoldPart which) {
    auto& part = parts_[number(which)];
    if (!part.wanted || !part.chart_old) return;
    part.chart_old = false;
    const auto* drawer = built();
    const auto job = std::make_shared<const job::Job>(built_job());
    const auto plan = drawer != nullptr ? std::make_shared<const plan::DrawerPlan>(*drawer) : nullptr;
    if (which == MoldPart::vents && plan && plan->air)
        part.chart->show_chart(
            [job, plan](shape::Vec mm) { return sheets::squeeze_plot(*job, *plan->air, mm); },
            tr("Squeeze-out and pressure that is held, by number and drill of the vents"));
    else if (which == MoldPart::closing && plan && plan->plate)
        part.chart->show_chart([job, plan](shape::Vec mm) { return sheets::pour_plot(*job, *plan, mm); },
                               tr("The pour second by second: rise, pressure, closures needed and in"));
    else
        part.chart->show_chart({}, {});
}

bool MoldPane::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize)
        for (auto& part : parts_)
            if (watched == part.body) part.hatch->setGeometry(part.body->rect());
    return QWidget::eventFilter(watched, event);
}

void MoldPane::resizeEvent(QResizeEvent* event) {
    for (auto& part : parts_) part.hatch->setGeometry(part.body->rect());
    QWidget::resizeEvent(event);
}

// ---- explanations ----

void MoldPane::explain(const QString& id) { explain_.explain(id, plain()); }
QString MoldPane::explained() const { return explain_.explained(); }

} // namespace drawercast::app
