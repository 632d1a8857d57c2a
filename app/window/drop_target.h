// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QWidget;

namespace drawercast::app {

/// A job file dropped anywhere on the window is opened; other things are left to the widgets below.
class DropTarget final : public QObject {
    Q_OBJECT
  public:
    explicit DropTarget(QWidget* window);

  signals:
    void dropped(const QString& path);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace drawercast::app
