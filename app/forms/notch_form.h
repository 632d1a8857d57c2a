// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/drawer.h"

#include "forms/form_dialog.h"

#include <optional>

namespace drawercast::app {

class FieldRows;
class LengthEdit;
class OutlineEdit;

/// Outline and depth of a finger notch; where it stands stays as it is.
class NotchForm final : public FormDialog {
    Q_OBJECT
  public:
    NotchForm(const job::Notch& notch, const FormContext& context, QWidget* parent = nullptr);

    /// As filled in, which the job reader takes; nothing while something is to mend.
    std::optional<job::Notch> value() const;

  protected:
    FieldProblems show_problems() override;

  private:
    std::optional<job::Notch> typed() const;

    job::Notch given_;
    FieldRows* rows_;
    OutlineEdit* outline_;
    LengthEdit* depth_;
};

} // namespace drawercast::app
