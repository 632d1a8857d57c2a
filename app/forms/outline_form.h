// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/form_dialog.h"
#include "outline/outline_board.h"

class QLabel;
class QToolButton;

namespace drawercast::app {

class FieldRows;
class LengthEdit;

/// A free outline drawn by mouse, with the figures of the chosen corner and of the whole beside it, its own
/// undo, and what is wrong with it while it is drawn.
class OutlineForm final : public FormDialog {
    Q_OBJECT
  public:
    OutlineForm(const shape::Polygon& polygon, const FormContext& context, QWidget* parent = nullptr);

    std::optional<shape::Polygon> value() const; ///< nothing while something is to mend
    OutlineBoard& board() { return *board_; }

  protected:
    FieldProblems show_problems() override;

  private:
    QWidget* make_tools();
    FieldRows* make_rows();
    void offer_easy_shapes();
    void take(const shape::Polygon& next); ///< one step of the form's undo
    void go_to_step(std::size_t step);
    void show_figures();

    OutlineBoard* board_;
    FieldRows* rows_;
    LengthEdit *x_, *y_, *side_, *arc_, *width_, *height_;
    QLabel* measures_;
    QToolButton* undo_ = nullptr;
    QToolButton* redo_ = nullptr;
    QToolButton* away_ = nullptr;
    QToolButton* easy_ = nullptr;
    std::vector<shape::Polygon> steps_;
    std::size_t step_ = 0;
};

} // namespace drawercast::app
