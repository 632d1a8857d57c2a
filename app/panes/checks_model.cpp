// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/checks_model.h"

#include "plan/sentences.h"

#include "document/document.h"
#include "document/selection.h"

#include <algorithm>

namespace drawercast::app {

namespace {

bool same_place(const layout::Check& a, const layout::Check& b) {
    return a.code == b.code && a.subjects == b.subjects;
}

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

} // namespace

ChecksModel::ChecksModel(const Document& document, const Selection& selection, QObject* parent)
    : QAbstractListModel(parent), document_(document), selection_(selection) {
    connect(&document, &Document::shown_changed, this, &ChecksModel::refresh);
    connect(&selection, &Selection::changed, this, &ChecksModel::refresh);
    refresh();
}

int ChecksModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(checks_.size());
}

QVariant ChecksModel::data(const QModelIndex& index, int role) const {
    const auto* one = check(index);
    if (one == nullptr) return {};
    const auto& job = document_.shown();
    switch (role) {
    case number_role:
        return index.row() + 1;
    case severity_role:
        return static_cast<int>(one->severity);
    case left_role:
        return one->left_as_is;
    case title_role:
    case Qt::DisplayRole:
        return text(plan::title(*one, job));
    case subjects_role:
        return text(plan::subjects_text(*one, job));
    case advice_role:
    case Qt::ToolTipRole:
        return text(plan::advice(*one, job));
    case Qt::AccessibleTextRole:
        return tr("%1 %2: %3")
            .arg(index.row() + 1)
            .arg(text(std::string(layout::text_of(one->severity))), text(plan::sentence(*one, job)));
    default:
        return {};
    }
}

const layout::Check* ChecksModel::check(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= static_cast<int>(checks_.size())) return nullptr;
    return &checks_[static_cast<std::size_t>(index.row())];
}

int ChecksModel::row_of(const layout::Check& check) const {
    const auto found = std::find_if(checks_.begin(), checks_.end(),
                                    [&](const layout::Check& other) { return same_place(check, other); });
    return found == checks_.end() ? -1 : static_cast<int>(found - checks_.begin());
}

int ChecksModel::count(layout::Severity severity) const {
    return static_cast<int>(std::count_if(checks_.begin(), checks_.end(), [&](const layout::Check& check) {
        return check.severity == severity && !check.left_as_is;
    }));
}

bool ChecksModel::is_job_check(const QModelIndex& index) const {
    return index.isValid() && static_cast<std::size_t>(index.row()) >= of_drawer_;
}

void ChecksModel::refresh() {
    std::vector<layout::Check> now;
    for (const auto& drawer : document_.plan().drawers)
        if (drawer.id == selection_.drawer()) now = drawer.checks;
    of_drawer_ = now.size();
    now.insert(now.end(), document_.plan().checks.begin(), document_.plan().checks.end());

    const std::size_t kept = std::min(now.size(), checks_.size());
    if (now.size() < checks_.size()) {
        beginRemoveRows({}, static_cast<int>(now.size()), static_cast<int>(checks_.size()) - 1);
        checks_.resize(now.size());
        endRemoveRows();
    }
    for (std::size_t row = 0; row < kept; ++row) {
        if (checks_[row] == now[row]) continue;
        checks_[row] = now[row];
        const auto changed = index(static_cast<int>(row));
        emit dataChanged(changed, changed);
    }
    if (now.size() > kept) {
        beginInsertRows({}, static_cast<int>(kept), static_cast<int>(now.size()) - 1);
        checks_.insert(checks_.end(), now.begin() + static_cast<std::ptrdiff_t>(kept), now.end());
        endInsertRows();
    }
}

} // namespace drawercast::app
