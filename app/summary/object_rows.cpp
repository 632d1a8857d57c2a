// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/object_rows.h"

#include "language/in_words.h"
#include "language/say.h"
#include "language/spoken.h"
#include "sheets/depth_ladder.h"
#include "sheets/object_keys.h"
#include "sheets/pocket_labels.h"
#include "sheets/view.h"

#include <algorithm>
#include <cmath>

namespace drawercast::summary {

using sheets::Align;

namespace {

QString size_of(const job::Lying& lying, job::DisplayUnits units) {
    double length = 0, diameter = 0;
    for (const auto& cylinder : lying.cylinders) {
        length += cylinder.length_mm;
        diameter = std::max(diameter, cylinder.diameter_mm);
    }
    return language::say_length_bare(length, units) + QStringLiteral(" × ⌀") +
           language::say_length_bare(diameter, units);
}

const shape::Given* outline_of(const job::Level& level) {
    if (const auto* sunk = std::get_if<job::Sunk>(&level.form)) return &sunk->outline;
    if (const auto* through = std::get_if<job::Through>(&level.form)) return &through->outline;
    return nullptr;
}

/// The object's outlines in one box of the table, filled by depth.
void sketch(sheets::Inks& inks, const Box& box, const layout::PocketForm& form, double full_mm,
            const theme::Theme& theme) {
    Box all;
    for (const auto& cut : form.cuts)
        if (cut.kind == layout::Cut<shape::InObject>::Kind::level)
            all.add(shape::bounds(cut.outline.contour));
    if (all.empty()) return;
    sheets::View view;
    view.medium = theme::Medium::paper;
    view.per_mm = std::min(box.width() / all.width(), box.height() / all.height());
    view.origin = box.center() + Vec{-all.center().x, all.center().y} * view.per_mm;
    for (const std::size_t i : sheets::by_depth(form.cuts)) {
        const auto& cut = form.cuts[i];
        if (cut.kind != layout::Cut<shape::InObject>::Kind::level) continue;
        const sheets::Path path = view(sheets::path_of(cut.outline.contour));
        inks.push_back(sheets::Fill{path, theme.depth_wash(cut.depth_mm / full_mm)});
        inks.push_back(sheets::Stroke{path, {theme.ink, 0.7, {}}});
    }
}

QString grip_words(const std::vector<layout::Feel>& feels, const std::string& object) {
    QStringList words;
    for (const auto& feel : feels) {
        if (feel.subject.substr(0, feel.subject.find('#')) != object) continue;
        if (const QString grip = in_words(layout::words_of(feel.grip)); !words.contains(grip)) words << grip;
    }
    return words.join(QStringLiteral(", "));
}

int pockets_of(const job::Drawer& drawer, const std::string& object) {
    return static_cast<int>(std::count_if(drawer.pockets.begin(), drawer.pockets.end(),
                                          [&](const auto& pocket) { return pocket.object == object; }));
}

} // namespace

QString size_words(const job::Object& object, job::DisplayUnits units) {
    const auto say = [&](double mm) { return language::say_length_bare(mm, units); };
    const QString times = QStringLiteral(" × ");
    if (object.levels.size() == 1) {
        const auto& level = object.levels.front();
        if (const auto* lying = std::get_if<job::Lying>(&level.form)) return size_of(*lying, units);
        if (const auto* circle = std::get_if<shape::Circle>(outline_of(level)))
            return QStringLiteral("⌀") + say(circle->diameter_mm) + times + say(object.height_mm);
    }
    Box box;
    for (const auto& level : object.levels) {
        if (const auto* lying = std::get_if<job::Lying>(&level.form)) {
            double length = 0, diameter = 0;
            for (const auto& cylinder : lying->cylinders) {
                length += cylinder.length_mm;
                diameter = std::max(diameter, cylinder.diameter_mm);
            }
            const auto contour = shape::contour_of(shape::Rectangle{length, diameter, 0});
            if (contour) box.add(shape::bounds(shape::placed(*contour, level.pose)));
        } else if (const auto contour = shape::contour_of(*outline_of(level)))
            box.add(shape::bounds(shape::placed(*contour, level.pose)));
    }
    if (box.empty()) return {};
    return say(box.width()) + times + say(box.height()) + times + say(object.height_mm);
}

sheets::Table object_table(const Summary& summary, const job::Drawer& drawer, const plan::DrawerPlan& plan) {
    const auto units = summary.job.display_units;
    sheets::Table table;
    const auto fitted = [](const QString& head, Align align) {
        return sheets::Table::Column{head, align, 1, 0, true};
    };
    table.columns = {
        fitted(language::tr("key"), Align::left),    {{}, Align::left, 0, 20},
        {language::tr("object"), Align::left, 1, 0}, fitted(language::tr("size"), Align::left),
        fitted(language::tr("deep"), Align::right),  fitted(language::tr("weight"), Align::right),
        fitted(language::tr("hold"), Align::left),   fitted(language::tr("here"), Align::right)};
    const auto feels = plan::feel_of(summary.job, plan);
    const double full = sheets::ladder_full_mm(drawer.insert_mm, units);
    for (const auto& shared : summary.job.objects) {
        const job::Object& object = *shared;
        const int here = pockets_of(drawer, object.id);
        if (here == 0) continue;
        const layout::PocketForm* form = nullptr;
        for (const auto& pocket : plan.pockets)
            if (pocket->object == object.id && !form) form = pocket->form.get();
        QString deep = QStringLiteral("–");
        if (form) {
            const bool through = std::any_of(form->cuts.begin(), form->cuts.end(),
                                             [](const auto& cut) { return cut.through; });
            deep = through ? language::tr("through") : summary.said(form->greatest_depth_mm);
        }
        sheets::Table::Cell picture;
        if (form)
            picture.sketch = [form, full, &theme = summary.theme](sheets::Inks& inks, const Box& box) {
                sketch(inks, box, *form, full, theme);
            };
        table.rows.push_back(
            {{QString::fromStdString(sheets::object_key(summary.job, drawer, object.id)), true, {}},
             picture,
             {QString::fromStdString(object.name), true, {}},
             {size_words(object, units), false, {}},
             {deep, false, {}},
             {object.mass_g > 0 ? language::say_mass_g(object.mass_g, units) : QStringLiteral("–"),
              false,
              {}},
             {grip_words(feels, object.id), false, {}},
             {language::tr("%1 of %2").arg(here).arg(object.count), here != object.count, {}}});
    }
    return table;
}

} // namespace drawercast::summary
