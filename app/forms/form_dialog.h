// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/field_problem.h"
#include "forms/form_context.h"

#include <QDialog>

#include <functional>

class QKeySequence;
class QPushButton;
class QScrollArea;
class QToolButton;

namespace drawercast::app {

/// The frame of all forms: what is filled in, in a view that scrolls where the screen is small, over a line
/// that says what there is to mend (and goes there), and the two buttons. A form is made of a value and gives
/// back a value; it knows no document. Taking it is only offered while nothing is to mend.
class FormDialog : public QDialog {
    Q_OBJECT
  public:
    const FieldProblems& problems() const { return problems_; }

  protected:
    FormDialog(const QString& title, const QString& take_words, const FormContext& context, QWidget* parent);

    const FormContext& context() const { return context_; }
    void set_body(QWidget* body); ///< once, at the end of a form's constructor; asks for the problems

    /// Shows each problem of the form beside its field and returns them all, first in reading order first.
    virtual FieldProblems show_problems() = 0;
    void refresh(); ///< after every change

    /// A flat button of a row of tools, with its icon, or its words where `icon` is empty; the key, if any,
    /// works in the whole form.
    QToolButton* tool(const QString& icon, const QString& words, const QKeySequence& key,
                      std::function<void()> act);

  private:
    void go_to_problem();
    void make_room();
    void keep_on_screen(const QRect& screen);

    FormContext context_;
    FieldProblems problems_;
    QScrollArea* view_;
    QToolButton* to_mend_;
    QPushButton* take_;
};

/// Turns the pages of tabs and stacks that `widget` is on, so that it can be seen.
void bring_to_view(QWidget* widget);

} // namespace drawercast::app
