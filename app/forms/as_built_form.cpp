// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/as_built_form.h"

#include "job/write.h"
#include "plan/as_built.h"
#include "plan/say.h"

#include "forms/field_rows.h"
#include "forms/length_edit.h"
#include "forms/table_edit.h"
#include "language/spoken.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr int most_walls = 100;
constexpr int most_blocks = 1000;

QString text(const std::string& words) { return QString::fromStdString(words); }

/// A few rows are seen at a time, so that what they change is seen too.
TableEdit* low(TableEdit* table) {
    constexpr int height_px = 136;
    table->view().setFixedHeight(height_px);
    return table;
}

TableEdit* wall_table(const FormContext& context, double planned_mm) {
    const Notation length = length_notation(context);
    return low(
        new TableEdit({{AsBuiltForm::tr("height, %1").arg(length.unit), length,
                        job::range_of("/as_built/*/walls_mm"), planned_mm}},
                      {AsBuiltForm::tr("Heights of the walls"), AsBuiltForm::tr("Add a height (Insert)"),
                       AsBuiltForm::tr("Take this height away (Delete)")},
                      0, most_walls));
}

TableEdit* block_table(const FormContext& context, double planned_mm) {
    const Notation length = length_notation(context);
    NumberColumn pocket{AsBuiltForm::tr("block"), {}, {}, 0, true, AsBuiltForm::tr("As on its label: i1#1")};
    NumberColumn body{AsBuiltForm::tr("level"),
                      number_notation(context, {}),
                      job::range_of("/as_built/*/blocks/*/body"),
                      1,
                      false,
                      AsBuiltForm::tr("Levels in order, then notches, from 1")};
    NumberColumn height{AsBuiltForm::tr("height, %1").arg(length.unit),
                        length,
                        job::range_of("/as_built/*/blocks/*/height_mm"),
                        planned_mm,
                        false,
                        AsBuiltForm::tr("Over the board, sealed")};
    NumberColumn wider{AsBuiltForm::tr("wider a side, %1").arg(length.unit),
                       length,
                       job::range_of("/as_built/*/blocks/*/grown_mm"),
                       0,
                       false,
                       AsBuiltForm::tr("Than planned; below 0: narrower")};
    return low(new TableEdit({pocket, body, height, wider},
                             {AsBuiltForm::tr("Odd blocks"), AsBuiltForm::tr("Add a block (Insert)"),
                              AsBuiltForm::tr("Take this block away (Delete)")},
                             0, most_blocks));
}

/// The plan's height of a body; 0 where there is none.
double planned_height_mm(const plan::DrawerPlan& drawer, const job::BuiltBlock& block, double k) {
    for (const auto& pocket : drawer.pockets)
        if (pocket->subject == block.pocket && block.body >= 1 &&
            static_cast<std::size_t>(block.body) <= pocket->form->cuts.size())
            return pocket->form->cuts[static_cast<std::size_t>(block.body - 1)].depth_mm * k;
    return 0;
}

bool same_length(double a, double b) { return std::abs(a - b) < 1e-6; }

} // namespace

AsBuiltForm::AsBuiltForm(const job::Job& job, const plan::DrawerPlan& drawer, const FormContext& context,
                         QWidget* parent)
    : FormDialog(tr("As built"), tr("Keep as built"), context, parent), job_(job), drawer_(drawer),
      rows_(new FieldRows), width_(new LengthEdit(context, job::range_of("/as_built/*/width_mm"))),
      depth_(new LengthEdit(context, job::range_of("/as_built/*/depth_mm"))), note_(new QLineEdit),
      figures_(new QLabel) {
    const double k = 1 / (1 - job.foam->shrinkage);
    const double planned_mm = drawer.cavity ? drawer.cavity->height_mm : 60;
    walls_ = wall_table(context, planned_mm);
    blocks_ = block_table(context, planned_mm);
    if (drawer.insert) {
        const auto shown = length_notation(context).shown;
        width_->allow_empty(shown(drawer.insert->box.width() * k));
        depth_->allow_empty(shown(drawer.insert->box.height() * k));
    }
    rows_->add("/width_mm", tr("&Width of the box"), width_, tr("Inside, left to right"));
    rows_->add("/depth_mm", tr("&Depth of the box"), depth_, tr("Inside, front to back"));
    rows_->add_wide("/walls_mm", tr("W&alls"), walls_);
    rows_->add_wide("/blocks", tr("&Odd blocks"), blocks_);
    rows_->add_wide("/note", tr("&Note"), note_);
    figures_->setTextFormat(Qt::RichText);
    figures_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* body = new QWidget;
    auto* all = new QVBoxLayout(body);
    auto* intro =
        new QLabel(tr("The closed mold, measured before the pour. Empty fields count as planned, in gray; "
                      "heights of walls by their mean."));
    intro->setWordWrap(true);
    auto* left = new QVBoxLayout;
    left->addWidget(rows_);
    left->addStretch(1);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(24);
    columns->addLayout(left, 1);
    columns->addWidget(figures_);
    figures_->setWordWrap(true);
    figures_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    constexpr int figures_px = 330;
    figures_->setFixedWidth(figures_px);
    all->addWidget(intro);
    all->addLayout(columns, 1);
    const auto* last = plan::last_built(job, drawer.id);
    given_.drawer = drawer.id;
    fill(last != nullptr ? *last : given_);
    connect(rows_, &FieldRows::edited, this, &AsBuiltForm::refresh);
    connect(walls_, &TableEdit::edited, this, &AsBuiltForm::refresh);
    connect(blocks_, &TableEdit::edited, this, &AsBuiltForm::refresh);
    connect(note_, &QLineEdit::textEdited, this, &AsBuiltForm::refresh);
    set_body(body);
    width_->setFocus();
}

void AsBuiltForm::fill(const job::AsBuilt& built) {
    given_ = built;
    width_->set_value(built.width_mm);
    depth_->set_value(built.depth_mm);
    note_->setText(text(built.note));
    std::vector<NumberRow> walls, blocks;
    for (const double height : built.walls_mm) walls.push_back({{}, {height}, int(walls.size())});
    const double k = 1 / (1 - job_.foam->shrinkage);
    for (const auto& block : built.blocks)
        blocks.push_back({text(block.pocket),
                          {0, double(block.body),
                           block.height_mm.value_or(planned_height_mm(drawer_, block, k)), block.grown_mm},
                          int(blocks.size())});
    walls_->set_rows(std::move(walls));
    blocks_->set_rows(std::move(blocks));
}

std::optional<job::AsBuilt> AsBuiltForm::typed() const {
    if (!width_->problem().isEmpty() || !depth_->problem().isEmpty()) return std::nullopt;
    job::AsBuilt built = given_;
    built.width_mm = width_->value();
    built.depth_mm = depth_->value();
    built.note = note_->text().toStdString();
    built.walls_mm.clear();
    for (const auto& row : walls_->rows()) built.walls_mm.push_back(row.numbers[0]);
    built.blocks.clear();
    const double k = 1 / (1 - job_.foam->shrinkage);
    for (const auto& row : blocks_->rows()) {
        job::BuiltBlock block =
            row.origin < 0 ? job::BuiltBlock{} : given_.blocks[static_cast<std::size_t>(row.origin)];
        block.pocket = row.words.trimmed().toStdString();
        block.body = static_cast<int>(row.numbers[1]);
        if (block.height_mm || !same_length(row.numbers[2], planned_height_mm(drawer_, block, k)))
            block.height_mm = row.numbers[2];
        block.grown_mm = row.numbers[3];
        built.blocks.push_back(std::move(block));
    }
    return built;
}

std::optional<job::AsBuilt> AsBuiltForm::value() const { return problems().empty() ? typed() : std::nullopt; }

QString AsBuiltForm::figures_text() const { return figures_->text(); }

FieldProblems AsBuiltForm::show_problems() {
    FieldProblems all = rows_->own_problems();
    const auto built = typed();
    if (built) {
        for (const auto& block : built->blocks)
            if (planned_height_mm(drawer_, block, 1) <= 0)
                all.push_back({"/blocks", tr("“%1”, level %2, is not in this drawer: write it as on the "
                                             "block’s label, such as i1#1")
                                              .arg(text(block.pocket))
                                              .arg(block.body)});
        auto job = job_;
        job.as_built = {*built};
        if (const auto checked = job::checked_text(job); !checked)
            for (auto& problem : field_problems(checked.error(), "/as_built/0"))
                all.push_back(std::move(problem));
    }
    FieldProblems shown;
    for (auto& left : rows_->show(all, shown)) shown.push_back(std::move(left));
    if (shown.empty() && built) figures_->setText(figures(*built));
    return shown;
}

QString AsBuiltForm::figures(const job::AsBuilt& built) const {
    const auto now = plan::built_figures(job_, drawer_, built);
    if (!now || !drawer_.dose || !drawer_.pressure || !drawer_.cavity)
        return tr("This mold has no dose yet: see the checks.");
    const auto units = context().units;
    QString rows;
    const auto row = [&](const QString& name, const QString& plan, const QString& here) {
        rows += QStringLiteral("<tr><td style='padding-right:18px'>%1</td><td align='right' "
                               "style='padding-right:18px'>%2</td><td align='right'><b>%3</b></td></tr>")
                    .arg(name, plan, here);
    };
    row({}, tr("planned"), tr("as built"));
    const auto ml = [&](double value) { return language::figures(plan::say_volume_ml(value, units)); };
    const auto kpa = [&](double value) { return language::figures(plan::say_pressure_kpa(value, units)); };
    const QString none = tr("refused");
    row(tr("mold holds"), ml(drawer_.cavity->net_mm3 / 1000), ml(now->cavity.net_mm3 / 1000));
    row(tr("to pour"), ml(drawer_.dose->poured_ml), now->dose ? ml(now->dose->poured_ml) : none);
    row(tr("part A"), language::figures(plan::say_mass_g(drawer_.dose->a_g, units)),
        now->dose ? language::figures(plan::say_mass_g(now->dose->a_g, units)) : none);
    row(tr("part B"), language::figures(plan::say_mass_g(drawer_.dose->b_g, units)),
        now->dose ? language::figures(plan::say_mass_g(now->dose->b_g, units)) : none);
    row(tr("when closed"), kpa(drawer_.pressure->closed_kpa),
        now->pressure ? kpa(now->pressure->closed_kpa) : none);
    row(tr("build for"), kpa(drawer_.pressure->build_for_kpa),
        now->pressure ? kpa(now->pressure->build_for_kpa) : none);
    QString words = QStringLiteral("<table>%1</table>").arg(rows);
    words += now->planned_dose_kpa
                 ? tr("If the plan’s dose went into it: %1 when closed.").arg(kpa(*now->planned_dose_kpa))
                 : tr("The plan’s dose would fill it with liquid alone: do not pour that much.");
    return words;
}

} // namespace drawercast::app
