// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/catalog.h"
#include "job/job.h"

#include <QDialog>

#include <vector>

class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace drawercast::app {

/// Asks for the size of the drawer a new job starts with. Lengths are typed as people write them.
class NewJobDialog final : public QDialog {
    Q_OBJECT
  public:
    explicit NewJobDialog(job::DisplayUnits units, QWidget* parent = nullptr);

    job::DrawerSize size() const { return size_; } ///< as typed while the dialog can be accepted

  private:
    struct Field {
        QLineEdit* edit;
        double job::DrawerSize::*member;
    };
    void add(QFormLayout& form, const QString& label, double job::DrawerSize::*member);
    void check();

    job::DisplayUnits units_;
    job::DrawerSize size_;
    std::vector<Field> fields_;
    QLabel* problem_;
    QPushButton* make_;
};

} // namespace drawercast::app
