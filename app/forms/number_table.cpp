// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/number_table.h"

#include "forms/problem_words.h"

#include <algorithm>
#include <cmath>

namespace drawercast::app {

NumberTable::NumberTable(std::vector<NumberColumn> columns, QObject* parent)
    : QAbstractTableModel(parent), columns_(std::move(columns)) {}

void NumberTable::set_rows(std::vector<NumberRow> rows) {
    if (rows == rows_) return;
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

NumberRow NumberTable::new_row() const {
    NumberRow row;
    for (const auto& column : columns_) row.numbers.push_back(column.start);
    return row;
}

void NumberTable::insert_row(int before, NumberRow row) {
    const int at = std::clamp(before, 0, int(rows_.size()));
    beginInsertRows({}, at, at);
    rows_.insert(rows_.begin() + at, std::move(row));
    endInsertRows();
    emit edited();
}

void NumberTable::remove_row(int row) {
    if (row < 0 || row >= int(rows_.size())) return;
    beginRemoveRows({}, row, row);
    rows_.erase(rows_.begin() + row);
    endRemoveRows();
    emit edited();
}

void NumberTable::put(int row, int column, double number) {
    rows_[std::size_t(row)].numbers[std::size_t(column)] = number;
    emit dataChanged(index(row, column), index(row, column));
}

int NumberTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : int(rows_.size());
}
int NumberTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : int(columns_.size());
}

QVariant NumberTable::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto& row = rows_[std::size_t(index.row())];
    const auto& column = columns_[std::size_t(index.column())];
    if (role == Qt::DisplayRole || role == Qt::EditRole)
        return column.words ? row.words : column.notation.shown(row.numbers[std::size_t(index.column())]);
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue((column.words ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    return {};
}

QString NumberTable::read(double& number, const QString& text, const NumberColumn& column) const {
    const auto value = column.notation.typed(text);
    if (!value) return problem_words(value.error());
    const auto& range = column.range;
    const bool above = range.open_least ? *value > range.least : *value >= range.least;
    if (!above || *value > range.most)
        return tr("%1 is out of range: %2 to %3")
            .arg(text.trimmed(), column.notation.shown(range.least), column.notation.shown(range.most));
    if (range.whole && *value != std::floor(*value)) return tr("Use a whole number");
    number = *value;
    return {};
}

bool NumberTable::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !checkIndex(index, CheckIndexOption::IndexIsValid)) return false;
    const QString text = value.toString();
    if (text == data(index, Qt::EditRole).toString()) return true; // the number stays, to the last bit
    auto& row = rows_[std::size_t(index.row())];
    const auto& column = columns_[std::size_t(index.column())];
    QString why;
    if (column.words)
        row.words = text.trimmed();
    else
        why = read(row.numbers[std::size_t(index.column())], text, column);
    emit refused(why);
    if (!why.isEmpty()) return false;
    emit dataChanged(index, index);
    emit edited();
    return true;
}

QVariant NumberTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) return role == Qt::DisplayRole ? QVariant(section + 1) : QVariant();
    if (section < 0 || section >= int(columns_.size())) return {};
    const auto& column = columns_[std::size_t(section)];
    if (role == Qt::DisplayRole) return column.title;
    if (role == Qt::ToolTipRole && !column.hint.isEmpty()) return column.hint;
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue((column.words ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    return {};
}

Qt::ItemFlags NumberTable::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    const Qt::ItemFlags shown = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    return columns_[std::size_t(index.column())].fixed ? shown : shown | Qt::ItemIsEditable;
}

} // namespace drawercast::app
