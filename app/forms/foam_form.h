// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/foam.h"
#include "job/shop.h"

#include "forms/bindings.h"
#include "forms/form_dialog.h"

#include <optional>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QTabWidget;

namespace drawercast::app {

class TableEdit;

/// The foam a job is cast in: a built-in profile as it is, or one of the maker's own, which the job carries.
/// Every number says its unit, its range and where it is to be had from; one that is not the profile's says
/// what the profile has.
class FoamForm final : public FormDialog {
    Q_OBJECT
  public:
    /// `shop`: its temperature and altitude say what the foam does today.
    FoamForm(const job::Foam& foam, const job::Shop& shop, const FormContext& context,
             QWidget* parent = nullptr);

    /// The foam as filled in, which the job reader takes; nothing while something is to mend.
    std::optional<job::Foam> value() const;

  protected:
    FieldProblems show_problems() override;

  private:
    QWidget* make_head();
    QWidget* make_pages();
    QWidget* make_cup_page();
    void choose_profile(int index);
    void fill(const job::Foam& foam);
    void make_own();
    std::optional<job::Foam> typed() const;
    void show_differences();
    void show_today(const std::optional<job::Foam>& foam);
    FieldProblems reader_problems(const job::Foam& foam) const;

    std::vector<job::Foam> profiles_; ///< the job's own first, then the built-in ones
    job::Foam profile_;               ///< the one the fields started from
    job::Shop shop_;
    QComboBox* choice_;
    FieldRows* name_rows_;
    QLineEdit* name_;
    QLabel* today_;
    QTabWidget* pages_;
    FieldRows* rise_rows_;
    FieldRows* cured_rows_;
    FieldRows* cup_rows_;
    Bindings<job::Foam> rise_;
    Bindings<job::Foam> cured_;
    Bindings<job::Cup> cup_;
    QComboBox* firmness_;
    QCheckBox* crush_;
    QCheckBox* use_cup_;
    TableEdit* kits_;
};

} // namespace drawercast::app
