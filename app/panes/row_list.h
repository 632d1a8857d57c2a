// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>

#include <algorithm>
#include <cstddef>
#include <vector>

namespace drawercast::app {

/// A list of rows that are worked out anew at each change of the job, and changed in place: a drag that
/// alters one figure repaints one row, and what is chosen stays chosen.
template <class Row>
class RowList : public QAbstractListModel {
  public:
    using QAbstractListModel::QAbstractListModel;

    int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(rows_.size());
    }

  protected:
    const std::vector<Row>& rows() const { return rows_; }
    const Row* row_at(const QModelIndex& index) const {
        const bool there = index.isValid() && index.row() < rowCount();
        return there ? &rows_[static_cast<std::size_t>(index.row())] : nullptr;
    }

    void show_rows(std::vector<Row> now) {
        const std::size_t kept = std::min(now.size(), rows_.size());
        if (now.size() < rows_.size()) {
            beginRemoveRows({}, static_cast<int>(now.size()), static_cast<int>(rows_.size()) - 1);
            rows_.resize(now.size());
            endRemoveRows();
        }
        for (std::size_t row = 0; row < kept; ++row) {
            if (rows_[row] == now[row]) continue;
            rows_[row] = now[row];
            const auto changed = index(static_cast<int>(row));
            emit dataChanged(changed, changed);
        }
        if (now.size() > kept) {
            beginInsertRows({}, static_cast<int>(kept), static_cast<int>(now.size()) - 1);
            rows_.insert(rows_.end(), now.begin() + static_cast<std::ptrdiff_t>(kept), now.end());
            endInsertRows();
        }
    }

  private:
    std::vector<Row> rows_;
};

} // namespace drawercast::app
