// SPDX-License-Identifier: GPL-3.0-or-later
// What the maker waits for: from a step of the pointer to the painted window, and from the start of the
// window to its first painted frame. Without a display unless QT_QPA_PLATFORM names one.
#include "job/catalog.h"
#include "job/edit.h"

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
#include <string>
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

double share(std::vector<double> sorted, double part) {
    std::sort(sorted.begin(), sorted.end());
    return sorted.at(static_cast<std::size_t>(part * static_cast<double>(sorted.size() - 1)));
}

/// Rounded rectangles, circles and capsules in rows, each third row a little too close to the next: as many
/// checks as a layout in the making has.
job::Job rows_of_objects(int count) {
    constexpr double pitch_mm = 54;
    const int columns = static_cast<int>(std::ceil(std::sqrt(count)));
    job::Job job = job::new_job({pitch_mm * (columns + 1), pitch_mm * (columns + 1), 90, 60});
    const std::string drawer = job.drawers.front()->id;
    for (int i = 0; i < count; ++i) {
        job::Object object;
        object.id = "i" + std::to_string(i + 1);
        object.name = "Object " + std::to_string(i + 1);
        object.height_mm = 40;
        job::Level level;
        const double depth_mm = 12 + 6 * (i % 6);
        if (i % 3 == 0)
            level.form = job::Sunk{shape::Rectangle{42, 34, 4}, depth_mm};
        else if (i % 3 == 1)
            level.form = job::Sunk{shape::Circle{40}, depth_mm};
        else
            level.form = job::Sunk{shape::Capsule{43, 28}, depth_mm};
        object.levels = {level};
        job = job::with_object(std::move(job), object);
        const int row = i / columns;
        const shape::Vec at{pitch_mm * (i % columns + 1), pitch_mm * (row + 1) + (row % 3 == 0 ? 8 : 0)};
        job = job::placed(std::move(job), drawer, object.id, {at, 0});
    }
    return job;
}

struct Bench {
    Bench() { application(); }
    QTemporaryDir folder;
    app::Preferences preferences{folder.filePath("settings.ini")};
};

void send(QWidget& widget, QEvent::Type type, QPointF at, Qt::MouseButton button, Qt::MouseButtons held) {
    QMouseEvent event(type, at, widget.mapToGlobal(at), button, held, Qt::NoModifier);
    QApplication::sendEvent(&widget, &event);
}

/// One pocket in the middle of the drawer dragged about, snapping on; every step ends when nothing is left to
/// paint.
void drag_step(benchmark::State& state) {
    Bench bench;
    app::wear(theme::light_theme(), 1);
    app::MainWindow window(bench.preferences, bench.folder.filePath("unsaved"));
    window.resize(1366, 740);
    window.show();
    const int count = static_cast<int>(state.range(0));
    window.document().replace(rows_of_objects(count), {}, true);
    QApplication::processEvents();
    auto& canvas = window.sheets().canvas();
    const auto& pockets = window.document().plan().drawers.front().pockets;
    const shape::Vec from = pockets[pockets.size() / 2]->pose.at;
    send(canvas, QEvent::MouseButtonPress, canvas.view().to_px(from), Qt::LeftButton, Qt::LeftButton);
    std::vector<double> times;
    double at = 0;
    for (auto _ : state) {
        at += 1;
        const shape::Vec by{30 * std::sin(at / 17), 25 * std::sin(at / 11)};
        const auto start = Clock::now();
        send(canvas, QEvent::MouseMove, canvas.view().to_px(from + by), Qt::NoButton, Qt::LeftButton);
        QApplication::processEvents();
        times.push_back(milliseconds(Clock::now() - start));
    }
    send(canvas, QEvent::MouseButtonRelease, canvas.view().to_px(from), Qt::LeftButton, Qt::NoButton);
    state.counters["median_ms"] = share(times, 0.5);
    state.counters["p95_ms"] = share(times, 0.95);
}

class Watch final : public QObject { ///< for the canvas's first paint event
  public:
    bool painted = false;
    bool eventFilter(QObject*, QEvent* event) override {
        painted = painted || event->type() == QEvent::Paint;
        return false;
    }
};

/// From making the window to its first frame, the demo job in it.
void first_frame(benchmark::State& state) {
    Bench bench;
    app::wear(theme::light_theme(), 1);
    std::vector<double> times;
    for (auto _ : state) {
        const auto start = Clock::now();
        app::MainWindow window(bench.preferences, bench.folder.filePath("unsaved"));
        window.job_acts().open_demo();
        window.resize(1366, 740);
        window.show();
        Watch watch;
        window.sheets().canvas().installEventFilter(&watch);
        while (!watch.painted) QApplication::processEvents();
        QApplication::processEvents();
        times.push_back(milliseconds(Clock::now() - start));
    }
    state.counters["median_ms"] = share(times, 0.5);
    state.counters["p95_ms"] = share(times, 0.95);
}

BENCHMARK(drag_step)->Arg(40)->Arg(200)->Iterations(400)->Unit(benchmark::kMillisecond);
BENCHMARK(first_frame)->Iterations(20)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace drawercast::bench
