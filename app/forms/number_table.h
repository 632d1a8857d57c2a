// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/ranges.h"

#include "forms/notation.h"

#include <QAbstractTableModel>
#include <QString>

#include <vector>

namespace drawercast::app {

/// A column of a NumberTable: numbers shown and typed in a notation, or words.
struct NumberColumn {
    QString title; ///< with its unit
    Notation notation;
    job::Range range;
    double start = 0; ///< of a new row
    bool words = false;
    QString hint = {};  ///< tool tip of the head
    bool fixed = false; ///< is not typed into
};

struct NumberRow {
    QString words;               ///< of the column of words, if there is one
    std::vector<double> numbers; ///< one for each column; nothing is read at that of words
    int origin = -1;             ///< which of the owner's items it came from; -1: a new one
    bool operator==(const NumberRow&) const = default;
};

/// Rows of numbers that can be typed: corners of an outline, kits, cylinders. Text that cannot be read leaves
/// the number as it was and is told by refused().
class NumberTable final : public QAbstractTableModel {
    Q_OBJECT
  public:
    NumberTable(std::vector<NumberColumn> columns, QObject* parent = nullptr);

    void set_rows(std::vector<NumberRow> rows);
    const std::vector<NumberRow>& rows() const { return rows_; }
    void insert_row(int before, NumberRow row);
    void remove_row(int row);
    void put(int row, int column, double number); ///< by the form, not the maker: edited() is not told
    NumberRow new_row() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

  signals:
    void edited();
    void refused(const QString& why); ///< empty: the last text was read

  private:
    QString read(double& number, const QString& text, const NumberColumn& column) const;

    std::vector<NumberColumn> columns_;
    std::vector<NumberRow> rows_;
};

} // namespace drawercast::app
