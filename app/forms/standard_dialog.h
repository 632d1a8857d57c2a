// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/form_context.h"

#include <QDialog>

#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace drawercast::app {

class ObjectPicture;

/// Objects whose sizes are published, to be found by name or source and taken into the job; the chosen one is
/// shown from above and from the side with the source of its sizes.
class StandardDialog final : public QDialog {
    Q_OBJECT
  public:
    explicit StandardDialog(const FormContext& context, QWidget* parent = nullptr);

    std::vector<job::Object> objects() const; ///< the chosen ones, without ids

  private:
    void find(const QString& words);
    void show_choice();

    const std::vector<job::Object> all_;
    QLineEdit* find_;
    QListWidget* list_;
    ObjectPicture* picture_;
    QLabel* source_;
    QPushButton* take_;
};

} // namespace drawercast::app
