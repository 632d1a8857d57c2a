// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/drawer.h"

#include "job/edit.h"
#include "layout/checks.h"

#include "arrange/parted.h"

#include <algorithm>
#include <set>

namespace drawercast::arrange {

namespace {

using job::Drawer;
using job::Job;
using job::Object;

constexpr double grain_mm = 2e-5;  ///< places in a job are rounded to a millionth of a millimeter
constexpr double traced_mm = 2e-3; ///< what chords of a round edge may hide

bool upright_box(const layout::Insert& insert) {
    if (insert.edges.size() != 1) return false;
    const auto& edge = insert.edges[0].contour;
    if (edge.round_mm != 0 || edge.core.size() != 4) return false;
    return std::all_of(edge.core.begin(), edge.core.end(), [&](shape::Vec p) {
        return (p.x == insert.box.min.x || p.x == insert.box.max.x) &&
               (p.y == insert.box.min.y || p.y == insert.box.max.y);
    });
}

Room room_of(const layout::Insert& insert, const layout::Minimums& minimums) {
    Room room;
    room.box = insert.box;
    double more = grain_mm;
    if (!upright_box(insert)) {
        more = traced_mm;
        for (const auto& edge : insert.edges) room.rings.push_back(shape::traced(edge.contour));
    }
    room.wall_mm = [minimums](double a, double b) { return minimums.wall(std::min(a, b)) + grain_mm; };
    room.edge_mm = [minimums, more](double depth) { return minimums.edge(depth) + more; };
    return room;
}

/// How many of each object are placed nowhere, as one entry each.
std::vector<const Object*> not_placed(const Job& job) {
    std::vector<const Object*> out;
    for (const auto& object : job.objects) {
        int count = object->count;
        for (const auto& drawer : job.drawers)
            for (const auto& pocket : drawer->pockets) count -= pocket.object == object->id;
        for (; count > 0; --count) out.push_back(&*object);
    }
    return out;
}

Expected<layout::PocketForm> form_of(const Job& job, const Drawer& drawer, const Object& object,
                                     const std::vector<job::Notch>& notches) {
    return layout::pocket_form(object, notches, layout::fit_of(object, job.foam->firmness), drawer.insert_mm);
}

Figure figure_of(const layout::PocketForm& form) {
    Figure figure;
    for (const auto& cut : form.cuts) figure.parts.push_back({cut.outline.contour, cut.depth_mm});
    figure.turns_deg = {0, 90, 180, 270};
    return figure;
}

/// One drawer's question: what stands first, then what is new.
struct Question {
    Room room;
    std::vector<Figure> figures;
    std::vector<const job::Pocket*> standing;
    std::vector<const Object*> fresh;
};

Question question_of(const Job& job, const Drawer& drawer, const layout::Insert& insert) {
    Question question;
    question.room = room_of(insert, layout::minimums_of(job.minimums, job.foam->firmness));
    for (const auto& pocket : drawer.pockets) {
        const Object* object = job::find_object(job, pocket.object);
        if (object == nullptr) continue;
        const auto form = form_of(job, drawer, *object, pocket.notches);
        if (!form) continue;
        question.figures.push_back(figure_of(*form));
        question.figures.back().turns_deg.insert(question.figures.back().turns_deg.begin(),
                                                 pocket.pose.turn_deg);
        question.standing.push_back(&pocket);
    }
    for (const Object* object : not_placed(job)) {
        const auto form = form_of(job, drawer, *object, {});
        if (!form || form->cuts.empty()) continue;
        question.figures.push_back(figure_of(*form));
        question.fresh.push_back(object);
    }
    return question;
}

/// Subjects that a wall or an edge is not enough for, or that lie over something.
std::set<std::string> troubled(const Job& job, const Drawer& drawer,
                               std::shared_ptr<const layout::Insert> insert) {
    std::vector<layout::Standing> standing;
    for (const auto& pocket : drawer.pockets) {
        const Object* object = job::find_object(job, pocket.object);
        if (object == nullptr) continue;
        auto form = form_of(job, drawer, *object, pocket.notches);
        if (!form) continue;
        const auto shared = std::make_shared<const layout::PocketForm>(std::move(*form));
        standing.push_back({std::make_shared<const layout::PlacedPocket>(layout::place(pocket, shared)),
                            std::make_shared<const layout::ObjectFacts>(layout::facts_of(*object))});
    }
    std::set<std::string> out;
    for (const auto& check :
         layout::layout_checks(standing, layout::limits_of(job, drawer, std::move(insert)))) {
        using layout::Code;
        if (check.code == Code::wall_thin || check.code == Code::edge_thin || check.code == Code::overlap ||
            check.code == Code::outside || check.code == Code::obstructed)
            out.insert(check.subjects.begin(), check.subjects.end());
    }
    return out;
}

Job with_answer(Job job, const std::string& drawer, const Question& question, const Parted& parted,
                std::vector<std::string>& made) {
    const std::size_t old = question.standing.size();
    std::vector<job::Placement> moves;
    for (std::size_t i = 0; i < question.figures.size(); ++i) {
        const Stand& stand = parted.stands[i];
        const shape::Pose pose{stand.at, question.figures[i].turns_deg[stand.turn]};
        if (i < old) {
            if (pose != question.standing[i]->pose)
                moves.push_back({job::subject_of(*question.standing[i]), pose});
        } else if (!parted.out[i]) {
            made.emplace_back();
            job = job::placed(std::move(job), drawer, question.fresh[i - old]->id, pose, &made.back());
        }
    }
    return moves.empty() ? job : job::posed(std::move(job), moves);
}

/// New pockets that a check finds fault with go again; nothing where pockets that stood there got worse.
std::optional<Arranged> verified(const Job& before, Job job, const std::string& id,
                                 const std::shared_ptr<const layout::Insert>& insert,
                                 std::vector<std::string> made) {
    const auto old_trouble = troubled(before, *job::find_drawer(before, id), insert);
    for (;;) {
        const auto trouble = troubled(job, *job::find_drawer(job, id), insert);
        const auto bad = std::find_if(made.rbegin(), made.rend(),
                                      [&](const std::string& subject) { return trouble.count(subject) > 0; });
        if (bad == made.rend()) {
            const bool worse = std::any_of(trouble.begin(), trouble.end(), [&](const std::string& subject) {
                return old_trouble.count(subject) == 0;
            });
            if (worse) return std::nullopt;
            break;
        }
        job = job::removed(std::move(job), {*bad});
        made.erase(std::next(bad).base());
    }
    Arranged out{std::move(job), static_cast<int>(made.size()), 0};
    out.left = static_cast<int>(not_placed(out.job).size());
    return out;
}

std::optional<Arranged> tried(const Job& job, const Drawer& drawer,
                              const std::shared_ptr<const layout::Insert>& insert, bool may_move,
                              const Budget& budget, const Watch& watch) {
    const Question question = question_of(job, drawer, *insert);
    Crowd crowd{question.room, {}, {}, {}};
    for (const Figure& figure : question.figures) crowd.figures.push_back(turned(figure));
    for (const job::Pocket* pocket : question.standing) {
        crowd.standing.push_back({pocket->pose.at, 0});
        crowd.fixed.push_back(pocket->locked || !may_move);
    }
    const Parted parted = all_parted(crowd, budget, watch);
    std::vector<std::string> made;
    Job after = with_answer(job, drawer.id, question, parted, made);
    return verified(job, std::move(after), drawer.id, insert, std::move(made));
}

} // namespace

Arranged arranged(const Job& job, const std::string& id, const Budget& budget, const Watch& watch) {
    Arranged best{job, 0, static_cast<int>(not_placed(job).size())};
    const Drawer* drawer = job::find_drawer(job, id);
    if (drawer == nullptr || best.left == 0) return best;
    auto insert = layout::insert_of(*drawer, layout::gap_of(*drawer, job.foam->firmness));
    if (!insert) return best;
    const auto shared = std::make_shared<const layout::Insert>(std::move(*insert));
    const bool loose = std::any_of(drawer->pockets.begin(), drawer->pockets.end(),
                                   [](const job::Pocket& pocket) { return !pocket.locked; });
    const double first = loose ? 0.5 : 1; // share of the watch
    Budget part = budget;
    if (loose) part.evaluations /= 2;
    const auto early = [&](double done) { return watch(done * first); };
    if (auto found = tried(job, *drawer, shared, false, part, early)) best = std::move(*found);
    if (best.left == 0 || !loose) return best;
    const auto late = [&](double done) { return watch(0.5 + done / 2); };
    auto found = tried(job, *drawer, shared, true, part, late);
    if (found && found->placed > best.placed) best = std::move(*found);
    return best;
}

Arranged arranged(const Job& job, const Budget& budget, const Watch& watch) {
    Arranged all{job, 0, static_cast<int>(not_placed(job).size())};
    for (std::size_t i = 0; i < job.drawers.size() && all.left > 0; ++i) {
        const double count = static_cast<double>(job.drawers.size());
        const auto within = [&](double done) { return watch((static_cast<double>(i) + done) / count); };
        Arranged one = arranged(all.job, job.drawers[i]->id, budget, within);
        all = {std::move(one.job), all.placed + one.placed, one.left};
    }
    return all;
}

} // namespace drawercast::arrange
