// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/check.h"

#include <QWidget>

class QLabel;
class QListView;

namespace drawercast::app {

class ChecksModel;
class Document;
class Head;
class Selection;

/// The checks of the shown drawer, first in the right pane. Choosing one chooses its pockets; what to do
/// about it stands under the list.
class ChecksPane final : public QWidget {
    Q_OBJECT
  public:
    ChecksPane(const Document& document, Selection& selection, QWidget* parent = nullptr);

    const ChecksModel& model() const { return *model_; }
    void add_action(QAction* action); ///< as a button under the list, seen while it can be used
    void choose_next();               ///< the next check, after the last one the first

  signals:
    void menu_wanted(QPoint global);                           ///< of the chosen check
    void check_chosen(const drawercast::layout::Check& check); ///< by the maker: the sheet goes there

  private:
    void choose(const QModelIndex& at);
    void show_choice();

    Selection& selection_;
    ChecksModel* model_;
    Head* head_;
    QListView* list_;
    QLabel* nothing_;
    QLabel* advice_;
    QWidget* buttons_;
};

} // namespace drawercast::app
