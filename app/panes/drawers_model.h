// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/row_list.h"

#include <string>
#include <vector>

namespace drawercast::app {

class Document;

/// One drawer of the list.
struct DrawerRow {
    std::string id;
    QString name;
    QString size;
    int mends = 0;
    bool operator==(const DrawerRow&) const = default;
};

/// The job's drawers: name, inside size with the insert's thickness, how many checks of it must be mended.
class DrawersModel final : public RowList<DrawerRow> {
    Q_OBJECT
  public:
    enum Role { size_role = Qt::UserRole + 1, id_role, mends_role };

    explicit DrawersModel(const Document& document, QObject* parent = nullptr);

    QVariant data(const QModelIndex& index, int role) const override;
    int row_of(const std::string& id) const; ///< −1: not there

    void refresh();

  private:
    std::vector<DrawerRow> rows_of_job() const;

    const Document& document_;
};

} // namespace drawercast::app
