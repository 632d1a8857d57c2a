// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/outline_form.h"

#include "base/units.h"
#include "shape/easy.h"

#include "forms/field_rows.h"
#include "forms/length_edit.h"
#include "forms/problem_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QToolButton>
#include <QVBoxLayout>

#include <array>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr std::array steps_mm{0.0, 0.5, 1.0, 5.0, 10.0};
constexpr std::array inch_steps_mm{0.0, units::mm_per_inch / 32, units::mm_per_inch / 16,
                                   units::mm_per_inch / 8, units::mm_per_inch / 4};
constexpr int usual_step = 2; ///< of both

template <class Act>
shape::Polygon board_at(const shape::Polygon& polygon, std::size_t corner, Act act) {
    if (corner >= polygon.corners.size()) return polygon;
    return outline::with_corner_at(polygon, corner, act(polygon.corners[corner].at));
}

} // namespace

OutlineForm::OutlineForm(const shape::Polygon& polygon, const FormContext& context, QWidget* parent)
    : FormDialog(tr("Draw the outline"), tr("Take this outline"), context, parent),
      board_(
          new OutlineBoard([notation = length_notation(context)](double mm) { return notation.shown(mm); })),
      rows_(nullptr), x_(new LengthEdit(context, outline_place)), y_(new LengthEdit(context, outline_place)),
      side_(new LengthEdit(context, outline_size)), arc_(new LengthEdit(context, outline_place)),
      width_(new LengthEdit(context, outline_size)), height_(new LengthEdit(context, outline_size)),
      measures_(new QLabel), steps_{polygon} {
    rows_ = make_rows();
    auto* body = new QWidget;
    auto* columns = new QHBoxLayout(body);
    columns->setSpacing(16);
    auto* left = new QVBoxLayout;
    left->addWidget(make_tools());
    left->addWidget(board_, 1);
    auto* right = new QVBoxLayout;
    right->addWidget(rows_);
    measures_->setWordWrap(true);
    right->addWidget(measures_);
    right->addStretch(1);
    auto* how =
        new QLabel(tr("Drag corners; drag the ring on a side to make it an arc. A double click on a side "
                      "makes a corner, Delete takes the chosen one away. Ctrl leaves the grid."));
    how->setWordWrap(true);
    right->addWidget(how);
    columns->addLayout(left, 3);
    columns->addLayout(right, 2);
    connect(board_, &OutlineBoard::changed, this, &OutlineForm::take);
    connect(board_, &OutlineBoard::choice_changed, this, &OutlineForm::show_figures);
    board_->set_polygon(polygon);
    show_figures(); // before anything is asked of the fields
    set_body(body);
    board_->setFocus();
}

QWidget* OutlineForm::make_tools() {
    auto* row = new QWidget;
    auto* tools = new QHBoxLayout(row);
    tools->setContentsMargins(0, 0, 0, 0);
    const auto mirror = [this](outline::Mirror way) { take(outline::mirrored(board_->polygon(), way)); };
    undo_ = tool("undo", tr("Undo"), QKeySequence::Undo, [this] { go_to_step(step_ - 1); });
    redo_ = tool("redo", tr("Redo"), QKeySequence::Redo, [this] { go_to_step(step_ + 1); });
    away_ = tool("delete", tr("Take the chosen corner away"), {}, [this] { board_->take_chosen_away(); });
    tools->addWidget(undo_);
    tools->addWidget(redo_);
    tools->addWidget(away_);
    tools->addWidget(tool("mirror", tr("Mirror left to right"), QKeySequence("Ctrl+M"),
                          [mirror] { mirror(outline::Mirror::left_right); }));
    auto* front_back = tool("swap", tr("Mirror front to back"), QKeySequence("Ctrl+Shift+M"),
                            [mirror] { mirror(outline::Mirror::front_back); });
    tools->addWidget(front_back);
    tools->addWidget(tool("fit", tr("Show all of it"), QKeySequence("Ctrl+0"), [this] { board_->fit(); }));
    easy_ =
        tool("rectangle", tr("Nearest easy shapes"), QKeySequence("Ctrl+E"), [this] { offer_easy_shapes(); });
    tools->addWidget(easy_);
    tools->addStretch(1);
    auto* grid = new QComboBox;
    grid->setAccessibleName(tr("Grid"));
    for (const double step : context().units == job::DisplayUnits::mm ? steps_mm : inch_steps_mm)
        grid->addItem(step > 0 ? tr("Grid %1").arg(length_notation(context()).shown(step)) : tr("No grid"),
                      step);
    connect(grid, &QComboBox::currentIndexChanged, this,
            [this, grid] { board_->set_step(grid->currentData().toDouble()); });
    grid->setCurrentIndex(usual_step);
    tools->addWidget(grid);
    return row;
}

FieldRows* OutlineForm::make_rows() {
    auto* rows = new FieldRows;
    rows->add_head(tr("Chosen corner"));
    rows->add("/x", tr("&x"), x_);
    rows->add("/y", tr("&y"), y_);
    rows->add("/side", tr("&Side to the next"), side_);
    rows->add("/arc", tr("&Arc height"), arc_, tr("Outward; 0 is straight"));
    rows->add_head(tr("The whole"));
    rows->add("/width", tr("&Length, along x"), width_);
    rows->add("/height", tr("&Width, along y"), height_);
    arc_->allow_empty({});
    for (auto* edit : {x_, y_, side_}) edit->allow_empty({});
    // Typed figures take effect when the field is left: halves of a number are no outline.
    const auto on = [this](LengthEdit* edit, auto act) {
        connect(edit, &QLineEdit::editingFinished, this, [this, edit, act] {
            if (edit->value() && edit->isModified()) take(act(board_->polygon(), *edit->value()));
            edit->setModified(false);
        });
    };
    const auto chosen = [this] { return static_cast<std::size_t>(board_->chosen()); };
    on(x_, [chosen](const shape::Polygon& p, double v) {
        return board_at(p, chosen(), [v](shape::Vec at) { return shape::Vec{v, at.y}; });
    });
    on(y_, [chosen](const shape::Polygon& p, double v) {
        return board_at(p, chosen(), [v](shape::Vec at) { return shape::Vec{at.x, v}; });
    });
    on(side_,
       [chosen](const shape::Polygon& p, double v) { return outline::with_side_length(p, chosen(), v); });
    on(arc_, [chosen](const shape::Polygon& p, double v) { return outline::with_arc(p, chosen(), v); });
    on(width_, [](const shape::Polygon& p, double v) {
        return outline::with_size(p, v, outline::box_of(p).height());
    });
    on(height_, [](const shape::Polygon& p, double v) {
        return outline::with_size(p, outline::box_of(p).width(), v);
    });
    return rows;
}

/// Shapes quick to cut that hold all of this one, each with what it costs.
void OutlineForm::offer_easy_shapes() {
    using Kind = shape::EasyShape::Kind;
    const auto contour = shape::contour_of(board_->polygon());
    if (!contour) return;
    const auto notation = length_notation(context());
    const auto words_of = [](Kind kind) {
        switch (kind) {
        case Kind::rectangle:
            return tr("Rectangle: %1, up to %2 further out");
        case Kind::turned_rectangle:
            return tr("Turned rectangle: %1, up to %2 further out");
        case Kind::two_rectangles:
            return tr("Two rectangles: %1, up to %2 further out");
        case Kind::disc:
            return tr("Disc: %1, up to %2 further out");
        }
        return QString();
    };
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    for (const auto& easy : shape::easy_shapes(*contour)) {
        const double share = 100 * easy.more_mm2 / shape::area(*contour);
        const QString more =
            tr("the pocket grows by %1 %").arg(number_words(std::round(share * 10) / 10, context().mark));
        const QString reach = tr("%1 %2", "length, unit")
                                  .arg(notation.shown(std::round(easy.reach_mm * 10) / 10), notation.unit);
        connect(menu->addAction(words_of(easy.kind).arg(more, reach)), &QAction::triggered, this,
                [this, polygon = easy.polygon] { take(polygon); });
    }
    menu->popup(easy_->mapToGlobal(QPoint(0, easy_->height())));
}

void OutlineForm::take(const shape::Polygon& next) {
    if (next == steps_[step_]) return show_figures();
    steps_.resize(step_ + 1);
    steps_.push_back(next);
    go_to_step(step_ + 1);
}

void OutlineForm::go_to_step(std::size_t step) {
    if (step >= steps_.size()) return;
    step_ = step;
    board_->set_polygon(steps_[step_]);
    show_figures();
    refresh();
}

void OutlineForm::show_figures() {
    const auto& polygon = board_->polygon();
    const bool any = board_->chosen() >= 0;
    for (auto* edit : {x_, y_, side_, arc_}) edit->setEnabled(any);
    const auto i = static_cast<std::size_t>(std::max(0, board_->chosen()));
    const auto& corner = polygon.corners[i];
    const auto& next = polygon.corners[(i + 1) % polygon.corners.size()];
    const auto figure = [any](double value) { return any ? std::optional(value) : std::nullopt; };
    x_->set_value(figure(corner.at.x));
    y_->set_value(figure(corner.at.y));
    side_->set_value(figure(length(next.at - corner.at)));
    arc_->set_value(figure(corner.sagitta_mm));
    const shape::Box box = outline::box_of(polygon);
    width_->set_value(box.width());
    height_->set_value(box.height());
    for (auto* edit : {x_, y_, side_, arc_, width_, height_}) edit->setModified(false);
    undo_->setEnabled(step_ > 0);
    redo_->setEnabled(step_ + 1 < steps_.size());
    away_->setEnabled(any && polygon.corners.size() > 3);
    const auto contour = shape::contour_of(polygon);
    QString words = tr("%1 corners").arg(polygon.corners.size());
    if (any)
        if (const auto radius = outline::radius_of(polygon, i))
            words += tr("; the arc’s radius is %1").arg(length_notation(context()).shown(*radius));
    constexpr double mm2_in_cm2 = 100;
    if (contour && context().metric())
        words +=
            tr("; %1 cm²")
                .arg(number_words(std::round(10 * shape::area(*contour) / mm2_in_cm2) / 10, context().mark));
    measures_->setText(words);
}

std::optional<shape::Polygon> OutlineForm::value() const {
    if (!problems().empty()) return std::nullopt;
    return board_->polygon();
}

FieldProblems OutlineForm::show_problems() {
    FieldProblems shown;
    for (auto& problem : rows_->show(rows_->own_problems(), shown)) shown.push_back(std::move(problem));
    if (const auto contour = shape::contour_of(board_->polygon()); !contour) {
        FieldProblem of_all{"/outline", problem_words(contour.error())};
        of_all.field = board_;
        shown.push_back(std::move(of_all));
    }
    return shown;
}

} // namespace drawercast::app
