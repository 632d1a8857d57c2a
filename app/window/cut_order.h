// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/stock_stage.h"

#include "sheets/box_and_cuts.h"

#include <QWidget>

#include <memory>

class QTreeWidget;
class QTreeWidgetItem;

namespace drawercast::app {

class Document;

/// Below the sheet of the box and its cuts: every cut of every sheet in order, its fence, what it frees. A
/// row that is chosen is to be seen on the sheet.
class CutOrder final : public QWidget {
    Q_OBJECT
  public:
    explicit CutOrder(Document& document, QWidget* parent = nullptr);

    void refresh(); ///< of the last long answer; nothing where it is not in sight

  signals:
    void chosen(const drawercast::sheets::CutPlace& cut);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void fill();
    void add_sheet(std::size_t board, std::size_t sheet);
    QString freed(const stock::BoardCut& cut, const stock::SawCut& saw) const;
    QString said(double mm) const;

    Document& document_;
    std::shared_ptr<const plan::StockPlan> stock_; ///< in the rows
    QTreeWidget* rows_;
};

} // namespace drawercast::app
