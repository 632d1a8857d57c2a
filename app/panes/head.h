// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QIcon>
#include <QLabel>
#include <QWidget>

namespace drawercast::app {

/// The line over a pane: icon, name, and a remark at its right end.
class Head final : public QWidget {
    Q_OBJECT
  public:
    Head(const QString& icon, const QString& name, QWidget* parent = nullptr);

    void set_remark(const QString& remark);
    void set_actions(const QList<QAction*>& actions); ///< as tool buttons at the end

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void set_fonts();

    QLabel* name_;
    QLabel* remark_;
};

} // namespace drawercast::app
