// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/drawer.h"

#include "forms/field_problem.h"
#include "forms/form_context.h"

#include <QWidget>

#include <optional>

namespace drawercast::app {

class FieldRows;
class LengthEdit;
class OutlineEdit;
class ValueEdit;

/// Something in a drawer that the insert must keep clear of: its outline and where it stands.
class ObstructionEdit final : public QWidget {
    Q_OBJECT
  public:
    ObstructionEdit(const job::Obstruction& obstruction, const FormContext& context,
                    QWidget* parent = nullptr);

    std::optional<job::Obstruction> obstruction() const; ///< nothing where a field cannot be read
    FieldProblems own_problems() const;
    FieldProblems show(const FieldProblems& problems, FieldProblems& shown); ///< returns those of no field

  signals:
    void edited();

  private:
    job::Obstruction given_;
    FieldRows* rows_;
    OutlineEdit* outline_;
    LengthEdit* x_;
    LengthEdit* y_;
    ValueEdit* turn_;
};

} // namespace drawercast::app
