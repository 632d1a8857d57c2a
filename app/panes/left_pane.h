// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QWidget>

#include <string>

class QAction;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QListView;
class QSortFilterProxyModel;

namespace drawercast::app {

class Document;
class DrawersModel;
class Head;
class ObjectsModel;
class ObjectsTable;
class Selection;

/// Left of the sheet: the job's drawers, and its objects with a field to find one by name.
class LeftPane final : public QWidget {
    Q_OBJECT
  public:
    LeftPane(const Document& document, Selection& selection, QWidget* parent = nullptr);

    void set_drawer_actions(const QList<QAction*>& actions);
    void set_object_actions(const QList<QAction*>& actions);
    QLineEdit& find_field() { return *find_; }
    void add_below(QWidget* pane); ///< under the objects

  signals:
    void object_activated(const QString& id); ///< double click or Enter
    void menu_wanted(QPoint global);          ///< of the chosen object
    void drawer_menu_wanted(QPoint global);   ///< of the shown drawer

  private:
    void show_choice();
    void show_object(const QModelIndex& row);
    void show_counts();
    void show_what_is_missing();
    void trigger(const QString& name); ///< the action of that name
    void connect_views();

    const Document& document_;
    Selection& selection_;
    DrawersModel* drawers_;
    ObjectsModel* objects_;
    QSortFilterProxyModel* found_;
    Head* drawers_head_;
    Head* objects_head_;
    QListView* drawers_list_;
    ObjectsTable* objects_table_;
    QLineEdit* find_;
    QLabel* no_drawer_;
    QLabel* nothing_;
    QHBoxLayout* object_buttons_;
    QList<QAction*> drawer_actions_;
    QList<QAction*> object_actions_;
};

} // namespace drawercast::app
