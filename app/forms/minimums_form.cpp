// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/minimums_form.h"

#include "layout/minimums.h"

#include "forms/length_edit.h"

#include <QLabel>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

FieldProblems reader_problems(const job::Minimums& minimums) {
    job::Job job;
    job.minimums = minimums;
    return problems_of(job, "/minimums");
}

} // namespace

MinimumsForm::MinimumsForm(const job::Minimums& minimums, const FormContext& context, QWidget* parent)
    : FormDialog(tr("Shop minimums"), tr("Keep changes"), context, parent), given_(minimums),
      rows_(new FieldRows) {
    add_rows();
    numbers_.fill(minimums);
    auto* body = new QWidget;
    auto* all = new QVBoxLayout(body);
    auto* intro = new QLabel(
        tr("Foam thinner than this is listed under the checks: below 60 % of it as something to mend, "
           "else to look at. Empty fields go by the foam's firmness: common practice where round, our "
           "guess between."),
        body);
    intro->setWordWrap(true);
    all->addWidget(intro);
    all->addWidget(rows_);
    all->addStretch(1);
    connect(rows_, &FieldRows::edited, this, &MinimumsForm::refresh);
    set_body(body);
    numbers_.fields().front().edit->setFocus();
}

void MinimumsForm::add_rows() {
    using job::Minimums;
    const auto automatic = layout::minimums_of({}, context().firmness);
    const auto shown = length_notation(context()).shown;
    auto* wall = new LengthEdit(context(), job::range_of("/minimums/wall_mm"));
    auto* ratio = new ValueEdit(number_notation(context(), {}), job::range_of("/minimums/wall_ratio"));
    auto* edge = new LengthEdit(context(), job::range_of("/minimums/edge_mm"));
    auto* floor = new LengthEdit(context(), job::range_of("/minimums/floor_mm"));
    const QString deep = shown(layout::deep_mm);
    wall->allow_empty(tr("auto: %1").arg(shown(automatic.wall_mm)));
    ratio->allow_empty(tr("auto: %1").arg(number_words(automatic.wall_ratio, context().mark)));
    edge->allow_empty(tr("auto: %1, %2").arg(shown(automatic.edge_mm), shown(automatic.edge_deep_mm)));
    floor->allow_empty(tr("auto: %1, %2").arg(shown(automatic.floor_mm), shown(automatic.floor_heavy_mm)));
    numbers_.add(*rows_,
                 {"/wall_mm", tr("&Wall at least"), wall, &Minimums::wall_mm, tr("Between two pockets")});
    numbers_.add(*rows_, {"/wall_ratio", tr("Wall at least &depth over"), ratio, &Minimums::wall_ratio,
                          tr("A tall slim wall folds")});
    numbers_.add(*rows_, {"/edge_mm", tr("&Edge at least"), edge, &Minimums::edge_mm,
                          tr("To the insert's edge; auto: the second beside deeper than %1").arg(deep)});
    numbers_.add(*rows_, {"/floor_mm", tr("&Floor at least"), floor, &Minimums::floor_mm,
                          tr("Under a pocket; auto: the second where wide or heavy")});
}

std::optional<job::Minimums> MinimumsForm::typed() const {
    job::Minimums minimums = given_;
    if (!numbers_.take(minimums)) return std::nullopt;
    return minimums;
}

std::optional<job::Minimums> MinimumsForm::value() const {
    return problems().empty() ? typed() : std::nullopt;
}

FieldProblems MinimumsForm::show_problems() {
    const auto minimums = typed();
    FieldProblems all = rows_->own_problems();
    if (minimums)
        for (auto& problem : reader_problems(*minimums)) all.push_back(std::move(problem));
    FieldProblems shown;
    for (auto& problem : rows_->show(all, shown)) shown.push_back(std::move(problem));
    return shown;
}

} // namespace drawercast::app
