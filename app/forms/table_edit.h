// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/number_table.h"

#include <QWidget>

class QTableView;
class QToolButton;

namespace drawercast::app {

class RowNote;

/// A NumberTable in view, with buttons to add a row under the current one and to take it away (Insert and
/// Delete do the same).
class TableEdit final : public QWidget {
    Q_OBJECT
  public:
    struct Words {
        QString name; ///< of the table, for those who hear it
        QString add;
        QString take;
    };
    TableEdit(std::vector<NumberColumn> columns, const Words& words, int least_rows, int most_rows,
              QWidget* parent = nullptr);

    NumberTable& table() { return *table_; }
    const std::vector<NumberRow>& rows() const { return table_->rows(); }
    void set_rows(std::vector<NumberRow> rows) { table_->set_rows(std::move(rows)); }
    QTableView& view() { return *view_; }

  signals:
    void edited();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void add();
    void take();
    void refresh();

    NumberTable* table_;
    QTableView* view_;
    QToolButton* add_;
    QToolButton* take_;
    RowNote* note_;
    int least_rows_;
    int most_rows_;
};

} // namespace drawercast::app
