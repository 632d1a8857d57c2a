// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/pictures.h"

#include "plan/foam_in_mold.h"

#include "forms/drawer_picture.h"
#include "forms/object_picture.h"
#include "forms/rise_plot.h"
#include "guide/demo.h"
#include "guide/framing.h"
#include "language/spoken.h"
#include "print/templates.h"
#include "sheets/box_and_cuts.h"
#include "sheets/build_up.h"
#include "sheets/drawer_plan.h"
#include "sheets/pattern_board.h"
#include "sheets/pour_plot.h"
#include "sheets/pressure_plate.h"
#include "sheets/squeeze_plot.h"

#include <algorithm>

namespace drawercast::app::guide {

namespace {

/// Of what is printed in the guide no clock is known.
const print::Printing& undated() {
    static const print::Printing printing{QStringLiteral("Drawercast"), {}};
    return printing;
}

std::optional<QImage> drawer_plan(const Demo& demo, const PictureLook& look) {
    return framed(sheets::drawer_plan(demo.job(), demo.drawer(), demo.drawer_plan()), look);
}

std::optional<QImage> thin_wall(const Demo& demo, const PictureLook& look) {
    const auto& thin = demo.thin();
    if (!thin) return std::nullopt;
    auto sheet = sheets::drawer_plan(thin->job, *thin->job.drawers.front(), thin->plan.drawers.front());
    constexpr double around_mm = 55;
    sheet.area = shape::Box{};
    sheet.area.add(*thin->check.at);
    sheet.area = sheet.area.grown(around_mm);
    sheet.area.min.x -= around_mm; // wider than high
    sheet.area.max.x += around_mm;
    sheet.lower_room_px = sheet.upper_room_px = {};
    return framed(sheet, look);
}

std::optional<QImage> object(const Demo& demo, const PictureLook& look) {
    const auto& objects = demo.job().objects;
    // one with levels shows most
    const auto stepped = std::max_element(objects.begin(), objects.end(), [](const auto& a, const auto& b) {
        return a->levels.size() < b->levels.size();
    });
    ObjectPicture widget(form_context(demo.job()));
    widget.set_object(**stepped);
    return grabbed(widget, {look.width_px, look.width_px * 3 / 4}, look);
}

std::optional<QImage> drawer(const Demo& demo, const PictureLook& look) {
    DrawerPicture widget(form_context(demo.job()));
    widget.set_drawer(demo.drawer());
    return grabbed(widget, {look.width_px, look.width_px * 3 / 5}, look);
}

std::optional<QImage> board(const Demo& demo, const PictureLook& look) {
    const auto board = plan::pattern_board(demo.job(), demo.drawer_plan());
    if (!board) return std::nullopt;
    const auto& air = demo.drawer_plan().air;
    return framed(air ? sheets::pour_board(demo.job(), *board, air->model->map().pour)
                      : sheets::pattern_board(demo.job(), *board, sheets::Finish::washed),
                  look);
}

std::optional<QImage> rise(const Demo& demo, const PictureLook& look) {
    const auto label = plan::profile_today(demo.job());
    if (!label) return std::nullopt;
    RisePlot widget;
    widget.set_profiles(*label, std::nullopt);
    return grabbed(widget, {look.width_px, look.width_px * 2 / 5}, look);
}

std::optional<QImage> plate(const Demo& demo, const PictureLook& look) {
    return framed(sheets::pressure_plate(demo.job(), demo.drawer_plan(), sheets::Finish::washed,
                                         sheets::PlateGround::lift),
                  look);
}

std::optional<QImage> air(const Demo& demo, const PictureLook& look) {
    return framed(sheets::pressure_plate(demo.job(), demo.drawer_plan(), sheets::Finish::washed,
                                         sheets::PlateGround::arrival),
                  look);
}

std::optional<QImage> cuts(const Demo& demo, const PictureLook& look) {
    return framed(sheets::box_and_cuts(demo.job(), *demo.plan().stock, demo.drawer().id), look);
}

std::optional<QImage> closing(const Demo& demo, const PictureLook& look) {
    return charted([&](shape::Vec mm) { return sheets::pour_plot(demo.job(), demo.drawer_plan(), mm); },
                   look);
}

std::optional<QImage> squeeze(const Demo& demo, const PictureLook& look) {
    return charted(
        [&](shape::Vec mm) { return sheets::squeeze_plot(demo.job(), *demo.drawer_plan().air, mm); }, look);
}

std::optional<QImage> build_up(const Demo& demo, const PictureLook& look) {
    const auto in = sheets::build_up_of(demo.job(), demo.drawer_plan());
    if (!in) return std::nullopt;
    const auto mold = sheets::seen_mold(*in, {45, 0});
    double per_mm = 1; // names are as large at any scale: a first picture tells it
    for (int round = 0; round < 3; ++round) per_mm = scale_of(sheets::build_up(mold, per_mm), look);
    return framed(sheets::build_up(mold, per_mm), look);
}

std::optional<QImage> page_named(const std::vector<print::Page>& pages, const QString& name,
                                 const PictureLook& look) {
    const auto found =
        std::find_if(pages.begin(), pages.end(), [&](const auto& page) { return page.name.contains(name); });
    if (found == pages.end()) return std::nullopt;
    return paged(*found, look);
}

std::optional<QImage> tile(const Demo& demo, const PictureLook& look) {
    print::TemplateChoice choice;
    choice.only = print::TemplateKind::pattern_board;
    if (demo.job().display_units != job::DisplayUnits::mm) choice.paper = print::Paper::letter;
    const auto pages = print::template_pages(demo.job(), demo.plan(), choice, undated());
    return page_named(pages, QStringLiteral("A1"), look);
}

struct Entry {
    const char* name;
    bool slow; ///< waits for the long part of the answer
    std::optional<QImage> (*draw)(const Demo&, const PictureLook&);
};

constexpr std::array entries{
    Entry{"object", false, object},       Entry{"drawer", false, drawer},  Entry{"plan", false, drawer_plan},
    Entry{"thin-wall", false, thin_wall}, Entry{"board", false, board},    Entry{"rise", false, rise},
    Entry{"build-up", true, build_up},    Entry{"air", true, air},         Entry{"squeeze", true, squeeze},
    Entry{"plate", true, plate},          Entry{"closing", true, closing}, Entry{"cuts", true, cuts},
    Entry{"template-tile", false, tile},
};

} // namespace

QStringList picture_names() {
    QStringList names;
    for (const auto& entry : entries) names << QString::fromLatin1(entry.name);
    return names;
}

std::optional<QImage> picture(const QString& name, const Demo& demo, const PictureLook& look) {
    for (const auto& entry : entries) {
        if (name != QLatin1String(entry.name)) continue;
        if (entry.slow && !demo.built())
            return waiting(language::tr("This picture is being worked out…"), look);
        return entry.draw(demo, look);
    }
    return std::nullopt;
}

} // namespace drawercast::app::guide
