// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/air_marks.h"

#include "plan/say.h"

#include "language/spoken.h"
#include "sheets/aligned_length.h"
#include "sheets/words_around.h"

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;

namespace {

constexpr double pocket_ring_mm = 9;
constexpr double pour_ring_mm = 8;    ///< two digits have room where a drawer fits in a small window
constexpr double outer_ring_mm = 1.5; ///< around the hole: nobody takes it for a screw
constexpr double corner_share = 0.8;  ///< of a ring’s radius: what words around it must not touch

QString purpose(air::VentFor why) {
    switch (why) {
    case air::VentFor::kept:
        return language::tr("set by hand");
    case air::VentFor::air:
        return language::tr("air pocket");
    case air::VentFor::corner:
        return language::tr("corner");
    case air::VentFor::wall:
        return language::tr("wall");
    }
    return {};
}

} // namespace

void add_air_pockets(MoldPen& pen, const air::Answer& air) {
    pen.turn_to(Layer::still);
    for (const auto& pocket : air.model->map().pockets) {
        pen.put(PathMark{circle(pocket.at, pocket_ring_mm), LineRole::neighbor, std::nullopt});
        pen.put(KeepFreeMark{Box{pocket.at, pocket.at}.grown(pocket_ring_mm * corner_share)});
    }
}

void add_air_words(MoldPen& pen, const air::Answer& air, const job::Job& job, bool all_named,
                   const Box& within) {
    pen.turn_to(Layer::still);
    const auto& pockets = air.model->map().pockets;
    for (std::size_t i = 0; i < pockets.size(); ++i) {
        const double stays = air.vented.shares_ml[i];
        if (!all_named && stays <= air::vented_ml) continue;
        std::string words = "×" + plan::fixed(pockets[i].expansion, 2);
        if (stays > air::vented_ml)
            words += language::tr(", keeps ").toStdString() + plan::say_volume_ml(stays, job.display_units);
        TextMark mark =
            words_around(pockets[i].at, pocket_ring_mm, std::move(words), {Way::below, within, {}});
        mark.elsewhere.or_none = stays <= air::vented_ml; // its vent is named, and the bands tell the rest
        pen.put(std::move(mark));
    }
}

void add_vents(MoldPen& pen, const std::vector<air::Vent>& vents) {
    pen.turn_to(Layer::still);
    for (const air::Vent& vent : vents) {
        const double radius = vent.diameter_mm / 2;
        pen.put(
            PathMark{circle(vent.at, radius), LineRole::pocket_edge, theme::Wash{theme::WashRole::paper}});
        pen.put(PathMark{circle(vent.at, radius + outer_ring_mm), LineRole::thin, std::nullopt});
        pen.put(KeepFreeMark{Box{vent.at, vent.at}.grown(radius + outer_ring_mm)});
    }
}

void add_vent_numbers(MoldPen& pen, const std::vector<air::Vent>& vents) {
    pen.turn_to(Layer::still);
    for (std::size_t i = 0; i < vents.size(); ++i)
        pen.put(TextMark{{vents[i].at + Vec{vents[i].diameter_mm / 2 + outer_ring_mm, 0}, {4, 0}},
                         "V" + std::to_string(i + 1),
                         TextRole::caption,
                         Side::left,
                         0,
                         true});
}

void add_vent_words(MoldPen& pen, const std::vector<air::Vent>& vents, const job::Job& job, VentWords what,
                    const Box& within) {
    pen.turn_to(Layer::still);
    const auto say = [&](double mm) { return plan::say_length_bare(mm, job.display_units); };
    for (std::size_t i = 0; i < vents.size(); ++i) {
        const std::string number = "V" + std::to_string(i + 1);
        const std::string place = "  " + say(vents[i].at.x) + ", " + say(vents[i].at.y);
        pen.put(words_around(vents[i].at, vents[i].diameter_mm / 2 + outer_ring_mm,
                             what == VentWords::places ? number + place : number,
                             {Way::right, within, number}));
    }
}

std::vector<Mark> kept_for_pours(const air::PourMap& map) {
    std::vector<Mark> out;
    for (const air::PourStep& step : map.steps)
        out.push_back({Layer::still, {}, KeepFreeMark{Box{step.at, step.at}.grown(pour_ring_mm)}});
    return out;
}

void add_pour_map(MoldPen& pen, const air::PourMap& map, const job::Job& job, const Box& within) {
    pen.turn_to(Layer::still);
    for (const air::PourStep& step : map.steps) {
        pen.put(PathMark{circle(step.at, pour_ring_mm), LineRole::thin, theme::Wash{theme::WashRole::paper}});
        pen.put(TextMark{{step.at}, std::to_string(step.order), TextRole::caption});
    }
    for (const air::PourStep& step : map.steps)
        pen.put(words_around(step.at, pour_ring_mm, plan::say_volume_ml(step.ml, job.display_units),
                             {Way::right, within}));
}

Table vent_table(const job::Job& job, const std::vector<air::Vent>& vents) {
    Table table;
    table.columns = {{language::tr("no."), Align::right, 0, 26},
                     {language::tr("x"), Align::right, 0, 50},
                     {language::tr("y"), Align::right, 0, 50},
                     {language::tr("drill"), Align::right, 0, 40},
                     {language::tr("for"), Align::left, 1, 0}};
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
