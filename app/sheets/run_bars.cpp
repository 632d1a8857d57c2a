// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/run_bars.h"

#include "plan/run_ticks.h"

#include "language/in_words.h"
#include "language/spoken.h"

#include <algorithm>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;
using theme::WashRole;

namespace {

constexpr double bar_share = 2.8 / 4.6; ///< of a row
constexpr double night_mm = 4;
constexpr double head_mm = 6;
constexpr double least_mm = 0.5; ///< of a bar, however short
constexpr double min_per_h = 60, min_per_day = 24 * 60;

using language::tr;

/// From minutes to the chart: a shop day has its width, a night a band.
class Days {
  public:
    Days(const job::Shop& shop, int days, double width_mm, double words_mm)
        : words_mm_(words_mm), opens_(min_per_h * shop.opens_h), closes_(min_per_h * shop.closes_h),
          days_(days), day_mm_((width_mm - words_mm - night_mm * days) / days) {}

    double begin(int day) const { return words_mm_ + (day_mm_ + night_mm) * (day - 1); }
    double day_mm() const { return day_mm_; }
    double operator()(double min) const {
        const int day = std::min(runsheet::day_of(min), days_);
        const double of_day = min - min_per_day * (day - 1);
        const double open = std::clamp((of_day - opens_) / (closes_ - opens_), 0.0, 1.0);
        const double night = std::clamp((of_day - closes_) / (min_per_day - closes_ + opens_), 0.0, 1.0);
        const double early =
            of_day < opens_ && day > 1 ? (opens_ - of_day) / (min_per_day - closes_ + opens_) : 0;
        return begin(day) + day_mm_ * open + night_mm * (night - early);
    }

  private:
    double words_mm_;
    double opens_, closes_;
    int days_;
    double day_mm_;
};

/// What is done in few words: up to the first comma, semicolon or "and", which the table has whole; the
/// drawer's name as far as there is room.
std::string short_words(const runsheet::Task& task) {
    constexpr int most_letters = 52; // at the caption's size they end before the bars
    QString words = in_words(task.what);
    for (const QString& end : {QStringLiteral(","), QStringLiteral(";"), tr(" and ")})
        words = words.section(end, 0, 0);
    if (!task.drawer.empty()) words = tr("%1: %2").arg(words, QString::fromStdString(task.drawer));
    if (words.size() > most_letters) words = words.left(most_letters - 1) + QChar(0x2026);
    return words.toStdString();
}

void put_bar(ChartPen& pen, const Box& box, LineRole line, theme::Wash wash) {
    pen.put(PathMark{path_of(box), line, wash});
}

void put_tick(ChartPen& pen, Vec at) {
    constexpr double arm_mm = 0.9;
    pen.put(PathMark{line(at + Vec{-arm_mm, 0}, at + Vec{0, -arm_mm}), LineRole::pocket_edge, std::nullopt});
    pen.put(PathMark{line(at + Vec{0, -arm_mm}, at + Vec{2 * arm_mm, arm_mm}), LineRole::pocket_edge,
                     std::nullopt});
}

void put_row(ChartPen& pen, const runsheet::Slot& slot, const runsheet::Task& task,
             const std::vector<job::Mark>& log, const Days& x, const Box& row) {
    const double middle = row.center().y, half = bar_share * row.height() / 2;
    const double low = middle - half, high = middle + half;
    const LineRole line = slot.critical ? LineRole::pocket_edge : LineRole::thin;
    const double from = x(slot.begins_min), left = std::max(x(slot.left_min), from + least_mm);
    if (slot.ready_min > slot.left_min)
        put_bar(pen, {{left, low}, {std::max(x(slot.ready_min), left), high}}, line, {WashRole::paper});
    put_bar(pen, {{from, low}, {left, high}}, line,
            slot.critical ? theme::Wash{WashRole::ink} : theme::Wash{WashRole::depth, 0.7});
    if (!task.gates.empty()) {
        constexpr double gate_mm = 1.1;
        pen.put(PathMark{polygon({{from - 2.4 * gate_mm, middle + gate_mm},
                                  {from - 0.4 * gate_mm, middle},
                                  {from - 2.4 * gate_mm, middle - gate_mm}}),
                         LineRole::thin,
                         theme::Wash{plan::gates_ticked(log, task) ? WashRole::paper : WashRole::ink}});
    }
    if (plan::is_ticked(log, plan::task_tick(task))) put_tick(pen, {x.begin(1) - 4, middle});
    pen.put(TextMark{{{0, middle}, {}}, short_words(task), TextRole::caption, Side::left, 0, false});
}

} // namespace

Sheet<OnChart> run_bars(const plan::RunSheet& run, const job::Job& job, double width_mm,
                        const RunRoom& room) {
    Sheet<OnChart> sheet;
    sheet.name = "Run sheet";
    if (run.schedule.entries.empty()) return sheet;
    const int days = std::max(1, run.schedule.days);
    const double height = room.row_mm * static_cast<double>(run.schedule.entries.size());
    const Days x(*job.shop, days, width_mm, room.words_mm);
    ChartPen pen(sheet);
    for (int day = 1; day <= days; ++day) {
        const double begin = x.begin(day), end = begin + x.day_mm();
        pen.put(PathMark{path_of(Box{{end, 0}, {end + night_mm, height}}), std::nullopt,
                         theme::Wash{WashRole::wall}});
        pen.put(PathMark{line({begin, 0}, {begin, height}), LineRole::rule, std::nullopt});
        pen.put(TextMark{{{begin + x.day_mm() / 2, height}, {0, 5}},
                         tr("Day %1").arg(day).toStdString(),
                         TextRole::caption,
                         Side::center,
                         0,
                         false});
    }
    double top = height;
    for (const auto& slot : run.schedule.entries) {
        const Box row{{0, top - room.row_mm}, {width_mm, top}};
        put_row(pen, slot, run.tasks[slot.task], job.log, x, row);
        top = row.min.y;
        pen.put(PathMark{line({x.begin(1), top}, {width_mm, top}), LineRole::rule,
                         std::nullopt}); // clear of the words
    }
    sheet.area = {{0, 0}, {width_mm, height + head_mm}};
    return sheet;
}

} // namespace drawercast::sheets
