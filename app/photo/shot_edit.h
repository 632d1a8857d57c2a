// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measure.h"

#include "forms/form_context.h"

#include <QWidget>

class QComboBox;

namespace drawercast::app {
class FieldRows;
class LengthEdit;
class ValueEdit;
} // namespace drawercast::app

namespace drawercast::app::photo {

/// What the maker says of the photo: what the objects lie on, and from how far it was taken.
class ShotEdit final : public QWidget {
    Q_OBJECT
  public:
    explicit ShotEdit(const FormContext& context, QWidget* parent = nullptr);

    capture::Shot shot() const;
    FieldRows& rows() { return *rows_; }
    /// Says where the camera was found to be; null: not known yet.
    void show_camera(const capture::FlatPicture* flat);

  signals:
    void changed(); ///< something else is said of the photo

  private:
    enum Ground { measuring_a4, measuring_letter, blank_a4, blank_letter, blank_other, scan };
    void show_rows();
    QString camera_words(const capture::FlatPicture& flat) const;

    FormContext context_;
    FieldRows* rows_;
    QComboBox* ground_;
    LengthEdit *width_, *height_, *camera_;
    ValueEdit* resolution_;
    capture::Shot told_;
};

} // namespace drawercast::app::photo
