// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/check.h"

#include <QAbstractListModel>

#include <string>
#include <vector>

namespace drawercast::app {

class Document;
class Selection;

/// The checks of the shown drawer and of the job as a whole, numbered as on the sheet. Rows are changed in
/// place: a drag that alters one figure repaints one row.
class ChecksModel : public QAbstractListModel {
    Q_OBJECT
  public:
    enum Role {
        number_role = Qt::UserRole + 1,
        severity_role,
        title_role,
        subjects_role,
        advice_role,
        left_role
    };

    ChecksModel(const Document& document, const Selection& selection, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

    const layout::Check* check(const QModelIndex& index) const; ///< null where there is none
    /// Row of the check of that code and those subjects, −1 where it is gone.
    int row_of(const layout::Check& check) const;
    /// How many of each severity are not left as is.
    int count(layout::Severity severity) const;
    bool is_job_check(const QModelIndex& index) const; ///< of the job as a whole, not of the drawer

    void refresh();

  private:
    const Document& document_;
    const Selection& selection_;
    std::vector<layout::Check> checks_;
    std::size_t of_drawer_ = 0; ///< the first so many belong to the drawer
};

} // namespace drawercast::app
