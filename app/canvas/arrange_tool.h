// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/canvas_port.h"
#include "canvas/canvas_tool.h"
#include "canvas/select_tool.h"

#include <QTimer>

#include <string>
#include <vector>

namespace drawercast::app {

/// Arranging on the drawer plan: pockets by the pointer, checks clicked, both told when pointed at; pockets
/// and notches nudged and chosen by keys.
class ArrangeTool final : public CanvasTool {
  public:
    explicit ArrangeTool(CanvasPort& port);

    void press(QPointF px, Keys keys) override;
    void move(QPointF px, Keys keys) override;
    void release(QPointF px, Keys keys) override;
    bool double_click(QPointF px) override;
    void leave() override;
    void keys_changed(Keys keys) override { select_.keys_changed(keys); }
    bool arrow(const ArrowKey& key) override;
    bool next(int step) override;

    bool busy() const override { return select_.busy(); }
    bool cancel() override { return select_.cancel(); }
    bool let_go() override;

    MenuOf menu_at(QPointF px) override;
    Menu menu_of_chosen() const override;
    QString spoken() const override;
    Qt::CursorShape cursor() const override { return cursor_; }
    sheets::Inks live(const LiveFrame& frame) const override;

  private:
    void point_at(QPointF px);
    void nudge(shape::Vec by);
    void nudge_notch(shape::Vec by);

    CanvasPort& port_;
    SelectTool select_;
    std::string hovered_;
    Qt::CursorShape cursor_ = Qt::ArrowCursor;
    std::vector<std::string> nudged_; ///< shown with their distances for a while
    QTimer nudged_for_;
};

} // namespace drawercast::app
