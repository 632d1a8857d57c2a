// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/drawer.h"

#include "forms/form_context.h"

#include <QWidget>

namespace drawercast::app {

/// A drawer from above as it is being filled in: its inside with dimensions, and what stands in it.
class DrawerPicture final : public QWidget {
    Q_OBJECT
  public:
    explicit DrawerPicture(const FormContext& context, QWidget* parent = nullptr);

    void set_drawer(const job::Drawer& drawer);

    QSize sizeHint() const override { return {380, 340}; }
    QSize minimumSizeHint() const override { return {220, 220}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    FormContext context_;
    job::Drawer drawer_;
};

} // namespace drawercast::app
