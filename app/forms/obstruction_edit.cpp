// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/obstruction_edit.h"

#include "forms/field_rows.h"
#include "forms/length_edit.h"
#include "forms/outline_edit.h"

#include <QVBoxLayout>

namespace drawercast::app {

namespace {

const std::vector<OutlineKind> kinds{OutlineKind::rectangle, OutlineKind::rounded, OutlineKind::circle,
                                     OutlineKind::capsule, OutlineKind::free};

} // namespace

ObstructionEdit::ObstructionEdit(const job::Obstruction& obstruction, const FormContext& context,
                                 QWidget* parent)
    : QWidget(parent), given_(obstruction), rows_(new FieldRows(this)),
      outline_(new OutlineEdit(*rows_, context, kinds, this)), x_(new LengthEdit(context, outline_place)),
      y_(new LengthEdit(context, outline_place)),
      turn_(new ValueEdit(number_notation(context, QStringLiteral("°")),
                          job::range_of("/drawers/*/obstructions/*/turn_deg"))) {
    rows_->add("/at/0", tr("Center from the left"), x_, {}, {"/at"});
    rows_->add("/at/1", tr("Center from the front"), y_);
    rows_->add("/turn_deg", tr("Turned"), turn_, tr("Counterclockwise"));
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 4, 0, 0);
    all->addWidget(rows_);
    all->addStretch(1);
    outline_->set_outline(obstruction.outline);
    x_->set_value(obstruction.pose.at.x);
    y_->set_value(obstruction.pose.at.y);
    turn_->set_value(obstruction.pose.turn_deg);
    connect(rows_, &FieldRows::edited, this, &ObstructionEdit::edited);
    connect(outline_, &OutlineEdit::edited, this, &ObstructionEdit::edited);
}

std::optional<job::Obstruction> ObstructionEdit::obstruction() const {
    const auto outline = outline_->outline();
    const auto x = x_->value();
    const auto y = y_->value();
    const auto turn = turn_->value();
    if (!outline || !x || !y || !turn) return std::nullopt;
    job::Obstruction obstruction = given_;
    obstruction.outline = std::get<shape::Given>(*outline);
    obstruction.pose = {{*x, *y}, *turn};
    return obstruction;
}

FieldProblems ObstructionEdit::own_problems() const { return rows_->own_problems(); }

FieldProblems ObstructionEdit::show(const FieldProblems& problems, FieldProblems& shown) {
    return rows_->show(problems, shown);
}

} // namespace drawercast::app
