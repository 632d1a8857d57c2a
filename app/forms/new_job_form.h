// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/catalog.h"

#include "forms/bindings.h"
#include "forms/form_dialog.h"

#include <optional>

namespace drawercast::app {

/// The size of the drawer a new job starts with.
class NewJobForm final : public FormDialog {
    Q_OBJECT
  public:
    NewJobForm(const job::DrawerSize& size, const FormContext& context, QWidget* parent = nullptr);

    std::optional<job::DrawerSize> value() const; ///< nothing while something is to mend

  protected:
    FieldProblems show_problems() override;

  private:
    void add_rows();

    job::DrawerSize given_;
    FieldRows* rows_;
    Bindings<job::DrawerSize> numbers_;
};

} // namespace drawercast::app
