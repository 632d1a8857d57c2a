// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/checks_model.h"

#include "plan/sentences.h"

#include "document/document.h"
#include "document/selection.h"
#include "language/in_words.h"
#include "sheets/check_words.h"
#include "sheets/text.h"

#include <algorithm>

namespace drawercast::app {

namespace {

bool same_place(const layout::Check& a, const layout::Check& b) {
    return a.code == b.code && a.subjects == b.subjects;
}

using sheets::text;

} // namespace

ChecksModel::ChecksModel(const Document& document, const Selection& selection, QObject* parent)
    : RowList(parent), document_(document), selection_(selection) {
    connect(&document, &Document::shown_changed, this, &ChecksModel::refresh);
    connect(&selection, &Selection::changed, this, &ChecksModel::refresh);
    refresh();
}

QVariant ChecksModel::section_data(int left, int role) const {
    switch (role) {
    case section_role:
        return true;
    case title_role:
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return tr("Left as is: %1").arg(left);
    default:
        return {};
    }
}

QVariant ChecksModel::data(const QModelIndex& index, int role) const {
    const auto* const found = row_at(index);
    if (found == nullptr) return {};
    const auto& row = *found;
    if (!row.check) return section_data(row.number, role);
    const auto& one = *row.check;
    const auto& job = document_.shown();
    switch (role) {
    case number_role:
        return row.number;
    case severity_role:
        return static_cast<int>(one.severity);
    case left_role:
        return one.left_as_is;
    case section_role:
        return false;
    case title_role:
    case Qt::DisplayRole:
        return in_words(plan::title(one, job));
    case subjects_role:
        return text(plan::subjects_text(one, job));
    case zone_role:
        return row.zone;
    case advice_role:
    case Qt::ToolTipRole:
        return in_words(plan::advice(one, job));
    case Qt::AccessibleTextRole: {
        const QString severity = one.left_as_is ? tr("left as is") : sheets::severity_words(one.severity);
        const QString said =
            tr("%1 %2: %3").arg(row.number).arg(severity, in_words(plan::sentence(one, job)));
        return row.zone.isEmpty() ? said : said + tr(", zone %1").arg(row.zone);
    }
    default:
        return {};
    }
}

Qt::ItemFlags ChecksModel::flags(const QModelIndex& index) const {
    const auto flags = RowList::flags(index);
    return index.isValid() && check(index) == nullptr ? flags & Qt::ItemNeverHasChildren : flags;
}

const layout::Check* ChecksModel::check(const QModelIndex& index) const {
    const auto* const row = row_at(index);
    return row != nullptr && row->check ? &*row->check : nullptr;
}

int ChecksModel::row_of(const layout::Check& check) const {
    const auto found = std::find_if(rows().begin(), rows().end(), [&](const CheckRow& row) {
        return row.check && same_place(check, *row.check);
    });
    return found == rows().end() ? -1 : static_cast<int>(found - rows().begin());
}

int ChecksModel::count(layout::Severity severity) const {
    return static_cast<int>(std::count_if(rows().begin(), rows().end(), [&](const CheckRow& row) {
        return row.check && row.check->severity == severity && !row.check->left_as_is;
    }));
}

bool ChecksModel::is_job_check(const QModelIndex& index) const {
    return check(index) != nullptr && row_at(index)->of_job;
}

std::vector<CheckRow> ChecksModel::rows_now() const {
    std::vector<CheckRow> open, left;
    int number = 0;
    const auto add = [&](const layout::Check& check, bool of_job, const QString& zone) {
        (check.left_as_is ? left : open).push_back({check, ++number, of_job, zone});
    };
    if (const auto* drawer = plan::find_drawer(document_.plan(), selection_.drawer()))
        for (const auto& check : drawer->checks)
            add(check, false, text(sheets::zone_of(check, *drawer, document_.job().display_units)));
    for (const auto& check : document_.plan().checks) add(check, true, {});
    if (!left.empty()) open.push_back({std::nullopt, static_cast<int>(left.size()), false, {}});
    open.insert(open.end(), left.begin(), left.end());
    return open;
}

void ChecksModel::refresh() { show_rows(rows_now()); }

} // namespace drawercast::app
