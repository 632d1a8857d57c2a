// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/new_job_form.h"

#include "forms/length_edit.h"

#include <QLabel>
#include <QVBoxLayout>

namespace drawercast::app {

NewJobForm::NewJobForm(const job::DrawerSize& size, const FormContext& context, QWidget* parent)
    : FormDialog(tr("New job"), tr("Make the job"), context, parent), given_(size), rows_(new FieldRows) {
    add_rows();
    numbers_.fill(size);
    auto* body = new QWidget;
    auto* all = new QVBoxLayout(body);
    auto* intro = new QLabel(tr("Measure the drawer inside. Where it is not square, or things stand in it, "
                                "change the drawer later: it can be measured with a tape."),
                             body);
    intro->setWordWrap(true);
    all->addWidget(intro);
    all->addWidget(rows_);
    all->addStretch(1);
    connect(rows_, &FieldRows::edited, this, &NewJobForm::refresh);
    set_body(body);
    numbers_.fields().front().edit->setFocus();
}

void NewJobForm::add_rows() {
    using job::DrawerSize;
    numbers_.add(*rows_, {"/width_mm", tr("&Width"), new LengthEdit(context(), outline_size),
                          &DrawerSize::width_mm, tr("Inside, left to right")});
    numbers_.add(*rows_, {"/depth_mm", tr("&Depth"), new LengthEdit(context(), outline_size),
                          &DrawerSize::depth_mm, tr("Inside, front to back")});
    numbers_.add(*rows_, {"/clear_height_mm", tr("Clear &height"),
                          new LengthEdit(context(), job::range_of("/drawers/*/clear_height_mm")),
                          &DrawerSize::clear_height_mm, tr("From the drawer's bottom to what is over it")});
    numbers_.add(*rows_,
                 {"/insert_mm", tr("&Insert's thickness"),
                  new LengthEdit(context(), job::range_of("/drawers/*/insert_mm")), &DrawerSize::insert_mm});
}

std::optional<job::DrawerSize> NewJobForm::value() const {
    job::DrawerSize size = given_;
    if (!problems().empty() || !numbers_.take(size)) return std::nullopt;
    return size;
}

FieldProblems NewJobForm::show_problems() {
    FieldProblems all = rows_->own_problems();
    job::DrawerSize size = given_;
    if (numbers_.take(size) && size.insert_mm > size.clear_height_mm)
        all.push_back({"/insert_mm", tr("Thicker than the drawer is high")});
    FieldProblems shown;
    for (auto& problem : rows_->show(all, shown)) shown.push_back(std::move(problem));
    return shown;
}

} // namespace drawercast::app
