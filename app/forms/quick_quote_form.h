// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/quick_quote.h"

#include "forms/bindings.h"
#include "forms/form_dialog.h"

#include <optional>

class QLabel;

namespace drawercast::app {

/// About what drawers cost before anything is measured, while it is typed; and a job to go on with.
class QuickQuoteForm final : public FormDialog {
    Q_OBJECT
  public:
    /// With the foam, shop, units and currency of `job`.
    QuickQuoteForm(const job::Job& job, const FormContext& context, QWidget* parent = nullptr);

    /// A job with such drawers, empty; nothing while something is to mend.
    std::optional<job::Job> value() const;

  protected:
    FieldProblems show_problems() override;

  private:
    struct Fields {
        int drawers = 1;
        double width_mm = 480;
        double depth_mm = 360;
        double insert_mm = 60;
        int objects = 15;
        double area_share = 0.5;
        double hour_price = 0;
        double margin = 0;
    };
    void add_rows();
    job::Job priced(const Fields& fields) const;
    QString answer(const job::Job& job, const plan::QuickQuote& quote) const;

    job::Job job_;
    FieldRows* rows_;
    Bindings<Fields> numbers_;
    QLabel* answer_;
};

} // namespace drawercast::app
