// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/new_job_dialog.h"

#include "base/length.h"
#include "plan/say.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

LengthUnit typed_unit(job::DisplayUnits units) {
    switch (units) {
    case job::DisplayUnits::inch:
        return LengthUnit::inch;
    case job::DisplayUnits::inch_32:
        return LengthUnit::inch_32;
    case job::DisplayUnits::mm:
        break;
    }
    return LengthUnit::mm;
}

/// What any drawer is at least and at most, mm (our guess at what people cast by hand).
constexpr double least_mm = 10;
constexpr double most_mm = 3000;

} // namespace

NewJobDialog::NewJobDialog(job::DisplayUnits units, QWidget* parent)
    : QDialog(parent), units_(units), problem_(new QLabel(this)) {
    setWindowTitle(tr("New job"));
    auto* column = new QVBoxLayout(this);
    auto* words = new QLabel(tr("Measure the drawer inside. You can measure more exactly later."), this);
    words->setWordWrap(true);
    column->addWidget(words);
    auto* form = new QFormLayout;
    add(*form, tr("Inside &width, left to right"), &job::DrawerSize::width_mm);
    add(*form, tr("Inside &depth, front to back"), &job::DrawerSize::depth_mm);
    add(*form, tr("&Clear height over its bottom"), &job::DrawerSize::clear_height_mm);
    add(*form, tr("&Thickness of the insert"), &job::DrawerSize::insert_mm);
    column->addLayout(form);
    problem_->setWordWrap(true);
    column->addWidget(problem_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    make_ = buttons->button(QDialogButtonBox::Ok);
    make_->setText(tr("Make"));
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    check();
}

void NewJobDialog::add(QFormLayout& form, const QString& label, double job::DrawerSize::*member) {
    auto* edit = new QLineEdit(QString::fromStdString(plan::say_length(size_.*member, units_)), this);
    form.addRow(label, edit);
    fields_.push_back({edit, member});
    connect(edit, &QLineEdit::textChanged, this, &NewJobDialog::check);
}

void NewJobDialog::check() {
    QString problem;
    for (const auto& field : fields_) {
        const auto length = parse_length(field.edit->text().toStdString(), typed_unit(units_));
        if (!length) {
            problem = QString::fromStdString(one_line(length.error()));
        } else if (*length < least_mm || *length > most_mm) {
            problem = tr("“%1” is not between %2 and %3.")
                          .arg(field.edit->text(), QString::fromStdString(plan::say_length(least_mm, units_)),
                               QString::fromStdString(plan::say_length(most_mm, units_)));
        } else {
            size_.*field.member = *length;
        }
        if (!problem.isEmpty()) break;
    }
    if (problem.isEmpty() && size_.insert_mm > size_.clear_height_mm)
        problem = tr("The insert is thicker than the drawer is high.");
    problem_->setText(problem);
    make_->setEnabled(problem.isEmpty());
}

} // namespace drawercast::app
