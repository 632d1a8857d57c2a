// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/air_marks.h"

#include "plan/say.h"

#include "air/level_lines.h"
#include "sheets/aligned_length.h"

#include <algorithm>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;

namespace {

constexpr int bands = 6;              ///< between the first touch and the full mold
constexpr double figure_room_mm = 60; ///< a line shorter than this has no figure
constexpr double pocket_ring_mm = 9;
constexpr double pour_ring_mm = 5;
constexpr double words_mm = 60;       ///< what the words beside a vent take on a sheet reduced to a quarter
constexpr double outer_ring_mm = 1.5; ///< around the hole: nobody takes it for a screw

double length_of(const air::LevelLine& line) {
    double sum = 0;
    for (std::size_t i = 1; i < line.size(); ++i) sum += length(line[i] - line[i - 1]);
    return sum;
}

QString purpose(air::VentFor why) {
    switch (why) {
    case air::VentFor::kept:
        return QStringLiteral("set by hand");
    case air::VentFor::air:
        return QStringLiteral("air pocket");
    case air::VentFor::corner:
        return QStringLiteral("corner");
    case air::VentFor::wall:
        return QStringLiteral("wall");
    }
    return {};
}

} // namespace

void add_arrival(MoldPen& pen, const air::AirMap& map) {
    pen.turn_to(Layer::still);
    for (int i = 1; i < bands; ++i) {
        const double level = map.first_touch + (map.full_expansion - map.first_touch) * i / bands;
        for (const air::LevelLine& line : air::level_lines(map.mesh, map.arrival, level)) {
            pen.put(PathMark{polyline(line), LineRole::soft, std::nullopt});
            if (length_of(line) < figure_room_mm) continue;
            pen.put(TextMark{
                {line[line.size() / 2]}, plan::fixed(level, 2), TextRole::caption, Side::center, 0, true});
        }
    }
}

void add_air_pockets(MoldPen& pen, const air::Answer& air, const job::Job& job, bool all_named) {
    pen.turn_to(Layer::still);
    const auto& pockets = air.model->map().pockets;
    for (std::size_t i = 0; i < pockets.size(); ++i) {
        pen.put(PathMark{circle(pockets[i].at, pocket_ring_mm), LineRole::neighbor, std::nullopt});
        const double stays = air.vented.shares_ml[i];
        if (!all_named && stays <= air::vented_ml) continue;
        std::string words = "E " + plan::fixed(pockets[i].expansion, 2);
        if (stays > air::vented_ml) words += ", keeps " + plan::say_volume_ml(stays, job.display_units);
        pen.put(TextMark{{pockets[i].at - Vec{0, pocket_ring_mm}, {0, -12}},
                         words,
                         TextRole::caption,
                         Side::center,
                         0,
                         true});
    }
}

namespace {

/// The side on which the words of a vent cover least.
VentWords best_words(const air::Vent& vent, const Box& within, const std::vector<Box>& keep) {
    const double off = vent.diameter_mm / 2 + outer_ring_mm + 1;
    VentWords best;
    int least = -1;
    for (const bool left : {false, true})
        for (const bool above : {false, true}) {
            const Vec corner = vent.at + Vec{left ? -off - words_mm : off, above ? -7.0 : -22.0};
            const Box room{corner, corner + Vec{words_mm, 29}};
            int covered = static_cast<int>(
                std::count_if(keep.begin(), keep.end(), [&](const Box& b) { return shape::near(room, b); }));
            if (room.min.x < within.min.x || room.max.x > within.max.x) covered += 2;
            if (room.min.y < within.min.y || room.max.y > within.max.y) covered += 1;
            if (least < 0 || covered < least) best = {left, above, room}, least = covered;
        }
    return best;
}

} // namespace

std::vector<VentWords> vent_words(const std::vector<air::Vent>& vents, const Box& within,
                                  const std::vector<Box>& keep) {
    constexpr int rounds = 3; // the first to choose may have to make room for later ones
    std::vector<VentWords> all(vents.size());
    for (int round = 0; round < rounds; ++round)
        for (std::size_t i = 0; i < vents.size(); ++i) {
            std::vector<Box> others = keep;
            for (std::size_t k = 0; k < vents.size(); ++k) {
                if (k == i) continue;
                others.push_back(
                    Box{vents[k].at, vents[k].at}.grown(vents[k].diameter_mm / 2 + outer_ring_mm));
                if (round > 0 || k < i) others.push_back(all[k].room);
            }
            all[i] = best_words(vents[i], within, others);
        }
    return all;
}

void add_vents(MoldPen& pen, const std::vector<air::Vent>& vents, const job::Job& job,
               const std::vector<VentWords>& words) {
    pen.turn_to(Layer::still);
    const auto say = [&](double mm) { return plan::say_length_bare(mm, job.display_units); };
    for (std::size_t i = 0; i < vents.size(); ++i) {
        const double radius = vents[i].diameter_mm / 2;
        pen.put(PathMark{circle(vents[i].at, radius), LineRole::pocket_edge,
                         theme::Wash{theme::WashRole::paper}});
        pen.put(PathMark{circle(vents[i].at, radius + outer_ring_mm), LineRole::thin, std::nullopt});
        const bool placed = i < words.size(), left = placed && words[i].left;
        const Vec beside = vents[i].at + Vec{(radius + outer_ring_mm) * (left ? -1 : 1), 0};
        const auto put = [&](double up_px, const std::string& text) {
            pen.put(TextMark{{beside, {left ? -4.0 : 4.0, up_px}},
                             text,
                             TextRole::caption,
                             left ? Side::right : Side::left,
                             0,
                             true});
        };
        put(0, "V" + std::to_string(i + 1));
        if (placed) put(words[i].above ? 13 : -13, say(vents[i].at.x) + ", " + say(vents[i].at.y));
    }
}

void add_pour_map(MoldPen& pen, const air::PourMap& map, const job::Job& job, double width_mm) {
    pen.turn_to(Layer::still);
    for (const air::PourStep& step : map.steps) {
        pen.put(PathMark{circle(step.at, pour_ring_mm), LineRole::thin, theme::Wash{theme::WashRole::paper}});
        pen.put(TextMark{{step.at}, std::to_string(step.order), TextRole::caption});
        const bool left = step.at.x > width_mm - words_mm;
        pen.put(TextMark{{step.at + Vec{left ? -pour_ring_mm : pour_ring_mm, 0}, {left ? -4.0 : 4.0, 0}},
                         plan::say_volume_ml(step.ml, job.display_units),
                         TextRole::caption,
                         left ? Side::right : Side::left,
                         0,
                         true});
    }
}

Table vent_table(const job::Job& job, const std::vector<air::Vent>& vents) {
    Table table;
    table.columns = {{"no.", Align::right, 0, 26},
                     {"x", Align::right, 0, 50},
                     {"y", Align::right, 0, 50},
                     {"drill", Align::right, 0, 40},
                     {"for", Align::left, 1, 0}};
    const auto say = [&](double mm) { return aligned_length(mm, job.display_units); };
    for (std::size_t i = 0; i < vents.size(); ++i)
        table.rows.push_back({{"V" + QString::number(static_cast<int>(i) + 1), true, {}},
                              {say(vents[i].at.x), false, {}},
                              {say(vents[i].at.y), false, {}},
                              {say(vents[i].diameter_mm), false, {}},
                              {purpose(vents[i].why), false, {}}});
    return table;
}

} // namespace drawercast::sheets
