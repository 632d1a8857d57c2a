// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "forms/bindings.h"
#include "forms/form_dialog.h"

#include <memory>
#include <optional>

class QCheckBox;
class QLabel;

namespace drawercast::app {

class PartTabs;
class RisePlot;

/// Test cups of the day: what they measured, what they show together, and what that changes for each drawer
/// before anything is poured.
class CupForm final : public FormDialog {
    Q_OBJECT
  public:
    CupForm(const job::Job& job, const plan::Plan& plan, const FormContext& context,
            QWidget* parent = nullptr);

    /// The job's foam with these cups; nothing while something is to mend.
    std::optional<job::Foam> value() const;

  protected:
    FieldProblems show_problems() override;

  private:
    struct Page {
        QWidget* widget;
        QCheckBox* use;
        FieldRows* rows;
        std::shared_ptr<Bindings<job::Cup>> numbers;
        job::Cup given;
    };
    void add_page(const job::Cup& cup);
    std::vector<Page> pages() const; ///< those still there, in order
    std::optional<job::Foam> typed() const;
    void show_effect(const std::optional<job::Foam>& foam);
    QString together(const job::Foam& foam) const;
    QString table(const job::Foam& foam) const;

    job::Job job_;
    plan::Plan plan_;
    PartTabs* tabs_;
    std::vector<Page> all_pages_;
    QLabel* together_;
    QLabel* effect_;
    RisePlot* plot_;
    bool fresh_ = false; ///< there was no cup, and nothing was typed yet
};

} // namespace drawercast::app
