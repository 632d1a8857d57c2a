// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/form_context.h"
#include "photo/photo_outline.h"
#include "photo/photo_worker.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace drawercast::app {
class FieldRows;
class LengthEdit;
} // namespace drawercast::app

namespace drawercast::app::photo {

/// What is said of the chosen outline's object, and what was measured of it.
class FoundEdit final : public QWidget {
    Q_OBJECT
  public:
    explicit FoundEdit(const FormContext& context, QWidget* parent = nullptr);

    /// `outline` null: none is chosen. `measured` is what it comes to, or why not; `further`: some have no
    /// height yet.
    void show_outline(const Outline* outline, const Flat& flat, const Expected<Measured>* measured,
                      bool further);
    FieldRows& rows() { return *rows_; }
    QLineEdit& height() const;
    void go_to_height();

  signals:
    void edited(const drawercast::app::photo::Outline& outline, const QString& what);
    void height_for_all(double mm); ///< for those that have none yet

  private:
    void tell(const QString& what);
    void offer_shapes();
    QString measured_words(const Measured& measured) const;
    QString band_words(const Measured& measured) const;
    QString length(double mm) const;

    FormContext context_;
    Outline outline_;
    Flat flat_;
    bool shown_ = false;
    bool filling_ = false;
    FieldRows* rows_;
    QLineEdit* name_;
    LengthEdit *height_, *edge_, *depth_;
    QPushButton *for_all_, *shape_;
    QComboBox* walls_;
    QCheckBox* band_;
    QLabel* words_;
};

/// "Rectangle", "as found": a shape in words.
QString shape_words(Shape shape);

} // namespace drawercast::app::photo
