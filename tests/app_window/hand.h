// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/catalog.h"
#include "job/edit.h"

#include "app_window/scripted.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPaintEvent>
#include <QTest>
#include <QWheelEvent>
#include <gtest/gtest.h>

namespace drawercast::test {

/// A maker's hand on the drawer plan, in millimeters of the drawer.
class Hand {
  public:
    explicit Hand(Desktop& desk) : canvas_(desk.window.sheets().canvas()) {}

    Qt::KeyboardModifiers held = Qt::NoModifier; ///< keys

    void press(shape::Vec mm) { mouse(QEvent::MouseButtonPress, px(mm), Qt::LeftButton, Qt::LeftButton); }
    void move(shape::Vec mm) { mouse(QEvent::MouseMove, px(mm), Qt::NoButton, Qt::LeftButton); }
    void hover(shape::Vec mm) { mouse(QEvent::MouseMove, px(mm), Qt::NoButton, Qt::NoButton); }
    void release(shape::Vec mm) { mouse(QEvent::MouseButtonRelease, px(mm), Qt::LeftButton, Qt::NoButton); }
    void right_click(shape::Vec mm) {
        mouse(QEvent::MouseButtonPress, px(mm), Qt::RightButton, Qt::LeftButton | Qt::RightButton);
    }
    void click(shape::Vec mm) {
        press(mm);
        release(mm);
    }
    /// In small steps, as a hand does.
    void drag(shape::Vec from, shape::Vec to) {
        press(from);
        drag_on(from, to);
        release(to);
    }
    void drag_on(shape::Vec from, shape::Vec to) {
        constexpr int steps = 12;
        for (int i = 1; i <= steps; ++i) move(from + (to - from) * (static_cast<double>(i) / steps));
    }
    void key_down(int key) { send_key(QEvent::KeyPress, key); }
    void key_up(int key) { send_key(QEvent::KeyRelease, key); }
    void key(int key) {
        key_down(key);
        key_up(key);
    }
    void wheel(QPointF px, QPoint eighths) {
        QWheelEvent event(px, canvas_.mapToGlobal(px), {}, eighths, Qt::NoButton, held, Qt::NoScrollPhase,
                          false);
        QApplication::sendEvent(&canvas_, &event);
    }
    shape::Vec mm(QPointF px) const { return canvas_.view().to_mm(px); }
    QPointF px(shape::Vec mm) const { return canvas_.view().to_px(mm); }

  private:
    void mouse(QEvent::Type type, QPointF at, Qt::MouseButton button, Qt::MouseButtons buttons) {
        QMouseEvent event(type, at, canvas_.mapToGlobal(at), button, buttons, held);
        QApplication::sendEvent(&canvas_, &event);
    }
    void send_key(QEvent::Type type, int key) {
        QKeyEvent event(type, key, held);
        QApplication::sendEvent(&canvas_, &event);
    }

    app::SheetCanvas& canvas_;
};

/// What of a widget was painted while it watches.
class PaintWatch final : public QObject {
  public:
    explicit PaintWatch(QWidget& widget) : widget_(widget) {
        QApplication::processEvents();
        widget_.installEventFilter(this);
    }
    QRegion painted() {
        QApplication::processEvents();
        return std::exchange(region_, QRegion());
    }
    static double area(const QRegion& region) {
        double sum = 0;
        for (const QRect& rect : region) sum += static_cast<double>(rect.width()) * rect.height();
        return sum;
    }
    /// Of the whole widget.
    double painted_share() { return area(painted()) / area(QRegion(widget_.rect())); }

  protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Paint) region_ += static_cast<QPaintEvent*>(event)->region();
        return false;
    }

  private:
    QWidget& widget_;
    QRegion region_;
};

/// Square pockets of 60 mm, 25 deep, at some places of a drawer of 400 × 300.
inline job::Job square_pockets(const std::vector<shape::Vec>& at) {
    auto job = job::new_job({400, 300, 90, 60});
    job::Object object;
    object.id = "i1";
    object.name = "Sensor";
    object.count = static_cast<int>(at.size());
    object.height_mm = 30;
    job::Level level;
    level.form = job::Sunk{shape::Rectangle{60, 60, 4}, 25};
    object.levels = {level};
    job = job::with_object(std::move(job), object);
    const std::string drawer = job.drawers.front()->id;
    for (const shape::Vec place : at) job = job::placed(std::move(job), drawer, "i1", {place, 0});
    return job;
}

/// They, with no snapping.
inline void open_pockets(Desktop& desk, const std::vector<shape::Vec>& at) {
    desk.window.document().replace(square_pockets(at), {}, true);
    desk.preferences.set_snapping(false);
    QApplication::processEvents();
}

/// As open_pockets, with board and stiffeners chosen by the maker, so that no design is searched for.
inline void open_with_plate_chosen(Desktop& desk, const std::vector<shape::Vec>& at) {
    open_pockets(desk, at);
    auto job = desk.window.document().job();
    job.mold.board = job.mold.box_board = job::builtin_boards().back().name;
    job.mold.stiffeners = job::StiffenerChoice{};
    desk.window.document().replace(std::move(job), {}, true);
}

/// A key as the window gets it: shortcuts need a window that has the keys.
inline void press_shortcut(Desktop& desk, const QKeySequence& keys) {
    desk.window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&desk.window));
    desk.window.sheets().canvas().setFocus();
    QTest::keySequence(&desk.window.sheets().canvas(), keys);
    QApplication::processEvents();
}

inline const layout::PlacedPocket* pocket(Desktop& desk, const std::string& subject) {
    return plan::find_pocket(desk.window.document().plan().drawers.front(), subject);
}

} // namespace drawercast::test
