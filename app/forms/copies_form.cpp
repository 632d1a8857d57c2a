// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/copies_form.h"

#include "forms/length_edit.h"

#include <QCheckBox>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr job::Range how_many{"", 1, 50, false, true};
constexpr job::Range wall{"", 0, 1000};
constexpr int most_copies = 400;

} // namespace

shape::Box box_of_copies(const CopyOrder& order, const shape::Box& pocket) {
    shape::Box box = pocket;
    const shape::Vec far{(pocket.width() + order.wall_x_mm) * (order.columns - 1) * (order.leftward ? -1 : 1),
                         (pocket.height() + order.wall_y_mm) * (order.rows - 1) * (order.backward ? 1 : -1)};
    box.add(pocket.min + far);
    box.add(pocket.max + far);
    return box;
}

CopiesForm::CopiesForm(const CopyOrder& order, const CopyRoom& room, const FormContext& context,
                       QWidget* parent)
    : FormDialog(tr("Copies in rows"), tr("Make the copies"), context, parent), given_(order), room_(room),
      rows_(new FieldRows), leftward_(new QCheckBox(tr("To the &left instead of to the right"))),
      backward_(new QCheckBox(tr("To the &back instead of to the front"))), words_(new QLabel) {
    add_rows();
    numbers_.fill(order);
    leftward_->setChecked(order.leftward);
    backward_->setChecked(order.backward);
    words_->setWordWrap(true);
    words_->setMinimumHeight(2 * words_->fontMetrics().lineSpacing());
    words_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* body = new QWidget;
    auto* all = new QVBoxLayout(body);
    all->addWidget(rows_);
    all->addWidget(leftward_);
    all->addWidget(backward_);
    all->addWidget(words_);
    all->addStretch(1);
    connect(rows_, &FieldRows::edited, this, &CopiesForm::refresh);
    for (auto* box : {leftward_, backward_}) connect(box, &QCheckBox::toggled, this, &CopiesForm::refresh);
    set_body(body);
    numbers_.fields().front().edit->setFocus();
    numbers_.fields().front().edit->selectAll();
}

void CopiesForm::add_rows() {
    const auto count = [this] { return new ValueEdit(number_notation(context(), {}), how_many); };
    numbers_.add(*rows_, {"/columns", tr("&Columns"), count(), &CopyOrder::columns,
                          tr("Left to right, this pocket counted")});
    numbers_.add(*rows_,
                 {"/rows", tr("&Rows"), count(), &CopyOrder::rows, tr("Front to back, this pocket counted")});
    numbers_.add(*rows_, {"/wall_x_mm", tr("&Walls between columns"), new LengthEdit(context(), wall),
                          &CopyOrder::wall_x_mm});
    numbers_.add(*rows_, {"/wall_y_mm", tr("W&alls between rows"), new LengthEdit(context(), wall),
                          &CopyOrder::wall_y_mm});
}

std::optional<CopyOrder> CopiesForm::typed() const {
    CopyOrder order = given_;
    if (!numbers_.take(order)) return std::nullopt;
    order.leftward = leftward_->isChecked();
    order.backward = backward_->isChecked();
    return order;
}

std::optional<CopyOrder> CopiesForm::value() const { return problems().empty() ? typed() : std::nullopt; }

QString CopiesForm::room_words(const CopyOrder& order) const {
    const auto shown = [this](double mm) {
        const auto notation = length_notation(context());
        return tr("%1 %2", "length, unit").arg(notation.shown(mm), notation.unit);
    };
    const shape::Box box = box_of_copies(order, room_.pocket);
    const double over = std::max({room_.insert.min.x - box.min.x, box.max.x - room_.insert.max.x,
                                  room_.insert.min.y - box.min.y, box.max.y - room_.insert.max.y});
    const QString all = tr("%1 pockets, %2 × %3 over all.")
                            .arg(order.columns * order.rows)
                            .arg(shown(box.width()), shown(box.height()));
    return over > 0 ? tr("%1 They reach %2 past the insert’s edge.").arg(all, shown(over))
                    : tr("%1 The nearest edge of the insert is %2 away.").arg(all, shown(-over));
}

FieldProblems CopiesForm::show_problems() {
    FieldProblems all = rows_->own_problems();
    const auto order = typed();
    if (order && order->columns * order->rows > most_copies)
        all.push_back({"/rows", tr("That makes more than %1 pockets").arg(most_copies)});
    if (order && order->columns * order->rows == 1) all.push_back({"/columns", tr("That makes no copy")});
    words_->setText(order ? room_words(*order) : QString());
    FieldProblems shown;
    for (auto& problem : rows_->show(all, shown)) shown.push_back(std::move(problem));
    return shown;
}

} // namespace drawercast::app
