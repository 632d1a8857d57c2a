// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/check.h"

#include "panes/row_list.h"

#include <optional>
#include <string>
#include <vector>

namespace drawercast::app {

class Document;
class Selection;

/// One line of the list of checks.
struct CheckRow {
    std::optional<layout::Check> check; ///< absent: the row that names the section of those left as is
    int number = 0;                     ///< as on the sheet; of the naming row: how many are left as is
    bool of_job = false;
    QString zone; ///< "D6"; empty: nowhere
    bool operator==(const CheckRow&) const = default;
};

/// The checks of the shown drawer and of the job as a whole, numbered as on the sheet; those left as is in a
/// section of their own at the end, under a row that names it. Rows are changed in place: a drag that alters
/// one figure repaints one row.
class ChecksModel : public RowList<CheckRow> {
    Q_OBJECT
  public:
    enum Role {
        number_role = Qt::UserRole + 1,
        severity_role,
        title_role,
        subjects_role,
        zone_role,
        advice_role,
        left_role,
        section_role ///< true: names the section below it, and is no check
    };

    ChecksModel(const Document& document, const Selection& selection, QObject* parent = nullptr);

    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    const layout::Check* check(const QModelIndex& index) const; ///< null where there is none
    /// Row of the check of that code and those subjects, −1 where it is gone.
    int row_of(const layout::Check& check) const;
    /// How many of each severity are not left as is.
    int count(layout::Severity severity) const;
    bool is_job_check(const QModelIndex& index) const; ///< of the job as a whole, not of the drawer

    void refresh();

  private:
    std::vector<CheckRow> rows_now() const;
    QVariant section_data(int left, int role) const;

    const Document& document_;
    const Selection& selection_;
};

} // namespace drawercast::app
