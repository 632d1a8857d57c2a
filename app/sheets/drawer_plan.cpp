// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/drawer_plan.h"

#include "base/contains.h"
#include "plan/say.h"
#include "plan/sentences.h"
#include "shape/region.h"

#include "language/spoken.h"
#include "sheets/check_words.h"
#include "sheets/depth_ladder.h"
#include "sheets/edge_words.h"
#include "sheets/magnitude_ladder.h"
#include "sheets/object_keys.h"
#include "sheets/overall_size.h"
#include "sheets/pocket_labels.h"
#include "sheets/zones.h"

#include <algorithm>
#include <functional>

namespace drawercast::sheets {

using shape::InDrawer;
using theme::LineRole;
using theme::TextRole;
using theme::WashRole;
using Plan = Sheet<InDrawer>;
using Pen = Drafter<InDrawer>;

namespace {

constexpr double wall_mm = 12;      ///< how thick the drawer's wall is drawn; the job does not know it
constexpr double dimension_px = 34; ///< how far off that wall its dimensions stand

/// What is known of the drawer even where it has no insert.
shape::Outline<InDrawer> drawer_outline(const job::Drawer& drawer, const plan::DrawerPlan& plan) {
    if (plan.insert) return plan.insert->drawer;
    auto contour = shape::contour_of(drawer.outline);
    if (!contour) return {};
    const Box box = shape::bounds(*contour);
    return {shape::placed(*contour, {box.min * -1, 0})};
}

void add_wall(Pen& pen, const shape::Outline<InDrawer>& drawer) {
    const Box inner = shape::bounds(drawer.contour), outer = inner.grown(wall_mm);
    const Path wall = joined(path_of(outer), path_of(drawer.contour)); // even-odd: what lies between
    pen.put(PathMark{wall, std::nullopt, theme::Wash{WashRole::wall}});
    pen.put(HatchMark{wall, Hatch::wall});
    pen.put(PathMark{path_of(outer), LineRole::thin, std::nullopt});
}

void add_zones(Pen& pen, const Box& drawer, double zone_mm) {
    const auto tick = [&](Vec a, Vec b) { pen.put(PathMark{line(a, b), LineRole::soft, std::nullopt}); };
    const auto text = [&](Vec at, const std::string& word) {
        pen.put(TextMark{{at}, word, TextRole::zone, Side::center, 0, true});
    };
    const double out = wall_mm / 2;
    for (int i = 0, n = zone_count(drawer.width(), zone_mm); i < n; ++i) {
        const double from = drawer.min.x + i * zone_mm;
        const double to = i + 1 == n ? drawer.max.x : from + zone_mm;
        for (const double y : {drawer.min.y - out, drawer.max.y + out}) {
            text({(from + to) / 2, y}, std::to_string(i + 1));
            if (i > 0) tick({from, y - out}, {from, y + out});
        }
    }
    for (int i = 0, n = zone_count(drawer.height(), zone_mm); i < n; ++i) {
        const double from = drawer.min.y + i * zone_mm;
        const double to = i + 1 == n ? drawer.max.y : from + zone_mm;
        for (const double x : {drawer.min.x - out, drawer.max.x + out}) {
            text({x, (from + to) / 2}, zone_letter(i));
            if (i > 0) tick({x - out, from}, {x + out, from});
        }
    }
}

TextLine depth_line(const layout::Cut<InDrawer>& cut, const job::Job& job, TextRole role) {
    if (cut.through) return {language::tr("through").toStdString(), role, false};
    return {plan::say_length_bare(cut.depth_mm, job.display_units), role, true};
}

/// The hollows of one depth as they show: joined where there are several of it.
void add_equally_deep(Pen& pen, const std::vector<const layout::Cut<InDrawer>*>& cuts, LineRole line,
                      const theme::Wash& wash) {
    if (cuts.size() > 1) {
        std::vector<shape::Region> regions;
        for (const auto* cut : cuts) regions.push_back(shape::region_of(cut->outline.contour));
        if (const auto all = shape::united(regions)) return pen.edge(shape::Area<InDrawer>{*all}, line, wash);
    }
    for (const auto* cut : cuts) pen.edge(cut->outline, line, wash);
}

/// Edges from shallow to deep; a deeper hollow hides the edge of a shallower one that runs through it.
void add_pocket(Pen& pen, const layout::PlacedPocket& pocket, LineRole edge, LineRole step_edge,
                const std::function<theme::Wash(double)>& wash) {
    pen.turn_to(Layer::still, pocket.subject);
    const auto order = by_depth(pocket.cuts);
    for (std::size_t i = 0; i < order.size();) {
        const double depth = pocket.cuts[order[i]].depth_mm;
        std::vector<const layout::Cut<InDrawer>*> level;
        for (; i < order.size() && pocket.cuts[order[i]].depth_mm == depth; ++i)
            level.push_back(&pocket.cuts[order[i]]);
        const bool step = std::any_of(pocket.cuts.begin(), pocket.cuts.end(), [&](const auto& other) {
            return other.depth_mm < depth && level.size() == 1 &&
                   lies_within(level.front()->outline.contour, other.outline.contour);
        });
        add_equally_deep(pen, level, step ? step_edge : edge, wash(depth));
    }
}

struct LabelRoles {
    TextRole name, small, depth;
};

void add_labels(Pen& pen, const layout::PlacedPocket& pocket, const job::Job& job, const LabelRoles& roles,
                const std::string& key) {
    pen.turn_to(Layer::still, pocket.subject);
    const std::size_t named = named_cut(pocket.cuts);
    for (std::size_t i = 0; i < pocket.cuts.size(); ++i) {
        const auto& cut = pocket.cuts[i];
        const bool has_name = i == named;
        LabelMark label;
        label.tries = label_tries(has_name ? plan::subject_name(pocket.subject, job) : std::string(),
                                  has_name ? key : std::string(), depth_line(cut, job, roles.depth),
                                  roles.name, roles.small);
        if (cut.through && label.tries.back().back().depth_sign == false && key.empty())
            label.tries.push_back(
                {TextLine{plan::say_length_bare(cut.depth_mm, job.display_units), roles.small, true}});
        label.within = path_of(cut.outline.contour);
        for (const auto& other : pocket.cuts)
            if (other.depth_mm > cut.depth_mm) label.avoid.push_back(path_of(other.outline.contour));
        pen.put(std::move(label));
    }
}

/// What two overlapping pockets both want, hatched in red.
void add_shared(Pen& pen, const layout::Check& check, const plan::DrawerPlan& plan) {
    const layout::PlacedPocket *a = nullptr, *b = nullptr;
    for (const auto& pocket : plan.pockets)
        for (const auto& subject : check.subjects)
            if (pocket->subject == subject) (a ? b : a) = pocket.get();
    if (!a || !b) return;
    for (const auto& one : a->cuts)
        for (const auto& other : b->cuts) {
            const auto both =
                shape::shared(shape::region_of(one.outline.contour), shape::region_of(other.outline.contour));
            if (both && !both->empty()) pen.hatch(shape::Area<InDrawer>{*both}, Hatch::shared);
        }
}

void add_checks(Pen& pen, const job::Job& job, const plan::DrawerPlan& plan) {
    pen.turn_to(Layer::live);
    for (const auto& check : plan.checks)
        if (check.code == layout::Code::overlap) add_shared(pen, check, plan);
    int number = 0;
    for (const auto& check : plan.checks) {
        ++number;
        const auto at = place_of(check, plan);
        if (!at) continue;
        const CheckTag tag = tag_of(check, number, job);
        if (check.frame == layout::CheckFrame::drawer && check.at && check.to)
            pen.put(GapMark{*check.at, *check.to, tag});
        else
            pen.put(FlagMark{*at, tag});
    }
}

void add_plan_wash(Pen& pen, const layout::PlacedPocket& pocket, double full_mm) {
    add_pocket(pen, pocket, LineRole::pocket_edge, LineRole::thin, [full_mm](double depth_mm) {
        return theme::Wash{WashRole::depth, depth_mm / full_mm};
    });
}

void add_plan_words(Pen& pen, const layout::PlacedPocket& pocket, const job::Job& job,
                    const std::string& key) {
    add_labels(pen, pocket, job, {TextRole::name, TextRole::name_small, TextRole::depth}, key);
}

template <class Add>
std::vector<Mark> marks_of(const plan::DrawerPlan& plan, const std::vector<std::string>& subjects, Add add) {
    Plan sheet;
    Pen pen(sheet);
    for (const auto& pocket : plan.pockets)
        if (contains(subjects, pocket->subject)) add(pen, *pocket);
    return std::move(sheet.marks);
}

} // namespace

std::vector<Mark> pocket_washes(const job::Job& job, const job::Drawer& drawer, const plan::DrawerPlan& plan,
                                const std::vector<std::string>& subjects) {
    const double full = ladder_full_mm(drawer.insert_mm, job.display_units);
    return marks_of(plan, subjects, [&](Pen& pen, const auto& pocket) { add_plan_wash(pen, pocket, full); });
}

std::vector<Mark> pocket_words(const job::Job& job, const plan::DrawerPlan& plan,
                               const std::vector<std::string>& subjects) {
    return marks_of(plan, subjects,
                    [&](Pen& pen, const auto& pocket) { add_plan_words(pen, pocket, job, {}); });
}

std::vector<Mark> check_marks(const job::Job& job, const plan::DrawerPlan& plan) {
    Plan sheet;
    Pen pen(sheet);
    add_checks(pen, job, plan);
    return std::move(sheet.marks);
}

Plan drawer_plan(const job::Job& job, const job::Drawer& drawer, const plan::DrawerPlan& plan, Keys keys,
                 Zones zones) {
    Plan sheet;
    sheet.name = QT_TRANSLATE_NOOP("Sheets", "Drawer plan");
    Pen pen(sheet);
    const auto outline = drawer_outline(drawer, plan);
    const Box inner = shape::bounds(outline.contour);
    if (inner.empty()) return sheet;
    sheet.area = inner.grown(wall_mm);
    sheet.lower_room_px = {36, 68};
    sheet.upper_room_px = {6, 18};

    pen.turn_to(Layer::ground);
    add_wall(pen, outline);
    if (plan.insert) {
        pen.edge(plan.insert->area, LineRole::thin, theme::Wash{WashRole::face});
        for (const auto& obstruction : plan.insert->obstructions) {
            pen.edge(obstruction, LineRole::neighbor, theme::Wash{WashRole::paper});
            pen.hatch(obstruction, Hatch::obstruction);
        }
    }
    pen.edge(outline, LineRole::cavity_edge);
    if (zones == Zones::lettered) add_zones(pen, inner, zone_side_mm(job.display_units));
    add_edge_words(pen, sheet.area, EdgeWords::front_and_back);
    add_overall_size(pen, inner, job.display_units, {wall_mm, dimension_px, 0.5});
    const double full = ladder_full_mm(drawer.insert_mm, job.display_units);
    pen.put(LegendMark{{{sheet.area.max.x, sheet.area.min.y}, {-6 * 31 - 12, -42}},
                       Ladder::depth,
                       language::tr("depth").toStdString(),
                       depth_figures(full, job.display_units)});

    for (const auto& pocket : plan.pockets) add_plan_wash(pen, *pocket, full);
    for (const auto& pocket : plan.pockets)
        add_plan_words(pen, *pocket, job,
                       keys == Keys::letters ? object_key(job, drawer, pocket->object) : std::string());
    add_checks(pen, job, plan);
    return sheet;
}

Plan drawer_check(const job::Job& job, const job::Drawer& drawer, const plan::DrawerPlan& plan) {
    Plan sheet;
    sheet.name = QT_TRANSLATE_NOOP("Sheets", "Trial sheet");
    Pen pen(sheet);
    const auto outline = drawer_outline(drawer, plan);
    const Box inner = shape::bounds(outline.contour);
    if (inner.empty()) return sheet;
    sheet.area = inner.grown(edge_room_mm);

    pen.turn_to(Layer::ground);
    pen.edge(outline, LineRole::trace);
    if (plan.insert) {
        pen.edge(plan.insert->area, LineRole::under);
        for (const auto& obstruction : plan.insert->obstructions) pen.edge(obstruction, LineRole::neighbor);
    }
    add_edge_words(pen, inner, EdgeWords::drawer);
    add_overall_size(pen, inner, job.display_units);
    const auto paper = [](double) { return theme::Wash{WashRole::paper}; };
    for (const auto& pocket : plan.pockets) add_pocket(pen, *pocket, LineRole::trace, LineRole::trace, paper);
    for (const auto& pocket : plan.pockets)
        add_labels(pen, *pocket, job,
                   {TextRole::template_name, TextRole::template_small, TextRole::template_name}, {});
    return sheet;
}

} // namespace drawercast::sheets
