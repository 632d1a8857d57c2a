// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/vent_live.h"

#include "canvas/blue_pencil.h"
#include "canvas/live_lines.h"
#include "language/say.h"

#include <QCoreApplication>

#include <algorithm>

namespace drawercast::app {

namespace {

using shape::Box;
using shape::Vec;

constexpr double ring_px = 7;
constexpr double ghost_px = 5;
constexpr double moved_mm = 0.5; ///< an automatic vent that stays within is drawn by the sheet

class Words {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::VentTool)

  public:
    static QString keeps(double ml, job::DisplayUnits units) {
        return tr("keeps %1").arg(language::say_volume_ml(ml, units));
    }
    static QString all_out() { return tr("no air pocket keeps its air"); }
    static QString some(int places, double ml, job::DisplayUnits units) {
        const auto all = language::say_volume_ml(ml, units);
        return places == 1 ? tr("one air pocket keeps its air, %1").arg(all)
                           : tr("%1 air pockets keep their air, %2 in all").arg(places).arg(all);
    }
    static QString on_stiffener() { return tr("runs into a stiffener"); }
    static QString thin(double mm, job::DisplayUnits units) {
        return tr("only %1 of wood beside it").arg(language::say_length(std::max(0.0, mm), units));
    }
};

Vec vec(QPointF p) { return {p.x(), p.y()}; }

bool stands_in(const std::vector<air::Vent>& vents, Vec at) {
    return std::any_of(vents.begin(), vents.end(),
                       [&](const air::Vent& vent) { return shape::length(vent.at - at) < moved_mm; });
}

/// x along the front of the box, y up its side, both from the datum.
void dimensions(BluePencil& pencil, WordRoom& room, const VentScene& scene, Vec at) {
    const LiveDesk desk{pencil, room, scene.view};
    draw_dimension(desk, {{0, at.y}, at, std::nullopt}, scene.units);
    draw_dimension(desk, {{at.x, 0}, at, std::nullopt}, scene.units);
}

void words(BluePencil& pencil, WordRoom& room, Vec at, const QString& text) {
    const Vec size = pencil.plate_size(text);
    std::vector<Vec> middles;
    for (const double far : {20.0, 34.0, 52.0, 80.0})
        for (const Vec way : {Vec{0, -1}, Vec{0, 1}, Vec{1, 0}, Vec{-1, 0}})
            middles.push_back(at + Vec{way.x * (far + size.x / 2), way.y * far});
    pencil.words(text, room.place(middles, size));
}

void ring(BluePencil& pencil, Vec at, double wide) {
    pencil.line(sheets::circle(at, ring_px), wide);
    pencil.line(sheets::circle(at, ring_px / 2), 1.25);
}

void trial(BluePencil& pencil, WordRoom& room, const VentScene& scene) {
    const auto& tried = *scene.trial->tried;
    const auto& vents = tried.vented.vents;
    const auto px = [&](Vec mm) { return vec(scene.view.to_px(mm)); };
    pencil.line(sheets::circle(px(scene.trial->from), ghost_px), 1, {4, 3});
    for (const air::Vent& vent : scene.air.vented.vents) // those that go
        if (!stands_in(vents, vent.at)) pencil.line(sheets::circle(px(vent.at), ghost_px), 1, {4, 3});
    for (std::size_t i = 0; i < vents.size(); ++i) { // and those that come
        const bool dragged = i == scene.trial->index;
        if (dragged || !stands_in(scene.air.vented.vents, vents[i].at))
            ring(pencil, px(vents[i].at), dragged ? 2.2 : 1.25);
    }
    const Vec at = vents[scene.trial->index].at;
    dimensions(pencil, room, scene, at);
    const auto& pockets = tried.model->map().pockets;
    for (std::size_t i = 0; i < pockets.size(); ++i) {
        if (tried.vented.shares_ml[i] <= air::vented_ml) continue;
        pencil.line(sheets::circle(px(pockets[i].at), 2 * ring_px), 1.8);
        words(pencil, room, px(pockets[i].at) + Vec{0, ring_px},
              Words::keeps(tried.vented.shares_ml[i], scene.units));
    }
    words(pencil, room, px(at), trial_words(tried, scene.trial->index, scene.units));
}

} // namespace

QString trial_words(const air::Answer& tried, std::size_t dragged, job::DisplayUnits units) {
    const air::Vent& vent = tried.vented.vents[dragged];
    if (air::on_strip(vent.at, vent.diameter_mm, tried.vents_in.clear)) return Words::on_stiffener();
    const double meat = air::meat_mm(vent.at, vent.diameter_mm, tried.vents_in.clear);
    if (meat < air::meat_diameters * vent.diameter_mm) return Words::thin(meat, units);
    int places = 0;
    double ml = 0;
    for (const double share : tried.vented.shares_ml)
        if (share > air::vented_ml) ++places, ml += share;
    return places == 0 ? Words::all_out() : Words::some(places, ml, units);
}

sheets::Inks vent_ink(const VentScene& scene) {
    BluePencil pencil(scene.theme);
    WordRoom room(scene.taken, {{0, 0}, {scene.size.width(), scene.size.height()}});
    if (scene.trial) {
        trial(pencil, room, scene);
        return pencil.take();
    }
    const auto& vents = scene.air.vented.vents;
    const auto px = [&](std::size_t i) { return vec(scene.view.to_px(vents[i].at)); };
    if (scene.chosen) {
        dimensions(pencil, room, scene, vents[*scene.chosen].at);
        ring(pencil, px(*scene.chosen), 2.2);
    }
    if (scene.hovered && *scene.hovered < vents.size() && scene.hovered != scene.chosen)
        pencil.line(sheets::circle(px(*scene.hovered), ring_px), 1);
    return pencil.take();
}

} // namespace drawercast::app
