// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/drawer_form.h"

#include "layout/pocket.h"

#include "forms/drawer_picture.h"
#include "forms/field_rows.h"
#include "forms/length_edit.h"
#include "forms/obstruction_edit.h"
#include "forms/outline_edit.h"
#include "forms/part_tabs.h"
#include "forms/tape_edit.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QRadioButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

constexpr int most_obstructions = 100;
constexpr int most_name = 200;

const std::vector<OutlineKind> drawer_kinds{OutlineKind::rectangle, OutlineKind::rounded, OutlineKind::circle,
                                            OutlineKind::capsule, OutlineKind::free};

/// What the reader has against a drawer, paths within it. Its pockets are another matter: their objects are
/// elsewhere.
FieldProblems reader_problems(job::Drawer drawer) {
    if (drawer.id.empty()) drawer.id = "d1";
    drawer.pockets.clear();
    job::Job job;
    job.drawers.emplace_back(std::move(drawer));
    return problems_of(job, "/drawers/0");
}

job::Obstruction new_obstruction() { return {shape::Rectangle{30, 20, 0}, {{15, 10}, 0}, {}}; }

} // namespace

DrawerForm::DrawerForm(Purpose purpose, const job::Drawer& drawer, const FormContext& context,
                       QWidget* parent)
    : FormDialog(purpose == Purpose::add ? tr("New drawer") : tr("Drawer"),
                 purpose == Purpose::add ? tr("Add drawer") : tr("Keep changes"), context, parent),
      given_(drawer), name_rows_(new FieldRows), name_(new QLineEdit),
      by_size_(new QRadioButton(tr("By its inside &size"))),
      by_tape_(new QRadioButton(tr("Measured with a &tape"))), inside_(new QStackedWidget),
      size_rows_(new FieldRows), outline_(new OutlineEdit(*size_rows_, context, drawer_kinds, this)),
      tape_(new TapeEdit(context)), rows_(new FieldRows),
      obstructions_(
          new PartTabs({tr("Obstruction %1"), tr("Add an obstruction"), tr("Take this obstruction away"),
                        tr("Nothing stands in the drawer. Add a slide, a lock or a rail that the insert must "
                           "keep clear of.")},
                       0, most_obstructions)),
      picture_(new DrawerPicture(context)) {
    auto* body = new QWidget;
    auto* columns = new QHBoxLayout(body);
    columns->setSpacing(16);
    columns->addWidget(make_left(), 3);
    columns->addWidget(picture_, 2);
    fill();
    set_body(body);
    name_->setFocus();
}

QWidget* DrawerForm::make_left() {
    make_heights();
    name_->setMaxLength(most_name);
    name_rows_->add_wide("/name", tr("&Name"), name_);
    connect(name_, &QLineEdit::textEdited, this, &DrawerForm::refresh);
    connect(obstructions_, &PartTabs::taken_away, this, &DrawerForm::refresh);
    connect(obstructions_, &PartTabs::asked_for_another, this, [this] {
        add_obstruction(new_obstruction());
        refresh();
    });
    auto* left = new QWidget;
    auto* all = new QVBoxLayout(left);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(name_rows_);
    all->addWidget(make_inside());
    all->addWidget(rows_);
    all->addWidget(obstructions_, 1);
    return left;
}

QWidget* DrawerForm::make_inside() {
    auto* way = new QButtonGroup(this);
    way->addButton(by_size_);
    way->addButton(by_tape_);
    auto* choice = new QHBoxLayout;
    choice->addWidget(by_size_);
    choice->addWidget(by_tape_);
    choice->addStretch(1);
    auto* by_size = new QWidget;
    auto* lines = new QVBoxLayout(by_size);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(size_rows_);
    lines->addStretch(1); // the page is as high as the taller one
    inside_->addWidget(by_size);
    inside_->addWidget(tape_);
    inside_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    auto* whole = new QWidget;
    auto* all = new QVBoxLayout(whole);
    all->setContentsMargins(0, 0, 0, 0);
    all->addLayout(choice);
    all->addWidget(inside_);
    by_size_->setChecked(true);
    show_way(0);
    connect(size_rows_, &FieldRows::edited, this, &DrawerForm::refresh);
    connect(outline_, &OutlineEdit::edited, this, &DrawerForm::refresh);
    connect(tape_, &TapeEdit::edited, this, &DrawerForm::refresh);
    connect(by_tape_, &QRadioButton::toggled, this, [this](bool tape) {
        show_way(tape ? 1 : 0);
        refresh();
    });
    return whole;
}

/// The stack is as high as the page that is shown.
void DrawerForm::show_way(int page) {
    for (int i = 0; i < inside_->count(); ++i)
        inside_->widget(i)->setSizePolicy(QSizePolicy::Preferred,
                                          i == page ? QSizePolicy::Preferred : QSizePolicy::Ignored);
    inside_->setCurrentIndex(page);
}

void DrawerForm::make_heights() {
    using Drawer = job::Drawer;
    auto* clear = new LengthEdit(context(), job::range_of("/drawers/*/clear_height_mm"));
    auto* insert = new LengthEdit(context(), job::range_of("/drawers/*/insert_mm"));
    auto* gap = new LengthEdit(context(), job::range_of("/drawers/*/gap_mm"));
    auto* load =
        new ValueEdit(quantity_notation(Quantity::load_kg, context()), job::range_of("/drawers/*/load_kg"));
    const double automatic = layout::gap_of(Drawer{}, context().firmness);
    gap->allow_empty(tr("auto: %1").arg(length_notation(context()).shown(automatic)));
    numbers_.add(*rows_, {"/clear_height_mm", tr("Clear &height"), clear, &Drawer::clear_height_mm,
                          tr("From the drawer's bottom to what is over it")});
    numbers_.add(*rows_, {"/insert_mm", tr("&Insert's thickness"), insert, &Drawer::insert_mm});
    numbers_.add(*rows_,
                 {"/gap_mm", tr("&Gap all around"), gap, &Drawer::gap_mm, tr("Less than 0 squeezes")});
    numbers_.add(*rows_, {"/load_kg", tr("L&oad it may carry"), load, &Drawer::load_kg});
    connect(rows_, &FieldRows::edited, this, &DrawerForm::refresh);
}

void DrawerForm::add_obstruction(const job::Obstruction& obstruction) {
    auto* edit = new ObstructionEdit(obstruction, context());
    connect(edit, &ObstructionEdit::edited, this, &DrawerForm::refresh);
    obstructions_->add_page(edit);
}

void DrawerForm::fill() {
    name_->setText(QString::fromStdString(given_.name));
    outline_->set_outline(given_.outline);
    if (const auto contour = shape::contour_of(given_.outline))
        tape_->set_square(shape::bounds(*contour).width(), shape::bounds(*contour).height());
    numbers_.fill(given_);
    for (const auto& obstruction : given_.obstructions) add_obstruction(obstruction);
    if (!given_.obstructions.empty()) obstructions_->show_page(obstructions_->pages().front());
}

std::vector<ObstructionEdit*> DrawerForm::obstruction_edits() const {
    std::vector<ObstructionEdit*> edits;
    for (QWidget* page : obstructions_->pages()) edits.push_back(qobject_cast<ObstructionEdit*>(page));
    return edits;
}

std::optional<shape::Given> DrawerForm::typed_outline() const {
    if (by_tape_->isChecked()) {
        const auto inside = tape_->inside();
        if (!inside) return std::nullopt;
        return shape::Rectangle{inside->width_mm, inside->depth_mm, 0};
    }
    const auto outline = outline_->outline();
    if (!outline) return std::nullopt;
    return std::get<shape::Given>(*outline);
}

std::optional<job::Drawer> DrawerForm::typed() const {
    const auto outline = typed_outline();
    job::Drawer drawer = given_;
    if (!outline || !numbers_.take(drawer)) return std::nullopt;
    drawer.name = name_->text().toStdString();
    drawer.outline = *outline;
    drawer.obstructions.clear();
    for (const ObstructionEdit* edit : obstruction_edits()) {
        const auto obstruction = edit->obstruction();
        if (!obstruction) return std::nullopt;
        drawer.obstructions.push_back(*obstruction);
    }
    return drawer;
}

std::optional<job::Drawer> DrawerForm::value() const { return problems().empty() ? typed() : std::nullopt; }

FieldProblems DrawerForm::show_problems() {
    const auto drawer = typed();
    FieldProblems of_reader = drawer ? reader_problems(*drawer) : FieldProblems{};
    std::vector<FieldProblems> of_obstructions;
    const auto edits = obstruction_edits();
    for (std::size_t i = 0; i < edits.size(); ++i) {
        of_obstructions.push_back(edits[i]->own_problems());
        for (auto& problem : taken_below(of_reader, "/obstructions/" + std::to_string(i)))
            of_obstructions.back().push_back(std::move(problem));
    }
    FieldProblems shown;
    FieldProblems of_name;
    if (name_->text().trimmed().isEmpty()) of_name = {{"/name", tr("Give it a name to be found by")}};
    name_rows_->show(of_name, shown);
    if (by_tape_->isChecked()) {
        for (const auto& problem : tape_->problems()) shown.push_back(problem);
        size_rows_->show({}, shown);
    } else {
        FieldProblems of_size = size_rows_->own_problems();
        of_size.insert(of_size.end(), of_reader.begin(), of_reader.end());
        of_reader = size_rows_->show(of_size, shown);
    }
    FieldProblems of_rows = rows_->own_problems();
    of_rows.insert(of_rows.end(), of_reader.begin(), of_reader.end());
    FieldProblems left = rows_->show(of_rows, shown);
    for (std::size_t i = 0; i < edits.size(); ++i) {
        for (auto& problem : edits[i]->show(of_obstructions[i], shown)) left.push_back(std::move(problem));
        obstructions_->set_to_mend(int(i), !of_obstructions[i].empty());
    }
    shown.insert(shown.end(), left.begin(), left.end());
    show_picture();
    return shown;
}

void DrawerForm::show_picture() {
    job::Drawer drawer = given_;
    if (const auto outline = typed_outline()) drawer.outline = *outline;
    drawer.obstructions.clear();
    for (const ObstructionEdit* edit : obstruction_edits())
        if (const auto obstruction = edit->obstruction()) drawer.obstructions.push_back(*obstruction);
    picture_->set_drawer(drawer);
}

} // namespace drawercast::app
