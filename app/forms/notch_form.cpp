// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/notch_form.h"

#include "job/catalog.h"
#include "job/edit.h"

#include "forms/field_rows.h"
#include "forms/length_edit.h"
#include "forms/outline_edit.h"

#include <QLabel>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

const std::vector<OutlineKind> kinds{OutlineKind::capsule, OutlineKind::circle, OutlineKind::rectangle,
                                     OutlineKind::rounded, OutlineKind::free};

/// What the reader has against the notch, in a job of nothing else.
FieldProblems reader_problems(const job::Notch& notch) {
    auto job = job::new_job({});
    job::Object object;
    object.id = job::free_object_id(job);
    object.levels = {job::Level{job::Sunk{shape::Circle{10}, 10}, {}, {}}};
    job = job::with_object(std::move(job), object);
    std::string made;
    const std::string drawer = job.drawers.front()->id;
    job = job::placed(std::move(job), drawer, object.id, {}, &made);
    job = job::with_notch(std::move(job), made, notch);
    return problems_of(job, "/drawers/0/pockets/0/notches/0");
}

} // namespace

NotchForm::NotchForm(const job::Notch& notch, const FormContext& context, QWidget* parent)
    : FormDialog(tr("Finger notch"), tr("Keep changes"), context, parent), given_(notch),
      rows_(new FieldRows), outline_(new OutlineEdit(*rows_, context, kinds, this)),
      depth_(new LengthEdit(context, job::range_of("/drawers/*/pockets/*/notches/*/depth_mm"))) {
    rows_->add("/depth_mm", tr("&Depth"), depth_, tr("Below the insert’s face"));
    outline_->set_outline(notch.outline);
    depth_->set_value(notch.depth_mm);
    auto* body = new QWidget;
    auto* all = new QVBoxLayout(body);
    auto* intro = new QLabel(tr("The length runs along the pocket’s edge. A thumb and a finger want about "
                                "60 × 28 mm (our guess)."),
                             body);
    intro->setWordWrap(true);
    all->addWidget(intro);
    all->addWidget(rows_);
    all->addStretch(1);
    connect(rows_, &FieldRows::edited, this, &NotchForm::refresh);
    connect(outline_, &OutlineEdit::edited, this, &NotchForm::refresh);
    set_body(body);
}

std::optional<job::Notch> NotchForm::typed() const {
    const auto outline = outline_->outline();
    const auto depth = depth_->value();
    if (!outline || !depth || !depth_->problem().isEmpty()) return std::nullopt;
    job::Notch notch = given_;
    notch.outline = std::get<shape::Given>(*outline);
    notch.depth_mm = *depth;
    return notch;
}

std::optional<job::Notch> NotchForm::value() const { return problems().empty() ? typed() : std::nullopt; }

FieldProblems NotchForm::show_problems() {
    FieldProblems all = rows_->own_problems();
    if (const auto notch = typed())
        for (auto& problem : reader_problems(*notch)) all.push_back(std::move(problem));
    FieldProblems shown;
    for (auto& problem : rows_->show(all, shown)) shown.push_back(std::move(problem));
    return shown;
}

} // namespace drawercast::app
