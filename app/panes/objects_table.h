// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

namespace drawercast::app {

/// The list of objects as it is seen. A row that is dragged out carries the object's sketch, not the row.
class ObjectsTable final : public QTableView {
    Q_OBJECT
  public:
    explicit ObjectsTable(QWidget* parent);

    void setModel(QAbstractItemModel* model) override;

  protected:
    void startDrag(Qt::DropActions actions) override;
};

} // namespace drawercast::app
