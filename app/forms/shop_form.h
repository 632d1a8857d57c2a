// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/shop.h"

#include "forms/bindings.h"
#include "forms/form_dialog.h"

#include <optional>

class QLineEdit;
class QTabWidget;

namespace drawercast::app {

class StockPages;

/// The workshop on the day of the pour: where it is and how warm, who is there, what things are mixed in,
/// the saw, and what it builds with.
class ShopForm final : public FormDialog {
    Q_OBJECT
  public:
    ShopForm(const job::Shop& shop, const FormContext& context, QWidget* parent = nullptr);

    /// As filled in, which the job reader takes; nothing while something is to mend.
    std::optional<job::Shop> value() const;

  protected:
    FieldProblems show_problems() override;

  private:
    void add_day_rows();
    void add_mixing_rows();
    void add_saw_rows();
    std::optional<std::vector<double>> typed_drills() const;
    std::optional<job::Shop> typed() const;

    job::Shop given_;
    QTabWidget* pages_;
    StockPages* stock_;
    FieldRows* left_;
    FieldRows* right_;
    Bindings<job::Shop> numbers_;
    QLineEdit* drills_;
    QString drills_shown_; ///< while this stands there, the job's drills stay as they are
};

} // namespace drawercast::app
