// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/mold.h"

#include "forms/bindings.h"
#include "forms/form_dialog.h"

#include <optional>

namespace drawercast::app {

/// How much foam the shop wants to leave standing. An empty field goes by the foam's firmness.
class MinimumsForm final : public FormDialog {
    Q_OBJECT
  public:
    MinimumsForm(const job::Minimums& minimums, const FormContext& context, QWidget* parent = nullptr);

    /// As filled in, which the job reader takes; nothing while something is to mend.
    std::optional<job::Minimums> value() const;

  protected:
    FieldProblems show_problems() override;

  private:
    void add_rows();
    std::optional<job::Minimums> typed() const;

    job::Minimums given_;
    FieldRows* rows_;
    Bindings<job::Minimums> numbers_;
};

} // namespace drawercast::app
