// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/form_context.h"
#include "forms/object_views.h"

#include <QWidget>

namespace drawercast::app {

/// An object as it is being filled in: from above, washed by depth, over its section through the insert. Both
/// at the same scale, with the sizes a maker would check against the thing on the bench.
class ObjectPicture final : public QWidget {
    Q_OBJECT
  public:
    explicit ObjectPicture(const FormContext& context, QWidget* parent = nullptr);

    void set_object(const job::Object& object);

    QSize sizeHint() const override { return {380, 420}; }
    QSize minimumSizeHint() const override { return {220, 260}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    struct Layout; ///< where both views lie, and their scale
    Layout layout() const;
    void paint_above(QPainter& painter, const Layout& at) const;
    void paint_side(QPainter& painter, const Layout& at) const;

    FormContext context_;
    ObjectViews views_;
};

} // namespace drawercast::app
