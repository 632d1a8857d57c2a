// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/form_context.h"
#include "window/desk.h"

#include <QObject>

namespace drawercast::app {

class Actions;

/// What is filled in rather than drawn: objects, drawers, the foam, the shop and its minimums, the job's
/// title. A form is given a value and gives one back; each taken form is one commit, so one step of undo.
class FormActs final : public QObject {
    Q_OBJECT
  public:
    FormActs(const Desk& desk, Actions& actions, QObject* parent = nullptr);

  signals:
    void said(const QString& sentence);

  private:
    void connect_objects(Actions& actions);
    void connect_drawers(Actions& actions);
    void connect_job(Actions& actions);
    void add_object();
    void change_object();
    void paste_list();
    void add_listed(const std::vector<job::Object>& objects, const QString& what);
    void add_drawer();
    void change_drawer();
    void delete_drawer();
    FormContext context() const; ///< of the open job and the shown drawer

    Desk desk_;
};

} // namespace drawercast::app
