// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/objects_model.h"

#include "document/document.h"
#include "document/dragged.h"
#include "language/say.h"

#include <QMimeData>
#include <QSortFilterProxyModel>

#include <algorithm>

namespace drawercast::app {

namespace {

QString bare(double mm, job::DisplayUnits units) { return language::say_length_bare(mm, units); }

struct Extent {
    shape::Box box;
    bool round = false; ///< one circle
};

shape::Contour contour_of(const job::Lying& lying) {
    double length = 0;
    double width = 0;
    for (const auto& cylinder : lying.cylinders) {
        length += cylinder.length_mm;
        width = std::max(width, cylinder.diameter_mm);
    }
    return {{{-length / 2, -width / 2},
             {length / 2, -width / 2},
             {length / 2, width / 2},
             {-length / 2, width / 2}},
            0};
}

Extent extent_of(const job::Object& object) {
    Extent extent;
    for (const auto& level : object.levels) {
        shape::Contour contour;
        if (const auto* lying = std::get_if<job::Lying>(&level.form)) {
            contour = contour_of(*lying);
        } else {
            const auto* sunk = std::get_if<job::Sunk>(&level.form);
            const auto& given = sunk ? sunk->outline : std::get<job::Through>(level.form).outline;
            const auto made = shape::contour_of(given);
            if (!made) continue;
            contour = *made;
            extent.round = object.levels.size() == 1 && std::holds_alternative<shape::Circle>(given);
        }
        extent.box.add(shape::bounds(shape::placed(contour, level.pose)));
    }
    return extent;
}

double greatest_depth(const job::Object& object) {
    double depth = 0;
    for (const auto& level : object.levels)
        if (const auto* sunk = std::get_if<job::Sunk>(&level.form)) depth = std::max(depth, sunk->depth_mm);
    return depth;
}

} // namespace

QString size_text(const job::Object& object, job::DisplayUnits units) {
    const auto extent = extent_of(object);
    if (extent.box.empty()) return {};
    const QString height = bare(object.height_mm, units);
    if (extent.round) return QStringLiteral("⌀%1 × %2").arg(bare(extent.box.width(), units), height);
    return QStringLiteral("%1 × %2 × %3")
        .arg(bare(extent.box.width(), units), bare(extent.box.height(), units), height);
}

ObjectsModel::ObjectsModel(const Document& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document) {
    connect(&document, &Document::shown_changed, this, &ObjectsModel::refresh);
    refresh();
}

int ObjectsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int ObjectsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : column_count; }

QVariant ObjectsModel::data(const QModelIndex& index, int role) const {
    const auto* one = object(index);
    if (one == nullptr) return {};
    const int placed = rows_[static_cast<std::size_t>(index.row())].placed;
    switch (role) {
    case id_role:
        return QString::fromStdString(one->id);
    case size_role:
        return size_text(*one, units_);
    case count_role:
        return one->count;
    case placed_role:
        return placed;
    case depth_role:
        return greatest_depth(*one);
    case Qt::AccessibleTextRole:
        return tr("%1, %2, %3 of %4 placed")
            .arg(QString::fromStdString(one->name), size_text(*one, units_))
            .arg(placed)
            .arg(one->count);
    case Qt::ToolTipRole:
        return tr("%1: %2 of %3 placed", "tooltip")
                   .arg(QString::fromStdString(one->name))
                   .arg(placed)
                   .arg(one->count) +
               u'\n' + size_text(*one, units_) + // fractions of an inch may be too long for the row
               (one->note.empty() ? QString() : u'\n' + QString::fromStdString(one->note));
    case Qt::TextAlignmentRole:
        return index.column() == name_column ? QVariant(Qt::AlignLeft | Qt::AlignVCenter)
                                             : QVariant(Qt::AlignRight | Qt::AlignVCenter);
    case Qt::DisplayRole:
        break;
    default:
        return {};
    }
    switch (index.column()) {
    case name_column:
        return QString::fromStdString(one->name);
    case mass_column:
        return one->mass_g > 0 ? language::say_mass_g(one->mass_g, units_)
                               : QStringLiteral("–"); // nobody has weighed it
    case placed_column:
        return tr("%1 of %2").arg(placed).arg(one->count);
    default:
        return {};
    }
}

QVariant ObjectsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return section == name_column ? QVariant(Qt::AlignLeft | Qt::AlignVCenter)
                                      : QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case name_column:
        return units_ == job::DisplayUnits::mm ? tr("object, size in mm") : tr("object, size in inches");
    case mass_column:
        return tr("mass");
    case placed_column:
        return tr("placed");
    default:
        return {};
    }
}

Qt::ItemFlags ObjectsModel::flags(const QModelIndex& index) const {
    const auto flags = QAbstractTableModel::flags(index);
    return index.isValid() ? flags | Qt::ItemIsDragEnabled : flags;
}

QStringList ObjectsModel::mimeTypes() const { return {dragged_object}; }

QMimeData* ObjectsModel::mimeData(const QModelIndexList& indexes) const {
    auto* data = new QMimeData;
    if (!indexes.isEmpty())
        if (const auto* one = object(indexes.first()))
            data->setData(dragged_object, QByteArray::fromStdString(one->id));
    return data;
}

const job::Object* ObjectsModel::object(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= static_cast<int>(rows_.size())) return nullptr;
    return &*rows_[static_cast<std::size_t>(index.row())].object;
}

int ObjectsModel::row_of(const std::string& id) const {
    for (std::size_t row = 0; row < rows_.size(); ++row)
        if (rows_[row].object->id == id) return static_cast<int>(row);
    return -1;
}

int ObjectsModel::placed_in_all() const {
    int placed = 0;
    for (const auto& row : rows_) placed += row.placed;
    return placed;
}

int ObjectsModel::count_in_all() const {
    int count = 0;
    for (const auto& row : rows_) count += row.object->count;
    return count;
}

std::vector<ObjectsModel::Row> ObjectsModel::rows_of_job() const {
    std::map<std::string, int> placed;
    for (const auto& drawer : document_.shown().drawers)
        for (const auto& pocket : drawer->pockets) ++placed[pocket.object];
    std::vector<Row> rows;
    for (const auto& object : document_.shown().objects) rows.push_back({object, placed[object->id]});
    return rows;
}

void ObjectsModel::refresh() {
    auto now = rows_of_job();
    const bool other_units = units_ != document_.shown().display_units;
    units_ = document_.shown().display_units;
    if (other_units) emit headerDataChanged(Qt::Horizontal, name_column, name_column);
    const std::size_t kept = std::min(now.size(), rows_.size());
    if (now.size() < rows_.size()) {
        beginRemoveRows({}, static_cast<int>(now.size()), static_cast<int>(rows_.size()) - 1);
        rows_.erase(rows_.begin() + static_cast<std::ptrdiff_t>(now.size()), rows_.end());
        endRemoveRows();
    }
    for (std::size_t row = 0; row < kept; ++row) {
        if (!other_units && rows_[row] == now[row]) continue;
        rows_[row] = now[row];
        emit dataChanged(index(static_cast<int>(row), 0), index(static_cast<int>(row), column_count - 1));
    }
    if (now.size() > kept) {
        beginInsertRows({}, static_cast<int>(kept), static_cast<int>(now.size()) - 1);
        rows_.insert(rows_.end(), now.begin() + static_cast<std::ptrdiff_t>(kept), now.end());
        endInsertRows();
    }
}

const job::Object* object_of(const QModelIndex& index) {
    const QAbstractItemModel* model = index.model();
    QModelIndex source = index;
    if (const auto* proxy = qobject_cast<const QSortFilterProxyModel*>(model)) {
        source = proxy->mapToSource(index);
        model = proxy->sourceModel();
    }
    const auto* objects = qobject_cast<const ObjectsModel*>(model);
    return objects != nullptr ? objects->object(source) : nullptr;
}

} // namespace drawercast::app
