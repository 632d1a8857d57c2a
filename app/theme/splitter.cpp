// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/splitter.h"

#include <QMouseEvent>
#include <QRegion>
#include <QSplitterHandle>

namespace drawercast::theme {

namespace {

constexpr int line_px = 1;
constexpr int margin_px = 3; // on either side, over the panes

class Handle final : public QSplitterHandle {
  public:
    using QSplitterHandle::QSplitterHandle;

  protected:
    void resizeEvent(QResizeEvent*) override {
        // The splitter lays out by the contents and keeps handles above the panes; outside the mask the pane
        // shows.
        if (orientation() == Qt::Horizontal)
            setContentsMargins(margin_px, 0, margin_px, 0);
        else
            setContentsMargins(0, margin_px, 0, margin_px);
        setAttribute(Qt::WA_MouseNoMask);
        setMask(QRegion(contentsRect()));
    }

    void mousePressEvent(QMouseEvent* event) override {
        grabbed_ = along(event->position().toPoint()) -
                   margin_px; // from the line: Qt takes it from the handle's edge
        QSplitterHandle::mousePressEvent(event);
    }

    void mouseMoveEvent(QMouseEvent* event) override {
        if (!event->buttons().testFlag(Qt::LeftButton)) return;
        moveSplitter(along(splitter()->mapFromGlobal(event->globalPosition().toPoint())) - grabbed_);
    }

  private:
    int along(const QPoint& point) const { return orientation() == Qt::Horizontal ? point.x() : point.y(); }

    int grabbed_ = 0;
};

} // namespace

Splitter::Splitter(Qt::Orientation orientation, QWidget* parent) : QSplitter(orientation, parent) {
    setHandleWidth(line_px);
    setChildrenCollapsible(false); // panes have a key to hide them; a drag should not
}

QSplitterHandle* Splitter::createHandle() { return new Handle(orientation(), this); }

} // namespace drawercast::theme
