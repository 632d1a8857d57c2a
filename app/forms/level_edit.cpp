// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/level_edit.h"

#include "forms/field_rows.h"
#include "forms/length_edit.h"
#include "forms/outline_edit.h"

#include <QCheckBox>
#include <QVBoxLayout>

#include <type_traits>

namespace drawercast::app {

namespace {

const std::vector<OutlineKind> all_kinds{OutlineKind::rectangle, OutlineKind::rounded, OutlineKind::circle,
                                         OutlineKind::capsule,   OutlineKind::free,    OutlineKind::lying};

Outline outline_of(const job::Level& level) {
    return std::visit(
        [](const auto& form) -> Outline {
            if constexpr (std::is_same_v<std::decay_t<decltype(form)>, job::Lying>)
                return form.cylinders;
            else
                return form.outline;
        },
        level.form);
}

} // namespace

LevelEdit::LevelEdit(const job::Level& level, const FormContext& context, QWidget* parent)
    : QWidget(parent), last_read_(level), given_(level), rows_(new FieldRows(this)),
      outline_(new OutlineEdit(*rows_, context, all_kinds, this)),
      through_(new QCheckBox(tr("Throu&gh: the object stands on the drawer's bottom"), this)),
      depth_(new LengthEdit(context, job::range_of("/objects/*/levels/*/depth_mm"))),
      axis_(new LengthEdit(context, job::range_of("/objects/*/levels/*/axis_mm"))),
      x_(new LengthEdit(context, outline_place)), y_(new LengthEdit(context, outline_place)),
      turn_(new ValueEdit(number_notation(context, QStringLiteral("°")),
                          job::range_of("/objects/*/levels/*/turn_deg"))) {
    rows_->add_widget(through_);
    rows_->add("/depth_mm", tr("&Depth"), depth_, tr("From the insert's face"));
    rows_->add("/axis_mm", tr("A&xis below face"), axis_, tr("Less than 0: above it"), {"/lying"});
    rows_->add("/at/0", tr("Off center, x"), x_, {}, {"/at"});
    rows_->add("/at/1", tr("Off center, y"), y_);
    rows_->add("/turn_deg", tr("Turned"), turn_, tr("Counterclockwise"));
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 4, 0, 0);
    all->addWidget(rows_);
    all->addStretch(1);

    const auto* sunk = std::get_if<job::Sunk>(&level.form);
    const auto* lying = std::get_if<job::Lying>(&level.form);
    outline_->set_outline(outline_of(level));
    through_->setChecked(std::holds_alternative<job::Through>(level.form));
    depth_->set_value(sunk && sunk->depth_mm > 0 ? std::optional(sunk->depth_mm) : std::nullopt);
    axis_->set_value(lying ? lying->axis_mm : 0);
    x_->set_value(level.pose.at.x);
    y_->set_value(level.pose.at.y);
    turn_->set_value(level.pose.turn_deg);
    show_rows();

    connect(this, &LevelEdit::edited, this, &LevelEdit::remember); // before any owner hears of it
    connect(rows_, &FieldRows::edited, this, &LevelEdit::edited);
    connect(outline_, &OutlineEdit::kind_changed, this, &LevelEdit::show_rows);
    connect(outline_, &OutlineEdit::edited, this, &LevelEdit::edited);
    connect(through_, &QCheckBox::toggled, this, [this] {
        show_rows();
        emit edited();
    });
}

void LevelEdit::show_rows() {
    const bool lying = outline_->kind() == OutlineKind::lying;
    through_->setVisible(!lying);
    rows_->set_row_shown("/depth_mm", !lying && !through_->isChecked());
    rows_->set_row_shown("/axis_mm", lying);
}

std::optional<job::Level> LevelEdit::level() const {
    const auto outline = outline_->outline();
    const auto x = x_->value();
    const auto y = y_->value();
    const auto turn = turn_->value();
    if (!outline || !x || !y || !turn) return std::nullopt;
    job::Level level = given_;
    level.pose = {{*x, *y}, *turn};
    if (const auto* cylinders = std::get_if<std::vector<job::Cylinder>>(&*outline)) {
        if (!axis_->value()) return std::nullopt;
        level.form = job::Lying{*cylinders, *axis_->value()};
        return level;
    }
    const auto& given = std::get<shape::Given>(*outline);
    if (through_->isChecked()) {
        level.form = job::Through{given};
        return level;
    }
    if (!depth_->value()) return std::nullopt;
    level.form = job::Sunk{given, *depth_->value()};
    return level;
}

void LevelEdit::remember() {
    if (const auto now = level()) last_read_ = *now;
}

FieldProblems LevelEdit::own_problems() const { return rows_->own_problems(); }

FieldProblems LevelEdit::show(const FieldProblems& problems, FieldProblems& shown) {
    return rows_->show(problems, shown);
}

} // namespace drawercast::app
