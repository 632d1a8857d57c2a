// SPDX-License-Identifier: GPL-3.0-or-later
// What the maker waits for: from a step of the pointer to the painted window, and from the start of the
// window to its first painted frame. Without a display unless QT_QPA_PLATFORM names one.
#include "bench/rows_of_objects.h"
#include "document/preferences.h"
#include "window/appearance.h"
#include "window/job_acts.h"
#include "window/main_window.h"
#include "window/sheet_area.h"

#include <QApplication>
#include <QMouseEvent>
#include <QObject>
#include <QTemporaryDir>
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <ctime>
#include <vector>

namespace drawercast::bench {
namespace {

using Clock = std::chrono::steady_clock;

QApplication& application() {
    static int count = 1;
    static char name[] = "bench";
    static char* arguments[] = {name, nullptr};
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    static auto* instance = new QApplication(count, arguments);
    return *instance;
}

double milliseconds(Clock::duration time) { return std::chrono::duration<double, std::milli>(time).count(); }

/// What the calling thread has worked, without the time in which others had the processor.
double worked_ms() {
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) * 1e-6;
}

double share(std::vector<double> sorted, double part) {
    std::sort(sorted.begin(), sorted.end());
    return sorted.at(static_cast<std::size_t>(part * static_cast<double>(sorted.size() - 1)));
}

/// How long something takes each time: by the clock, and the window's own work in it.
class Times {
  public:
    void start() { from_ = Clock::now(), worked_from_ = worked_ms(); }
    void stop() {
        waited_.push_back(milliseconds(Clock::now() - from_));
        worked_.push_back(worked_ms() - worked_from_);
    }
    void tell(benchmark::State& state) const {
        state.counters["median_ms"] = share(waited_, 0.5);
        state.counters["p95_ms"] = share(waited_, 0.95);
        state.counters["work_median_ms"] = share(worked_, 0.5);
        state.counters["work_p95_ms"] = share(worked_, 0.95);
        state.counters["steps"] = static_cast<double>(waited_.size());
    }

  private:
    Clock::time_point from_;
    double worked_from_ = 0;
    std::vector<double> waited_, worked_;
};

struct Bench {
    Bench() { application(); }
    QTemporaryDir folder;
    app::Preferences preferences{folder.filePath("settings.ini")};
};

void send(QWidget& widget, QEvent::Type type, QPointF at, Qt::MouseButton button, Qt::MouseButtons held,
          Qt::KeyboardModifiers keys = {}) {
    QMouseEvent event(type, at, widget.mapToGlobal(at), button, held, keys);
    QApplication::sendEvent(&widget, &event);
}

class Watch final : public QObject { ///< for the canvas's paint events
  public:
    bool painted = false;
    bool eventFilter(QObject*, QEvent* event) override {
        painted = painted || event->type() == QEvent::Paint;
        return false;
    }
};

/// One pocket in the middle of the drawer dragged about; every step ends when nothing is left to paint. With
/// snapping most steps leave the pocket where it was, so those that painted the sheet are counted alone.
void drag_step(benchmark::State& state) {
    Bench bench;
    app::wear(theme::light_theme(), 1);
    app::MainWindow window(bench.preferences, bench.folder.filePath("unsaved"));
    window.resize(1366, 740);
    window.show();
    const int count = static_cast<int>(state.range(0));
    const auto keys = state.range(1) != 0 ? Qt::KeyboardModifiers() : Qt::ControlModifier;
    window.document().replace(rows_of_objects(count), {}, true);
    window.document().building().wait(); // all panes have something to show, as in a job at work
    QApplication::processEvents();
    auto& canvas = window.sheets().canvas();
    Watch watch;
    canvas.installEventFilter(&watch);
    const auto& pockets = window.document().plan().drawers.front().pockets;
    const shape::Vec from = pockets[pockets.size() / 2]->pose.at;
    send(canvas, QEvent::MouseButtonPress, canvas.view().to_px(from), Qt::LeftButton, Qt::LeftButton);
    Times times;
    double at = 0;
    for (auto _ : state) {
        at += 1;
        const shape::Vec by{30 * std::sin(at / 17), 25 * std::sin(at / 11)};
        watch.painted = false;
        times.start();
        send(canvas, QEvent::MouseMove, canvas.view().to_px(from + by), Qt::NoButton, Qt::LeftButton, keys);
        QApplication::processEvents();
        if (watch.painted) times.stop();
    }
    send(canvas, QEvent::MouseButtonRelease, canvas.view().to_px(from), Qt::LeftButton, Qt::NoButton);
    times.tell(state);
}

/// From making the window to its first frame, the demo job in it.
void first_frame(benchmark::State& state) {
    Bench bench;
    app::wear(theme::light_theme(), 1);
    Times times;
    for (auto _ : state) {
        times.start();
        app::MainWindow window(bench.preferences, bench.folder.filePath("unsaved"));
        window.job_acts().open_demo();
        window.resize(1366, 740);
        window.show();
        Watch watch;
        window.sheets().canvas().installEventFilter(&watch);
        while (!watch.painted) QApplication::processEvents();
        QApplication::processEvents();
        times.stop();
    }
    times.tell(state);
}

BENCHMARK(drag_step)
    ->ArgNames({"pockets", "snapping"})
    ->ArgsProduct({{40, 200}, {0, 1}})
    ->Iterations(400)
    ->Unit(benchmark::kMillisecond);
BENCHMARK(first_frame)->Iterations(20)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace drawercast::bench
