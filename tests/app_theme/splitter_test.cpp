// SPDX-License-Identifier: GPL-3.0-or-later
#include "application.h"
#include "theme/splitter.h"
#include "theme/style.h"

#include <QMouseEvent>
#include <QSplitterHandle>
#include <gtest/gtest.h>

namespace drawercast::theme {
namespace {

void send(QWidget& widget, QEvent::Type type, const QPoint& at, const QPoint& moved, Qt::MouseButtons held) {
    const Qt::MouseButton button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
    const QPoint global = widget.mapToGlobal(at) + moved;
    QMouseEvent event(type, at + moved, global, button, held, Qt::NoModifier);
    QApplication::sendEvent(&widget, &event);
}

TEST(Splitter, is_a_line_of_one_that_can_be_held_over_seven) {
    test::application();
    const Style style(light_theme());
    for (const auto orientation : {Qt::Horizontal, Qt::Vertical}) {
        Splitter splitter(orientation);
        auto* first = new QWidget;
        auto* second = new QWidget;
        splitter.addWidget(first);
        splitter.addWidget(second);
        splitter.resize(401, 401);
        splitter.setSizes({200, 200});
        splitter.show();
        const bool level = orientation == Qt::Horizontal;
        const auto along = [&](const QPoint& point) { return level ? point.x() : point.y(); };
        EXPECT_EQ(along(second->pos()) - along(first->geometry().bottomRight()), 2)
            << "one pixel between the panes";

        for (const int off : {-3, 0, 3}) {
            const QPoint line =
                level ? QPoint(first->width() + off, 100) : QPoint(100, first->height() + off);
            QWidget* hit = splitter.childAt(line);
            ASSERT_EQ(hit, splitter.handle(1)) << off;
            const int before = splitter.sizes().first();
            const QPoint grip = hit->mapFrom(&splitter, line);
            const QPoint by = level ? QPoint(10, 0) : QPoint(0, 10);
            send(*hit, QEvent::MouseButtonPress, grip, {}, Qt::LeftButton);
            send(*hit, QEvent::MouseMove, grip, by, Qt::LeftButton);
            send(*hit, QEvent::MouseButtonRelease, grip, by, Qt::NoButton);
            EXPECT_EQ(splitter.sizes().first(), before + 10) << off;
        }
        const QPoint beyond = level ? QPoint(first->width() + 4, 100) : QPoint(100, first->height() + 4);
        EXPECT_EQ(splitter.childAt(beyond), second);
    }
}

} // namespace
} // namespace drawercast::theme
