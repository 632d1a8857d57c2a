// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/paste.h"

#include <QAbstractTableModel>

namespace drawercast::app {

/// A pasted list row by row: whether it is read and as what, or why not, then its cells as they came.
class PasteModel final : public QAbstractTableModel {
    Q_OBJECT
  public:
    using QAbstractTableModel::QAbstractTableModel;

    static constexpr int outcome_column = 0;
    static constexpr int first_cell = 1;
    static constexpr int read_role = Qt::UserRole; ///< bool

    void set_list(const job::PasteTable& table, const job::PasteMeaning& meaning,
                  const job::PasteUnits& units);

    const std::vector<job::PastedRow>& rows() const { return rows_; }
    int read_count() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    QString outcome(const job::PastedRow& row) const;
    QString cell(int row, int column) const;

    job::PasteTable table_;
    job::PasteMeaning meaning_;
    LengthUnit unit_ = LengthUnit::mm;
    std::vector<job::PastedRow> rows_;
};

} // namespace drawercast::app
