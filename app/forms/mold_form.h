// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/mold.h"
#include "job/shop.h"

#include "forms/bindings.h"
#include "forms/form_dialog.h"

#include <optional>

class QCheckBox;
class QComboBox;

namespace drawercast::app {

/// How the molds of the job are built. Each part is automatic, or fixed by the maker and then checked like
/// any other.
class MoldForm final : public FormDialog {
    Q_OBJECT
  public:
    /// `shop`: whose boards, stiffeners and closures there are to choose from.
    MoldForm(const job::Mold& mold, const job::Shop& shop, const FormContext& context,
             QWidget* parent = nullptr);

    /// As filled in, which the job reader takes; nothing while something is to mend.
    std::optional<job::Mold> value() const;

  protected:
    FieldProblems show_problems() override;

  private:
    enum Stiffening { automatic, none, fixed };
    void add_plate();
    void add_stiffeners();
    void add_rest();
    void fill();
    void show_stiffeners();
    QComboBox* names(QStringList names, const std::optional<std::string>& chosen);
    std::optional<job::Mold> typed() const;

    job::Mold given_;
    job::Shop shop_;
    FieldRows* rows_;
    Bindings<job::Mold> numbers_;
    Bindings<job::StiffenerChoice> count_;
    QComboBox* board_ = nullptr;
    QComboBox* box_board_ = nullptr;
    QComboBox* closure_ = nullptr;
    QComboBox* stiffening_;
    QComboBox* piece_ = nullptr;
    QComboBox* along_;
    QCheckBox* glued_;
    QCheckBox* gasket_;
    QComboBox* corner_;
    QCheckBox* share_walls_;
};

} // namespace drawercast::app
