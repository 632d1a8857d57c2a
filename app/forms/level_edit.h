// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/field_problem.h"
#include "forms/form_context.h"
#include "forms/outline_kind.h"

#include <QWidget>

#include <optional>

class QCheckBox;

namespace drawercast::app {

class FieldRows;
class LengthEdit;
class OutlineEdit;
class ValueEdit;

/// One level of an object: its outline, how deep it goes, where it lies on the object.
class LevelEdit final : public QWidget {
    Q_OBJECT
  public:
    LevelEdit(const job::Level& level, const FormContext& context, QWidget* parent = nullptr);

    std::optional<job::Level> level() const;                   ///< nothing where a field cannot be read
    const job::Level& last_read() const { return last_read_; } ///< for the picture, while typing goes on
    FieldProblems own_problems() const;
    /// Shows the problems beside their fields; those of no field are left out of `shown` and returned.
    FieldProblems show(const FieldProblems& problems, FieldProblems& shown);

  signals:
    void edited();

  private:
    void show_rows();

    void remember();

    job::Level last_read_;
    job::Level given_; ///< what the form does not show is kept from here
    FieldRows* rows_;
    OutlineEdit* outline_;
    QCheckBox* through_;
    LengthEdit* depth_;
    LengthEdit* axis_;
    LengthEdit* x_;
    LengthEdit* y_;
    ValueEdit* turn_;
};

} // namespace drawercast::app
