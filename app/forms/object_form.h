// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/object.h"

#include "forms/bindings.h"
#include "forms/form_dialog.h"

#include <optional>

class QComboBox;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace drawercast::app {

class LengthEdit;
class LevelEdit;
class ObjectPicture;
class PartTabs;

/// An object to look at or change: what it is, how it fits, and its levels, with a live picture from above
/// and from the front.
class ObjectForm final : public FormDialog {
    Q_OBJECT
  public:
    enum class Purpose { add, change };
    ObjectForm(Purpose purpose, const job::Object& object, const FormContext& context,
               QWidget* parent = nullptr);

    /// The object as filled in, which the job reader takes; nothing while something is to mend. Id and what
    /// this version does not know are those of the object given.
    std::optional<job::Object> value() const;

  protected:
    FieldProblems show_problems() override;

  private:
    QWidget* make_left();
    QWidget* make_right();
    FieldRows* make_rows();
    FieldRows* make_more();
    void add_level(const job::Level& level);
    QPushButton* make_from_drawing();
    void add_drawn_levels();
    void fill();
    std::vector<LevelEdit*> level_edits() const;
    std::optional<job::Object> typed() const; ///< as typed, before the reader has looked at it
    void show_picture();

    job::Object given_;
    FieldRows* rows_; ///< what each object is asked
    FieldRows* more_; ///< what most leave as it is
    QLineEdit* name_;
    Bindings<job::Object> numbers_;
    LengthEdit* height_;
    QComboBox* turns_;
    QPlainTextEdit* note_;
    PartTabs* levels_;
    QPushButton* from_drawing_ = nullptr;
    ObjectPicture* picture_;
};

/// An object to start from: one of it, a rectangle of no size yet, no id.
job::Object blank_object();

} // namespace drawercast::app
