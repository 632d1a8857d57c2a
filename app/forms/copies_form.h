// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include "forms/bindings.h"
#include "forms/copy_order.h"
#include "forms/form_dialog.h"

#include <optional>

class QCheckBox;
class QLabel;

namespace drawercast::app {

/// What the copies have to do with: the pocket they are of, and the insert they must stay inside.
struct CopyRoom {
    shape::Box pocket;
    shape::Box insert;
};

/// Columns and rows of copies of a pocket, and the walls between them; says how large all of it is, and
/// whether it stays inside the insert.
class CopiesForm final : public FormDialog {
    Q_OBJECT
  public:
    CopiesForm(const CopyOrder& order, const CopyRoom& room, const FormContext& context,
               QWidget* parent = nullptr);

    std::optional<CopyOrder> value() const; ///< nothing while something is to mend

  protected:
    FieldProblems show_problems() override;

  private:
    void add_rows();
    std::optional<CopyOrder> typed() const;
    QString room_words(const CopyOrder& order) const;

    CopyOrder given_;
    CopyRoom room_;
    FieldRows* rows_;
    Bindings<CopyOrder> numbers_;
    QCheckBox* leftward_;
    QCheckBox* backward_;
    QLabel* words_;
};

/// The box around all of them.
shape::Box box_of_copies(const CopyOrder& order, const shape::Box& pocket);

} // namespace drawercast::app
