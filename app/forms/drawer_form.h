// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/drawer.h"

#include "forms/bindings.h"
#include "forms/form_dialog.h"

#include <optional>

class QLineEdit;
class QRadioButton;
class QStackedWidget;

namespace drawercast::app {

class DrawerPicture;
class ObstructionEdit;
class OutlineEdit;
class PartTabs;
class TapeEdit;

/// A drawer to look at or change: its inside by size or by tape readings, heights, load, and what stands in
/// it.
class DrawerForm final : public FormDialog {
    Q_OBJECT
  public:
    enum class Purpose { add, change };
    DrawerForm(Purpose purpose, const job::Drawer& drawer, const FormContext& context,
               QWidget* parent = nullptr);

    /// The drawer as filled in, which the job reader takes; nothing while something is to mend. Pockets,
    /// vents, pours, id and what this version does not know are those of the drawer given.
    std::optional<job::Drawer> value() const;

  protected:
    FieldProblems show_problems() override;

  private:
    QWidget* make_left();
    QWidget* make_inside();
    void show_way(int page);
    void make_heights();
    void add_obstruction(const job::Obstruction& obstruction);
    void fill();
    std::vector<ObstructionEdit*> obstruction_edits() const;
    std::optional<shape::Given> typed_outline() const;
    std::optional<job::Drawer> typed() const;
    void show_picture();

    job::Drawer given_;
    FieldRows* name_rows_;
    QLineEdit* name_;
    QRadioButton* by_size_;
    QRadioButton* by_tape_;
    QStackedWidget* inside_;
    FieldRows* size_rows_;
    OutlineEdit* outline_;
    TapeEdit* tape_;
    FieldRows* rows_;
    Bindings<job::Drawer> numbers_;
    PartTabs* obstructions_;
    DrawerPicture* picture_;
};

} // namespace drawercast::app
