// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/measured.h"

#include "forms/field_problem.h"
#include "forms/form_context.h"

#include <QWidget>

#include <array>
#include <optional>

class QCheckBox;
class QGridLayout;
class QLabel;

namespace drawercast::app {

class LengthEdit;
class RowNote;

/// Tape readings of a drawer, three widths, three depths and two diagonals, at the top and at the bottom;
/// below them the rectangle that fits inside all of them and what was lost to what.
class TapeEdit final : public QWidget {
    Q_OBJECT
  public:
    explicit TapeEdit(const FormContext& context, QWidget* parent = nullptr);

    /// Starts from a square drawer of this size, top only.
    void set_square(double width_mm, double depth_mm);
    /// The rectangle inside, rounded down to what the job's units show; nothing where readings are missing or
    /// wrong.
    std::optional<job::Inside> inside() const { return inside_; }
    FieldProblems problems() const { return problems_; }

  signals:
    void edited();

  private:
    static constexpr std::size_t readings = 8;
    using Column = std::array<LengthEdit*, readings>;
    void add_rows(QGridLayout& grid);
    std::optional<job::Taped> taped(const Column& column);
    void refresh();
    void show_result();
    QString length(double mm) const;

    FormContext context_;
    Column top_{};
    Column bottom_{};
    QCheckBox* bottom_too_;
    RowNote* note_;
    QLabel* result_;
    std::optional<job::Inside> inside_;
    FieldProblems problems_;
};

} // namespace drawercast::app
