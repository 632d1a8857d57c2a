// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/drawers_model.h"

#include "job/shown_name.h"

#include "document/document.h"
#include "language/say.h"

#include <algorithm>

namespace drawercast::app {

namespace {

QString bare(double mm, job::DisplayUnits units) { return language::say_length_bare(mm, units); }

} // namespace

DrawersModel::DrawersModel(const Document& document, QObject* parent) : RowList(parent), document_(document) {
    connect(&document, &Document::shown_changed, this, &DrawersModel::refresh);
    refresh();
}

QVariant DrawersModel::data(const QModelIndex& index, int role) const {
    const auto* const found = row_at(index);
    if (found == nullptr) return {};
    const auto& row = *found;
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
    const auto found =
        std::find_if(rows().begin(), rows().end(), [&](const DrawerRow& row) { return row.id == id; });
    return found == rows().end() ? -1 : static_cast<int>(found - rows().begin());
}

std::vector<DrawerRow> DrawersModel::rows_of_job() const {
    const auto& job = document_.shown();
    std::vector<DrawerRow> rows;
    for (const auto& drawer : job.drawers) {
        DrawerRow row{drawer->id, QString::fromStdString(job::shown_name(*drawer)), {}, 0};
        if (const auto contour = shape::contour_of(drawer->outline)) {
            const auto box = shape::bounds(*contour);
            row.size = tr("%1 × %2, insert %3")
                           .arg(bare(box.width(), job.display_units), bare(box.height(), job.display_units),
                                bare(drawer->insert_mm, job.display_units));
        }
        if (const auto* plan = plan::find_drawer(document_.plan(), drawer->id))
            row.mends = plan::count_to_mend(plan->checks);
        rows.push_back(std::move(row));
    }
    return rows;
}

void DrawersModel::refresh() { show_rows(rows_of_job()); }

} // namespace drawercast::app
