// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/outline_edit.h"

#include "forms/drawing_file.h"
#include "forms/field_rows.h"
#include "forms/length_edit.h"
#include "forms/outline_form.h"
#include "forms/table_edit.h"
#include "theme/icons.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QTableView>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr int most_corners = 5000;
constexpr int most_cylinders = 20;
constexpr int table_height = 148;

struct KindWords {
    const char* icon;
    QString words;
};

KindWords words_of(OutlineKind kind) {
    switch (kind) {
    case OutlineKind::rectangle:
        return {"rectangle", OutlineEdit::tr("Rectangle")};
    case OutlineKind::rounded:
        return {"rounded", OutlineEdit::tr("Rounded rectangle")};
    case OutlineKind::circle:
        return {"circle", OutlineEdit::tr("Circle")};
    case OutlineKind::capsule:
        return {"capsule", OutlineEdit::tr("Obround")};
    case OutlineKind::free:
        return {"free", OutlineEdit::tr("Free outline")};
    case OutlineKind::lying:
        return {"from-side", OutlineEdit::tr("Lying round")};
    }
    return {"rectangle", {}};
}

TableEdit* corner_table(const FormContext& context, QWidget* parent) {
    const Notation length = length_notation(context);
    const QString unit = length.unit;
    return new TableEdit(
        {{OutlineEdit::tr("x (%1)").arg(unit), length, outline_place},
         {OutlineEdit::tr("y (%1)").arg(unit), length, outline_place},
         {OutlineEdit::tr("arc height (%1)").arg(unit), length, outline_place, 0, false,
          OutlineEdit::tr("Height of the arc from this corner to the next, outward; 0 is straight, less "
                          "curves inward")}},
        {OutlineEdit::tr("Corners"), OutlineEdit::tr("Add a corner after this one (Insert)"),
         OutlineEdit::tr("Take this corner away (Delete)")},
        3, most_corners, parent);
}

TableEdit* cylinder_table(const FormContext& context, QWidget* parent) {
    const Notation length = length_notation(context);
    return new TableEdit({{OutlineEdit::tr("length (%1)").arg(length.unit), length,
                           job::range_of("/objects/*/levels/*/lying/*/length_mm"), 40},
                          {OutlineEdit::tr("diameter (%1)").arg(length.unit), length,
                           job::range_of("/objects/*/levels/*/lying/*/diameter_mm"), 20}},
                         {OutlineEdit::tr("Cylinders"),
                          OutlineEdit::tr("Add a cylinder after this one (Insert)"),
                          OutlineEdit::tr("Take this cylinder away (Delete)")},
                         1, most_cylinders, parent);
}

} // namespace

OutlineEdit::OutlineEdit(FieldRows& rows, const FormContext& context, const std::vector<OutlineKind>& kinds,
                         QObject* parent)
    : QObject(parent), rows_(rows), context_(context), kinds_(kinds), kind_(new QComboBox(&rows)),
      length_(new LengthEdit(context, outline_size)), width_(new LengthEdit(context, outline_size)),
      corner_(new LengthEdit(context, outline_size)), corners_(corner_table(context, &rows)),
      cylinders_(cylinder_table(context, &rows)), last_(shape::Given(shape::Rectangle{})) {
    for (const OutlineKind kind : kinds_) {
        const auto [icon, words] = words_of(kind);
        kind_->addItem(theme::icon(QString::fromLatin1(icon)), words);
    }
    add_rows(context);
    connect(kind_, &QComboBox::activated, this, [this] { choose(kind()); });
    connect(this, &OutlineEdit::edited, this, [this] {
        if (const auto now = outline()) last_ = *now, typed_ = true;
    });
    for (auto* edit : {length_, width_, corner_})
        connect(edit, &ValueEdit::edited, this, &OutlineEdit::edited);
    for (auto* table : {corners_, cylinders_}) connect(table, &TableEdit::edited, this, &OutlineEdit::edited);
    show_rows();
}

void OutlineEdit::add_rows(const FormContext&) {
    rows_.add_wide("/kind", tr("Sha&pe"), kind_);
    rows_.add("/outline/rect/0", tr("&Length, along x"), length_, {},
              {"/outline/capsule/0", "/outline/circle", "/outline/capsule"});
    rows_.add("/outline/rect/1", tr("&Width, along y"), width_, {}, {"/outline/capsule/1"});
    rows_.add("/outline/rect/2", tr("&Corner radius"), corner_, {}, {"/outline/rect"});
    corners_->setFixedHeight(table_height);
    cylinders_->setFixedHeight(table_height);
    rows_.add_wide("/ways", tr("By mouse"), make_ways());
    rows_.add_wide("/outline/polygon", tr("C&orners"), corners_, {"/outline"});
    rows_.add_wide("/lying", tr("C&ylinders, along x"), cylinders_);
}

QWidget* OutlineEdit::make_ways() {
    auto* ways = new QWidget;
    auto* row = new QHBoxLayout(ways);
    row->setContentsMargins(0, 0, 0, 0);
    auto* by_mouse = new QPushButton(theme::icon(QStringLiteral("free")), tr("Draw it…"));
    auto* from_file = new QPushButton(theme::icon(QStringLiteral("from-svg")), tr("From an SVG file…"));
    for (auto* button : {by_mouse, from_file}) {
        button->setAutoDefault(false);
        row->addWidget(button);
    }
    row->addStretch(1);
    connect(by_mouse, &QPushButton::clicked, this, &OutlineEdit::draw);
    connect(from_file, &QPushButton::clicked, this, &OutlineEdit::read_drawing);
    return ways;
}

void OutlineEdit::draw() {
    auto now = outline();
    auto polygon = corners_of(now ? *now : last_);
    if (outline::box_of(polygon).empty() || outline::box_of(polygon).width() <= 0)
        polygon = corners_of(shape::Given(shape::Rectangle{100, 60, 0})); // something to pull at
    OutlineForm form(polygon, context_, &rows_);
    if (form.exec() != QDialog::Accepted) return;
    if (const auto drawn = form.value()) take_free(*drawn);
}

void OutlineEdit::read_drawing() {
    DrawingDialogs dialogs;
    DrawingAsking& asking = context_.drawing_asking != nullptr ? *context_.drawing_asking : dialogs;
    if (const auto read = outline_from_drawing(context_, asking, &rows_)) take_free(*read);
}

void OutlineEdit::take_free(const shape::Polygon& polygon) {
    set_outline(shape::Given(polygon));
    emit edited();
}

OutlineKind OutlineEdit::kind() const {
    return kinds_[static_cast<std::size_t>(std::max(0, kind_->currentIndex()))];
}

void OutlineEdit::set_outline(const Outline& outline) {
    last_ = outline;
    const auto at = std::find(kinds_.begin(), kinds_.end(), kind_of(outline));
    kind_->setCurrentIndex(at == kinds_.end() ? 0 : int(at - kinds_.begin()));
    const OutlineSizes s = sizes_of(outline);
    length_->set_value(s.length_mm);
    width_->set_value(s.width_mm);
    corner_->set_value(s.corner_mm);
    std::vector<NumberRow> rows;
    const auto polygon = corners_of(outline);
    if (outline::box_of(polygon).width() > 0) // else nothing is drawn yet: four corners in one place are none
        for (const auto& c : polygon.corners) rows.push_back({{}, {c.at.x, c.at.y, c.sagitta_mm}, -1});
    corners_->set_rows(std::move(rows));
    std::vector<job::Cylinder> cylinders;
    if (const auto* lying = std::get_if<std::vector<job::Cylinder>>(&outline))
        cylinders = *lying;
    else if (s.length_mm && s.width_mm)
        cylinders = {{*s.length_mm, *s.width_mm}};
    std::vector<NumberRow> cylinder_rows;
    for (const auto& c : cylinders) cylinder_rows.push_back({{}, {c.length_mm, c.diameter_mm}, -1});
    cylinders_->set_rows(std::move(cylinder_rows));
    show_rows();
    emit kind_changed();
}

/// Another kind starts from the outline as it is.
void OutlineEdit::choose(OutlineKind kind) {
    OutlineSizes s = sizes();
    if (kind != OutlineKind::free && kind != OutlineKind::lying) {
        if (const OutlineSizes before = sizes_of(last_); typed_ || !s.length_mm || !s.width_mm)
            s = {before.length_mm, before.width_mm, s.corner_mm};
        length_->set_value(s.length_mm);
        width_->set_value(s.width_mm);
        if (kind == OutlineKind::rounded && !s.corner_mm && s.length_mm && s.width_mm)
            corner_->set_value(std::min({6.0, *s.length_mm / 2, *s.width_mm / 2}));
    } else {
        const Outline from = last_;
        set_outline(from); // fills both tables
        kind_->setCurrentIndex(int(std::find(kinds_.begin(), kinds_.end(), kind) - kinds_.begin()));
    }
    show_rows();
    emit kind_changed();
    emit edited();
    typed_ = false;
}

void OutlineEdit::show_rows() {
    const OutlineKind k = kind();
    const bool sizes = k != OutlineKind::free && k != OutlineKind::lying;
    rows_.set_row_shown("/outline/rect/0", sizes);
    rows_.set_row_shown("/outline/rect/1", sizes && k != OutlineKind::circle);
    rows_.set_row_shown("/outline/rect/2", k == OutlineKind::rounded);
    rows_.set_row_shown("/ways", k == OutlineKind::free);
    rows_.set_row_shown("/outline/polygon", k == OutlineKind::free);
    rows_.set_row_shown("/lying", k == OutlineKind::lying);
    rows_.set_label("/outline/rect/0", k == OutlineKind::circle ? tr("Diameter") : tr("&Length, along x"));
}

OutlineSizes OutlineEdit::sizes() const { return {length_->value(), width_->value(), corner_->value()}; }

std::optional<Outline> OutlineEdit::outline() const {
    if (kind() == OutlineKind::free) {
        shape::Polygon polygon;
        for (const auto& row : corners_->rows())
            polygon.corners.push_back({{row.numbers[0], row.numbers[1]}, row.numbers[2]});
        return shape::Given(polygon);
    }
    if (kind() == OutlineKind::lying) {
        std::vector<job::Cylinder> cylinders;
        for (const auto& row : cylinders_->rows()) cylinders.push_back({row.numbers[0], row.numbers[1]});
        return cylinders;
    }
    if (const auto given = with_sizes(kind(), sizes())) return *given;
    return std::nullopt;
}

} // namespace drawercast::app
