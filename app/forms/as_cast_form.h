// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/as_cast.h"
#include "plan/plan.h"

#include "forms/cast_page.h"
#include "forms/form_dialog.h"

#include <optional>

class QCheckBox;
class QLabel;

namespace drawercast::app {

class PartTabs;

/// The casts of one drawer: what was weighed and measured, beside what was planned; what the casts of this
/// foam say together, to be reckoned with where the maker asks for it; what the mold has been through.
class AsCastForm final : public FormDialog {
    Q_OBJECT
  public:
    /// `day` is written on a new record.
    AsCastForm(const job::Job& job, const plan::Plan& plan, const std::string& drawer, const QString& day,
               const FormContext& context, QWidget* parent = nullptr);

    /// The job with these casts, and with what was asked for of them; nothing while something is to mend.
    std::optional<job::Job> value() const;

  protected:
    FieldProblems show_problems() override;

  private:
    struct Page {
        CastPage* widget;
        int origin; ///< in the job's casts; -1: a new one
    };
    QWidget* answers();
    void add_page(const job::Cast& cast, int origin);
    void add_another();
    std::vector<Page> pages() const; ///< those still there, in order
    std::optional<job::Job> typed() const;
    plan::Wanted wanted() const;
    void show_answers(const job::Job& job);
    void show_learned(const job::Job& job);
    QString comparison(const job::Job& job, const job::Cast& cast) const;

    job::Job job_;
    plan::Plan plan_;
    plan::DrawerPlan drawer_;
    QString day_;
    PartTabs* tabs_;
    std::vector<CastPocket> pockets_;
    std::vector<Page> all_pages_;
    QLabel* comparison_;
    QLabel* learned_;
    QLabel* mold_;
    QCheckBox* bucket_left_;
    QCheckBox* viscosity_;
    QCheckBox* shrinkage_;
};

} // namespace drawercast::app
