// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "forms/form_dialog.h"

#include <optional>

class QLabel;
class QLineEdit;

namespace drawercast::app {

class FieldRows;
class LengthEdit;
class TableEdit;

/// One drawer's mold measured before the pour, and beside the plan's what it takes of foam and how hard that
/// pushes in it.
class AsBuiltForm final : public FormDialog {
    Q_OBJECT
  public:
    AsBuiltForm(const job::Job& job, const plan::DrawerPlan& drawer, const FormContext& context,
                QWidget* parent = nullptr);

    /// What was measured; nothing while something is to mend.
    std::optional<job::AsBuilt> value() const;
    QString figures_text() const;

  protected:
    FieldProblems show_problems() override;

  private:
    void fill(const job::AsBuilt& built);
    std::optional<job::AsBuilt> typed() const;
    QString figures(const job::AsBuilt& built) const;

    job::Job job_;
    plan::DrawerPlan drawer_;
    job::AsBuilt given_;
    FieldRows* rows_;
    LengthEdit* width_;
    LengthEdit* depth_;
    TableEdit* walls_;
    TableEdit* blocks_;
    QLineEdit* note_;
    QLabel* figures_;
};

} // namespace drawercast::app
