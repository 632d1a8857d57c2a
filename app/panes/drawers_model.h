// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QAbstractListModel>

#include <string>
#include <vector>

namespace drawercast::app {

class Document;

/// The job's drawers: name, inside size with the insert's thickness, how many checks of it must be mended.
class DrawersModel final : public QAbstractListModel {
    Q_OBJECT
  public:
    enum Role { size_role = Qt::UserRole + 1, id_role, mends_role };

    explicit DrawersModel(const Document& document, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    int row_of(const std::string& id) const; ///< −1: not there

    void refresh();

  private:
    struct Row {
        std::string id;
        QString name;
        QString size;
        int mends = 0;
        bool operator==(const Row&) const = default;
    };
    std::vector<Row> rows_of_job() const;

    const Document& document_;
    std::vector<Row> rows_;
};

} // namespace drawercast::app
