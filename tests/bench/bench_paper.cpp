// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/rows_of_objects.h"
#include "print/drawing_files.h"
#include "print/pdf.h"
#include "print/templates.h"
#include "sheets/paint.h"
#include "summary/summary.h"

#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <benchmark/benchmark.h>

#include <algorithm>

/// A job of 10, 40 and 200 pockets on paper: the templates from the answer to the bytes of the PDF
/// (templates), the summary, the drawings, and the fullest tile as dots at 300 an inch (raster). Beside them
/// in the same run what the library takes to write pages that are already drawn (pdf_floor), and an empty
/// page of dots (raster_floor). ratios.py reads the names.
namespace drawercast::bench {
namespace {

QGuiApplication& application() {
    static int count = 1;
    static char name[] = "bench";
    static char* arguments[] = {name, nullptr};
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    static auto* instance = new QGuiApplication(count, arguments); // at the end Qt's own globals go first
    return *instance;
}

struct Given {
    explicit Given(benchmark::State& state)
        : job(rows_of_objects(static_cast<int>(state.range(0)))), plan(plan::compute(job)) {
        application();
    }

    std::vector<print::Page> template_pages() const { return print::template_pages(job, plan, {}, printing); }
    std::vector<print::Page> summary_pages() const {
        return summary::summary_pages(job, plan, print::Paper::a4, printing);
    }

    job::Job job;
    plan::Plan plan;
    print::Printing printing{QStringLiteral("bench"), QStringLiteral("today")};
};

QByteArray pdf_of(const std::vector<print::Page>& pages) {
    return print::pdf_of(pages, QStringLiteral("bench"), QStringLiteral("bench"));
}

void templates(benchmark::State& state) {
    const Given given(state);
    std::size_t count = 0;
    for (auto _ : state) {
        const auto pages = given.template_pages();
        count = pages.size();
        benchmark::DoNotOptimize(pdf_of(pages).constData());
    }
    state.counters["pages"] = static_cast<double>(count);
}

void pdf_floor(benchmark::State& state) {
    const Given given(state);
    const auto pages = given.template_pages();
    for (auto _ : state) benchmark::DoNotOptimize(pdf_of(pages).constData());
}

void job_summary(benchmark::State& state) {
    const Given given(state);
    for (auto _ : state) benchmark::DoNotOptimize(pdf_of(given.summary_pages()).constData());
}

void drawing_files(benchmark::State& state) {
    const Given given(state);
    for (auto _ : state) benchmark::DoNotOptimize(print::drawing_files(given.job, given.plan).size());
}

QImage dots_of(shape::Vec size_mm) {
    constexpr double dots_per_mm = 300 / 25.4;
    return {static_cast<int>(size_mm.x * dots_per_mm), static_cast<int>(size_mm.y * dots_per_mm),
            QImage::Format_RGB32};
}

void raster(benchmark::State& state) {
    const Given given(state);
    const auto pages = given.template_pages();
    const auto fullest = std::max_element(pages.begin(), pages.end(), [](const auto& a, const auto& b) {
        return a.inks.size() < b.inks.size();
    });
    QImage dots = dots_of(fullest->size_mm);
    for (auto _ : state) {
        dots.fill(Qt::white);
        QPainter painter(&dots);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.scale(300 / 96.0, 300 / 96.0);
        sheets::paint(fullest->inks, painter);
    }
    state.counters["inks"] = static_cast<double>(fullest->inks.size());
}

void raster_floor(benchmark::State& state) {
    QImage dots = dots_of(print::size_mm(print::Paper::a4, print::Orientation::portrait));
    for (auto _ : state) {
        dots.fill(Qt::white);
        benchmark::DoNotOptimize(dots.bits());
    }
}

#define DRAWERCAST_POCKETS ->Arg(10)->Arg(40)->Arg(200)->Unit(benchmark::kMillisecond)
BENCHMARK(templates) DRAWERCAST_POCKETS;
BENCHMARK(pdf_floor) DRAWERCAST_POCKETS;
BENCHMARK(job_summary) DRAWERCAST_POCKETS;
BENCHMARK(drawing_files) DRAWERCAST_POCKETS;
BENCHMARK(raster) DRAWERCAST_POCKETS;
BENCHMARK(raster_floor)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace drawercast::bench
