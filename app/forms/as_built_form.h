// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "forms/form_dialog.h"
#include "forms/number_table.h"

#include <map>
#include <optional>
#include <vector>

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

  protected:
    FieldProblems show_problems() override;

  private:
    void fill(const job::AsBuilt& built);
    double planned_mm(const job::BuiltBlock& block) const; ///< height; 0: there is no such body
    QString label_of(const job::BuiltBlock& block) const;
    const job::BuiltBlock* labeled_as(const QString& words) const;
    void follow_labels();
    job::BuiltBlock block_of(const NumberRow& row) const;
    std::optional<job::AsBuilt> typed() const;
    QString figures(const job::AsBuilt& built) const;

    job::Job job_;
    plan::DrawerPlan drawer_;
    std::map<QString, job::BuiltBlock> bodies_; ///< by label
    std::vector<QString> labels_;               ///< of the rows, before the last edit
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
