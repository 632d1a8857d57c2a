// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QAbstractTableModel>

#include <map>
#include <string>
#include <vector>

namespace drawercast::app {

class Document;

/// The job's objects: sketch and name with size, mass, how many of how many are placed.
class ObjectsModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { name_column, mass_column, placed_column, column_count };
    enum Role { size_role = Qt::UserRole + 1, id_role, count_role, placed_role, depth_role };

    explicit ObjectsModel(const Document& document, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QStringList mimeTypes() const override;
    QMimeData* mimeData(const QModelIndexList& indexes) const override;
    Qt::DropActions supportedDragActions() const override { return Qt::CopyAction; }

    const job::Object* object(const QModelIndex& index) const;
    int row_of(const std::string& id) const;
    int placed_in_all() const;
    int count_in_all() const;

    void refresh();

  private:
    struct Row {
        job::Shared<job::Object> object;
        int placed = 0;
        bool operator==(const Row&) const = default;
    };
    std::vector<Row> rows_of_job() const;

    const Document& document_;
    std::vector<Row> rows_;
    job::DisplayUnits units_ = job::DisplayUnits::mm;
};

/// The object behind a row of the model, or of a search in it; null where there is none.
const job::Object* object_of(const QModelIndex& index);

/// "140 × 90 × 70", "⌀92 × 60": an object's size as the list shows it, units left out.
QString size_text(const job::Object& object, job::DisplayUnits units);

} // namespace drawercast::app
