// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/run_sheet.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace drawercast::app {

class Document;

/// Below the run sheet's bars: what is to do, a row each with what is needed for it, gates below what waits
/// for them. Each tick is one step of undo and is kept in the job's log.
class RunList final : public QWidget {
    Q_OBJECT
  public:
    explicit RunList(Document& document, QWidget* parent = nullptr);

    void refresh(); ///< of the last long answer; nothing where it is not in sight

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void fill();
    void show_ticks();
    void take(const QTreeWidgetItem& item);
    void clear_ticks();

    Document& document_;
    plan::RunSheet run_; ///< in the rows
    QTreeWidget* rows_;
    QLabel* told_;
    QPushButton* clear_;
};

} // namespace drawercast::app
