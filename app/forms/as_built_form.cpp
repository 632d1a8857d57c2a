// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/as_built_form.h"

#include "plan/as_built.h"
#include "plan/stock_stage.h"
#include "shape/enlargement.h"

#include "forms/field_rows.h"
#include "forms/figure_table.h"
#include "forms/length_edit.h"
#include "forms/table_edit.h"
#include "language/say.h"
#include "sheets/text.h"

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

using sheets::text;

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
                      {AsBuiltForm::tr("Heights of the box walls"), AsBuiltForm::tr("Add a height (Insert)"),
                       AsBuiltForm::tr("Take this height away (Delete)")},
                      0, most_walls));
}

TableEdit* block_table(const FormContext& context) {
    const Notation length = length_notation(context);
    NumberColumn label{AsBuiltForm::tr("block"), {}, {}, 0, true, AsBuiltForm::tr("As on its label: 7a")};
    NumberColumn height{AsBuiltForm::tr("height, %1").arg(length.unit),
                        length,
                        job::range_of("/as_built/*/blocks/*/height_mm"),
                        0, // the plan's, as soon as the block is known
                        false,
                        AsBuiltForm::tr("Over the board, sealed")};
    NumberColumn wider{AsBuiltForm::tr("wider, %1").arg(length.unit),
                       length,
                       job::range_of("/as_built/*/blocks/*/grown_mm"),
                       0,
                       false,
                       AsBuiltForm::tr("On each side, than planned; below 0: narrower")};
    return low(new TableEdit({label, height, wider},
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

constexpr int height_column = 1, wider_column = 2;

/// All bodies of the drawer's blocks by their labels.
std::map<QString, job::BuiltBlock> labeled(const job::Job& job, const plan::DrawerPlan& drawer) {
    std::map<QString, job::BuiltBlock> bodies;
    const auto stock = plan::drawer_stock(job, drawer);
    if (!stock) return bodies;
    for (const auto& block : stock->blocks)
        for (const auto& body : block.bodies)
            bodies[text(body.label)] = {block.subject, body.of + 1, {}, 0, {}};
    return bodies;
}

bool same_length(double a, double b) { return std::abs(a - b) < 1e-6; }

} // namespace

AsBuiltForm::AsBuiltForm(const job::Job& job, const plan::DrawerPlan& drawer, const FormContext& context,
                         QWidget* parent)
    : FormDialog(tr("As built"), tr("Keep as built"), context, parent), job_(job), drawer_(drawer),
      bodies_(labeled(job, drawer)), rows_(new FieldRows),
      width_(new LengthEdit(context, job::range_of("/as_built/*/width_mm"))),
      depth_(new LengthEdit(context, job::range_of("/as_built/*/depth_mm"))), note_(new QLineEdit),
      figures_(figures_label()) {
    const double k = shape::enlargement_for(job.foam->shrinkage);
    const double walls_mm = drawer.cavity ? grained(drawer.cavity->height_mm) : 60;
    walls_ = wall_table(context, walls_mm);
    blocks_ = block_table(context);
    if (drawer.insert) {
        const auto shown = length_notation(context).shown;
        width_->allow_empty(shown(drawer.insert->box.width() * k));
        depth_->allow_empty(shown(drawer.insert->box.height() * k));
    }
    rows_->add("/width_mm", tr("&Width of the box"), width_, tr("Inside, left to right"));
    rows_->add("/depth_mm", tr("&Depth of the box"), depth_, tr("Inside, front to back"));
    rows_->add_wide("/walls_mm", tr("Box w&alls"), walls_);
    rows_->add_wide("/blocks", tr("&Odd blocks"), blocks_);
    rows_->add_wide("/note", tr("&Note"), note_);
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
    connect(blocks_, &TableEdit::edited, this, [this] {
        follow_labels();
        refresh();
    });
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
    for (const auto& block : built.blocks)
        blocks.push_back({label_of(block),
                          {0, block.height_mm.value_or(planned_mm(block)), block.grown_mm},
                          int(blocks.size())});
    walls_->set_rows(std::move(walls));
    blocks_->set_rows(std::move(blocks));
    labels_.clear();
    for (const auto& row : blocks_->rows()) labels_.push_back(row.words);
}

double AsBuiltForm::planned_mm(const job::BuiltBlock& block) const {
    return planned_height_mm(drawer_, block, shape::enlargement_for(job_.foam->shrinkage));
}

/// A body that has no label, in a file, goes by its pocket.
QString AsBuiltForm::label_of(const job::BuiltBlock& block) const {
    for (const auto& [label, body] : bodies_)
        if (body.pocket == block.pocket && body.body == block.body) return label;
    return text(block.pocket);
}

/// "7a", or "7" for its first body.
const job::BuiltBlock* AsBuiltForm::labeled_as(const QString& words) const {
    const QString label = words.trimmed().toLower();
    for (const QString& one : {label, label + QLatin1Char('a')})
        if (const auto at = bodies_.find(one); at != bodies_.end()) return &at->second;
    return nullptr;
}

/// A row whose height was the plan's for the block it named, or none yet, takes the plan's of the block it
/// names now.
void AsBuiltForm::follow_labels() {
    const auto rows = blocks_->rows();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const double height = rows[i].numbers[std::size_t(height_column)];
        const auto* now = labeled_as(rows[i].words);
        const auto* before = i < labels_.size() ? labeled_as(labels_[i]) : nullptr;
        if (now != nullptr &&
            (height == 0 || (before != nullptr && same_length(height, planned_mm(*before)))))
            blocks_->table().put(static_cast<int>(i), height_column, grained(planned_mm(*now)));
    }
    labels_.clear();
    for (const auto& row : rows) labels_.push_back(row.words);
}

job::BuiltBlock AsBuiltForm::block_of(const NumberRow& row) const {
    job::BuiltBlock block =
        row.origin < 0 ? job::BuiltBlock{} : given_.blocks[static_cast<std::size_t>(row.origin)];
    const auto* known = labeled_as(row.words);
    if (known != nullptr)
        block.pocket = known->pocket, block.body = known->body;
    else if (row.origin < 0 || row.words != label_of(block))
        block.pocket = row.words.trimmed().toStdString();
    const double height = row.numbers[std::size_t(height_column)];
    if (block.height_mm || !same_length(height, planned_mm(block))) block.height_mm = height;
    block.grown_mm = row.numbers[std::size_t(wider_column)];
    return block;
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
    for (const auto& row : blocks_->rows()) built.blocks.push_back(block_of(row));
    return built;
}

std::optional<job::AsBuilt> AsBuiltForm::value() const { return problems().empty() ? typed() : std::nullopt; }

FieldProblems AsBuiltForm::show_problems() {
    FieldProblems all = rows_->own_problems();
    const auto built = typed();
    if (built) {
        for (const auto& block : built->blocks)
            if (planned_mm(block) <= 0)
                all.push_back({"/blocks", tr("There is no block “%1” in this drawer: write it as on its "
                                             "label, such as 7a")
                                              .arg(label_of(block))});
        auto job = job_;
        job.as_built = {*built};
        for (auto& problem : problems_of(job, "/as_built/0")) all.push_back(std::move(problem));
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
    FigureTable table(18, 0);
    const auto row = [&](const QString& name, const QString& plan, const QString& here) {
        table.row({name, plan, bold(here)});
    };
    row({}, tr("planned"), tr("as built"));
    const auto ml = [&](double value) { return language::say_volume_ml(value, units); };
    const auto kpa = [&](double value) { return language::say_pressure_kpa(value, units); };
    const QString none = tr("refused");
    row(tr("mold holds"), ml(drawer_.cavity->net_mm3 / 1000), ml(now->cavity.net_mm3 / 1000));
    row(tr("to pour"), ml(drawer_.dose->poured_ml), now->dose ? ml(now->dose->poured_ml) : none);
    row(tr("part A"), language::say_mass_g(drawer_.dose->a_g, units),
        now->dose ? language::say_mass_g(now->dose->a_g, units) : none);
    row(tr("part B"), language::say_mass_g(drawer_.dose->b_g, units),
        now->dose ? language::say_mass_g(now->dose->b_g, units) : none);
    row(tr("when closed"), kpa(drawer_.pressure->closed_kpa),
        now->pressure ? kpa(now->pressure->closed_kpa) : none);
    row(tr("build for"), kpa(drawer_.pressure->build_for_kpa),
        now->pressure ? kpa(now->pressure->build_for_kpa) : none);
    QString words = table.html();
    words += now->planned_dose_kpa
                 ? tr("If the plan’s dose went into it: %1 when closed.").arg(kpa(*now->planned_dose_kpa))
                 : tr("The plan’s dose would fill it with liquid alone: do not pour that much.");
    return words;
}

} // namespace drawercast::app
