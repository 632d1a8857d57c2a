// SPDX-License-Identifier: GPL-3.0-or-later
#include "pourday/pour_view.h"

#include "pourday/pour_paint.h"
#include "theme/theme_of.h"

#include <QApplication>
#include <QCloseEvent>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr int tick_ms = 100;
constexpr int none_yet = 1000000;

} // namespace

PourView::PourView(const QString& title, PourPort port, QWidget* parent)
    : QWidget(parent, Qt::Window), title_(title), port_(std::move(port)) {
    setWindowTitle(tr("Pour day: %1").arg(title));
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Pour day"));
    setFocus(); // what has no focus is not read out
    connect(&timer_, &QTimer::timeout, this, &PourView::tick);
    refresh();
    timer_.start(tick_ms);
}

void PourView::refresh() {
    run_ = port_.run();
    // An edit behind it may take the dose away: what was begun is ended by the steps it was begun with.
    if (auto steps = port_.steps(); !steps.empty()) steps_ = std::move(steps);
    const auto* step = next();
    setAccessibleDescription(step ? step_words(*step) : tr("All done."));
    update();
}

const plan::PourStep* PourView::next() const {
    const auto at = std::find_if(steps_.begin(), steps_.end(),
                                 [&](const plan::PourStep& step) { return !run_.is_done(step.id); });
    return at == steps_.end() ? nullptr : &*at;
}

QString PourView::clock_words() const {
    const auto stopwatch = run_.stopwatch_s(port_.now_s());
    return stopwatch ? clock_text(*stopwatch) : QString();
}

void PourView::mark() {
    const auto* step = next();
    if (step == nullptr) return;
    trouble_ = port_.mark(std::string(step->id));
    last_whole_s_ = none_yet;
    refresh();
    if (next() == nullptr) emit finished();
}

void PourView::take_back() {
    trouble_ = port_.take_back();
    last_whole_s_ = none_yet;
    refresh();
}

void PourView::tick() {
    const auto* step = next();
    const auto stopwatch = run_.stopwatch_s(port_.now_s());
    if (step != nullptr && stopwatch && step->due_s) sound(*step->due_s - *stopwatch);
    update();
}

/// Ten seconds before it is due, then each of the last three, then once when it is.
void PourView::sound(double left_s) {
    const int whole = static_cast<int>(std::ceil(left_s));
    const bool told = whole == 10 || (whole >= 0 && whole <= 3);
    if (whole < last_whole_s_ && told && last_whole_s_ != none_yet) QApplication::beep();
    last_whole_s_ = whole;
}

void PourView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    PourPicture picture;
    picture.title = run_.rehearsal ? tr("Dry run: %1").arg(title_) : title_;
    picture.next = next();
    picture.of = static_cast<int>(steps_.size());
    picture.trouble = trouble_;
    picture.stopwatch_s = run_.stopwatch_s(port_.now_s());
    if (picture.next != nullptr) {
        const auto at = picture.next - steps_.data();
        picture.done = static_cast<int>(at);
        if (at + 1 < static_cast<std::ptrdiff_t>(steps_.size())) picture.after = picture.next + 1;
    }
    paint_pour(painter, rect(), picture, theme::theme_of(this));
}

void PourView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!event->isAutoRepeat()) mark(); // a key held down marks one step only
        break;
    case Qt::Key_Backspace:
        if (!event->isAutoRepeat()) take_back();
        break;
    case Qt::Key_Escape:
        close();
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

/// A gloved knuckle on a touch screen does as well as a key; one touch alone may be an accident.
void PourView::mouseDoubleClickEvent(QMouseEvent*) { mark(); }

void PourView::closeEvent(QCloseEvent* event) {
    timer_.stop();
    event->accept();
}

} // namespace drawercast::app
