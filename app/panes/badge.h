// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/check.h"

#include <QWidget>

namespace drawercast::app {

/// How many checks of one severity there are, in the severity's shape: square, triangle or circle. Nothing
/// is seen of none.
class Badge final : public QWidget {
    Q_OBJECT
  public:
    Badge(layout::Severity severity, QWidget* parent);

    void set_count(int count);
    int count() const { return count_; }
    QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    layout::Severity severity_;
    int count_ = 0;
};

} // namespace drawercast::app
