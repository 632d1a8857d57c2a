// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/drawers_model.h"

#include "plan/say.h"

#include "document/document.h"

#include <algorithm>

namespace drawercast::app {

namespace {

QString bare(double mm, job::DisplayUnits units) {
    return QString::fromStdString(plan::say_length_bare(mm, units));
}

} // namespace

DrawersModel::DrawersModel(const Document& document, QObject* parent)
    : QAbstractListModel(parent), document_(document) {
    connect(&document, &Document::shown_changed, this, &DrawersModel::refresh);
    refresh();
}

int DrawersModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant DrawersModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= static_cast<int>(rows_.size())) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return row.name;
    case size_role:
        return row.size;
    case id_role:
        return QString::fromStdString(row.id);
    case mends_role:
        return row.mends;
    case Qt::AccessibleTextRole:
        return row.mends > 0 ? tr("%1, %2, %n to mend", nullptr, row.mends).arg(row.name, row.size)
                             : tr("%1, %2").arg(row.name, row.size);
    default:
        return {};
    }
}

int DrawersModel::row_of(const std::string& id) const {
    const auto found = std::find_if(rows_.begin(), rows_.end(), [&](const Row& row) { return row.id == id; });
    return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

std::vector<DrawersModel::Row> DrawersModel::rows_of_job() const {
    const auto& job = document_.shown();
    std::vector<Row> rows;
    for (const auto& drawer : job.drawers) {
        Row row{drawer->id, QString::fromStdString(drawer->name.empty() ? drawer->id : drawer->name), {}, 0};
        if (const auto contour = shape::contour_of(drawer->outline)) {
            const auto box = shape::bounds(*contour);
            row.size = tr("%1 × %2, insert %3")
                           .arg(bare(box.width(), job.display_units), bare(box.height(), job.display_units),
                                bare(drawer->insert_mm, job.display_units));
        }
        for (const auto& plan : document_.plan().drawers)
            if (plan.id == drawer->id)
                for (const auto& check : plan.checks)
                    row.mends += check.severity == layout::Severity::mend && !check.left_as_is;
        rows.push_back(std::move(row));
    }
    return rows;
}

void DrawersModel::refresh() {
    auto now = rows_of_job();
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

} // namespace drawercast::app
