// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/paste_model.h"

#include "forms/problem_words.h"
#include "theme/icons.h"

#include <QIcon>

#include <algorithm>

namespace drawercast::app {

namespace {

/// The core's column words, translated.
QString column_word(const std::string& where) {
    if (where == "length") return PasteModel::tr("Length");
    if (where == "width") return PasteModel::tr("Width");
    if (where == "height") return PasteModel::tr("Height");
    if (where == "size") return PasteModel::tr("Size");
    if (where == "mass") return PasteModel::tr("Mass");
    if (where == "count") return PasteModel::tr("Count");
    return {};
}

QString reason(const Problem& problem) {
    if (problem.code == "paste-missing")
        return PasteModel::tr("%1 is missing").arg(column_word(problem.where.name));
    const QString words = problem_words(problem);
    const QString column = column_word(problem.where.name);
    return column.isEmpty() ? words : PasteModel::tr("%1: %2").arg(column, words);
}

} // namespace

void PasteModel::set_list(const job::PasteTable& table, const job::PasteMeaning& meaning,
                          const job::PasteUnits& units) {
    beginResetModel();
    table_ = table;
    meaning_ = meaning;
    unit_ = units.length;
    rows_ = job::read_pasted(table, meaning, units);
    endResetModel();
}

int PasteModel::read_count() const {
    return int(
        std::count_if(rows_.begin(), rows_.end(), [](const auto& row) { return row.read.has_value(); }));
}

int PasteModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : int(rows_.size()); }

int PasteModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : first_cell + int(table_.columns);
}

QString PasteModel::outcome(const job::PastedRow& row) const {
    if (!row.read) return reason(row.read.error());
    const auto& object = *row.read;
    const auto& sunk = std::get<job::Sunk>(object.levels.front().form);
    const auto& outline = std::get<shape::Rectangle>(sunk.outline);
    const auto length = [this](double mm) { return QString::fromStdString(length_digits(mm, unit_)); };
    return tr("%1 × %2 × %3, %4 deep")
        .arg(length(outline.width_mm), length(outline.height_mm), length(object.height_mm),
             length(sunk.depth_mm));
}

QString PasteModel::cell(int row, int column) const {
    const auto at = std::size_t(row) + (meaning_.header ? 1 : 0);
    if (at >= table_.rows.size()) // rows beyond what is read at once
        return column == 0 ? QString::fromStdString(rows_[std::size_t(row)].text) : QString();
    const auto& cells = table_.rows[at].cells;
    return std::size_t(column) < cells.size() ? QString::fromStdString(cells[std::size_t(column)])
                                              : QString();
}

QVariant PasteModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto& row = rows_[std::size_t(index.row())];
    const bool read = row.read.has_value();
    if (role == read_role) return read;
    if (role == Qt::ToolTipRole) return outcome(row);
    if (index.column() == outcome_column) {
        if (role == Qt::DisplayRole) return outcome(row);
        if (role == Qt::DecorationRole)
            return theme::icon(read ? QStringLiteral("object") : QStringLiteral("to-check"));
        if (role == Qt::AccessibleTextRole)
            return (read ? tr("Line %1 is read: %2") : tr("Line %1 is not read: %2"))
                .arg(row.line)
                .arg(outcome(row));
        return {};
    }
    if (role == Qt::DisplayRole) return cell(index.row(), index.column() - first_cell);
    return {};
}

QVariant PasteModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) return {};
    if (orientation == Qt::Vertical)
        return section < int(rows_.size()) ? QVariant(rows_[std::size_t(section)].line) : QVariant();
    if (section == outcome_column) return tr("read as");
    const auto column = std::size_t(section - first_cell);
    if (meaning_.header && !table_.rows.empty() && column < table_.rows.front().cells.size())
        return QString::fromStdString(table_.rows.front().cells[column]);
    return tr("column %1").arg(column + 1);
}

} // namespace drawercast::app
