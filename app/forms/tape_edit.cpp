// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/tape_edit.h"

#include "base/number.h"

#include "forms/length_edit.h"
#include "forms/problem_words.h"
#include "forms/row_note.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>

#include <cmath>

namespace drawercast::app {

namespace {

constexpr job::Range reading_range{"", 0, 5000, true};

/// In the order of job::Taped.
std::array<QString, 8> reading_words() {
    return {TapeEdit::tr("Width at the &front"),      TapeEdit::tr("Width in the middle"),
            TapeEdit::tr("Width at the back"),        TapeEdit::tr("Depth at the &left"),
            TapeEdit::tr("Depth in the middle"),      TapeEdit::tr("Depth at the right"),
            TapeEdit::tr("Front left to back right"), TapeEdit::tr("Back left to front right")};
}

/// Never larger than measured: down to a tenth of a millimeter.
double rounded_down(double mm) { return grained(std::floor(mm * 10 + 1e-6) / 10); }

} // namespace

TapeEdit::TapeEdit(const FormContext& context, QWidget* parent)
    : QWidget(parent), context_(context), bottom_too_(new QCheckBox(tr("At the &bottom too"), this)),
      note_(new RowNote(this)), result_(new QLabel(this)) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(2);
    grid->setColumnMinimumWidth(0, 150);
    grid->setColumnStretch(3, 1);
    grid->addWidget(new QLabel(tr("At the top"), this), 0, 1);
    grid->addWidget(bottom_too_, 0, 2);
    add_rows(*grid);
    grid->addWidget(note_, int(readings) + 1, 0, 1, 4);
    grid->addWidget(result_, int(readings) + 2, 0, 1, 4);
    result_->setWordWrap(true);
    note_->hide();
    connect(bottom_too_, &QCheckBox::toggled, this, [this](bool on) {
        for (std::size_t i = 0; i < readings; ++i) {
            bottom_[i]->setEnabled(on);
            if (on && bottom_[i]->text().isEmpty()) bottom_[i]->set_value(top_[i]->value());
        }
        refresh();
        emit edited();
    });
}

void TapeEdit::add_rows(QGridLayout& grid) {
    const auto words = reading_words();
    for (std::size_t i = 0; i < readings; ++i) {
        auto* label = new QLabel(words[i], this);
        grid.addWidget(label, int(i) + 1, 0);
        for (auto [column, place, where] : {std::tuple{&top_, 1, tr("top")}, {&bottom_, 2, tr("bottom")}}) {
            auto* edit = new LengthEdit(context_, reading_range, this);
            (*column)[i] = edit;
            edit->setAccessibleName(tr("%1, %2").arg(QString(words[i]).remove(QLatin1Char('&')), where));
            grid.addWidget(edit, int(i) + 1, place);
            connect(edit, &ValueEdit::edited, this, [this] {
                refresh();
                emit edited();
            });
        }
        label->setBuddy(top_[i]);
        bottom_[i]->setEnabled(false);
    }
    for (std::size_t i = 0; i + 1 < readings; ++i) setTabOrder(top_[i], top_[i + 1]);
    setTabOrder(top_[readings - 1], bottom_too_);
    setTabOrder(bottom_too_, bottom_[0]);
    for (std::size_t i = 0; i + 1 < readings; ++i) setTabOrder(bottom_[i], bottom_[i + 1]);
}

void TapeEdit::set_square(double width_mm, double depth_mm) {
    const double diagonal = grained(std::hypot(width_mm, depth_mm));
    const std::array<double, readings> values{width_mm, width_mm, width_mm, depth_mm,
                                              depth_mm, depth_mm, diagonal, diagonal};
    for (std::size_t i = 0; i < readings; ++i) top_[i]->set_value(values[i]);
    refresh();
}

std::optional<job::Taped> TapeEdit::taped(const Column& column) {
    std::array<double, readings> mm{};
    for (std::size_t i = 0; i < readings; ++i) {
        if (!column[i]->value()) {
            problems_.push_back({"/tape", column[i]->problem(), column[i]->accessibleName(), column[i]});
            return std::nullopt;
        }
        mm[i] = *column[i]->value();
    }
    return job::Taped{mm[0], mm[1], mm[2], mm[3], mm[4], mm[5], mm[6], mm[7]};
}

void TapeEdit::refresh() {
    problems_.clear();
    inside_.reset();
    const auto top = taped(top_);
    const auto bottom = bottom_too_->isChecked() ? taped(bottom_) : std::nullopt;
    if (problems_.empty() && top) {
        const auto inside = job::largest_inside(*top, bottom);
        if (inside) {
            inside_ = *inside;
            inside_->width_mm = rounded_down(inside->width_mm);
            inside_->depth_mm = rounded_down(inside->depth_mm);
        } else {
            const auto& column = inside.error().where.name == "bottom" ? bottom_ : top_;
            problems_.push_back(
                {"/tape", problem_words(inside.error()), column[6]->accessibleName(), column[6]});
        }
    }
    show_result();
}

void TapeEdit::show_result() {
    note_->set_problem(problems_.empty() ? QString() : problems_.front().words);
    note_->setVisible(!problems_.empty());
    if (!inside_) {
        result_->clear();
        return;
    }
    const auto lost = [this](const job::Lost& l) {
        return tr("%1 lost to uneven readings, %2 to corners out of square")
            .arg(length(l.uneven_mm), length(l.skew_mm));
    };
    result_->setText(tr("Largest rectangle inside: %1 × %2 %3\nWidth: %4. Depth: %5.")
                         .arg(length(inside_->width_mm), length(inside_->depth_mm),
                              length_notation(context_).unit, lost(inside_->width_lost),
                              lost(inside_->depth_lost)));
}

QString TapeEdit::length(double mm) const { return length_notation(context_).shown(mm); }

} // namespace drawercast::app
