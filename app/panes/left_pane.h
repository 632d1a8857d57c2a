// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <string>

class QLabel;
class QLineEdit;
class QListView;
class QSortFilterProxyModel;
class QTableView;

namespace drawercast::app {

class Document;
class DrawersModel;
class Head;
class ObjectsModel;
class Selection;

/// Left of the sheet: the job's drawers, and its objects with a field to find one by name.
class LeftPane final : public QWidget {
    Q_OBJECT
  public:
    LeftPane(const Document& document, Selection& selection, QWidget* parent = nullptr);

    void set_drawer_actions(const QList<QAction*>& actions);
    void set_object_actions(const QList<QAction*>& actions);
    QLineEdit& find_field() { return *find_; }

  signals:
    void object_activated(const QString& id); ///< double click or Enter
    void menu_wanted(QPoint global);          ///< of the chosen object

  private:
    void show_choice();
    void show_counts();
    void connect_views();

    const Document& document_;
    Selection& selection_;
    DrawersModel* drawers_;
    ObjectsModel* objects_;
    QSortFilterProxyModel* found_;
    Head* drawers_head_;
    Head* objects_head_;
    QListView* drawers_list_;
    QTableView* objects_table_;
    QLineEdit* find_;
    QLabel* nothing_;
};

} // namespace drawercast::app
