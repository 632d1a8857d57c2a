// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace drawercast::app {

class Actions;
class Preferences;

/// What is seen while no drawer is: ways to start, and the jobs last used.
class Welcome final : public QWidget {
    Q_OBJECT
  public:
    Welcome(const Actions& actions, const Preferences& preferences, QWidget* parent = nullptr);

  signals:
    void recent_wanted(const QString& path);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void show_recent();
    void set_fonts();

    const Preferences& preferences_;
    QLabel* name_;
    QWidget* recent_;
    QVBoxLayout* recent_column_;
};

} // namespace drawercast::app
