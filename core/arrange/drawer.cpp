// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/drawer.h"

#include "arrange/parted.h"
#include "arrange/standing.h"
#include "job/edit.h"
#include "layout/checks.h"

#include <algorithm>
#include <cmath>
#include <memory>
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

/// The turns thrown for what may stand at any angle; the search goes on from them to any between (our guess).
constexpr int free_turns = 24;

std::vector<double> turns_of(job::Turns turns) {
    switch (turns) {
    case job::Turns::none:
        return {0};
    case job::Turns::quarter:
        return {0, 90, 180, 270};
    case job::Turns::half:
        return {0, 180};
    case job::Turns::free:
        break;
    }
    std::vector<double> all;
    for (int k = 0; k < free_turns; ++k) all.push_back(k * 360.0 / free_turns);
    return all;
}

Figure figure_of(const layout::PocketForm& form, std::vector<double> turns_deg) {
    Figure figure;
    for (const auto& cut : form.cuts) figure.parts.push_back({cut.outline.contour, cut.depth_mm});
    figure.turns_deg = std::move(turns_deg);
    return figure;
}

/// What stands has its own turn first, the others counted from it where only some are allowed, so that a
/// pocket put askew by hand stays as askew.
std::vector<double> turns_of_standing(const job::Pocket& pocket, job::Turns turns) {
    const double own = pocket.pose.turn_deg;
    if (turns == job::Turns::none || pocket.locked) return {own};
    std::vector<double> all{own};
    for (const double turn : turns_of(turns))
        if (turn != 0 || turns == job::Turns::free)
            all.push_back(std::fmod(turn + (turns == job::Turns::free ? 0 : own), 360.0));
    return all;
}

/// What is too long for the room at each of the turns thrown may still fit between them: aslant, in a drawer
/// shorter than it. Then the quarters of a degree at which it does, if any.
std::vector<double> turns_that_fit(const Figure& figure, const Room& room) {
    const auto turned_figures = turned(figure);
    const auto fits = [&](const TurnedFigure& one) { return !origins(room, one).empty(); };
    if (std::any_of(turned_figures.begin(), turned_figures.end(), fits)) return figure.turns_deg;
    std::vector<double> out;
    for (int k = 0; k < 4 * 360; ++k)
        if (fits(turned_by(turned_figures[0], k / 4.0))) out.push_back(k / 4.0);
    return out.empty() ? figure.turns_deg : out;
}

/// One drawer's question: what stands first, then what is new.
struct Question {
    Room room;
    std::vector<Figure> figures;
    std::vector<const job::Pocket*> standing;
    std::vector<const Object*> fresh;
    std::vector<bool> any_angle; ///< of all figures
};

Question question_of(const Job& job, const Drawer& drawer, const layout::Insert& insert) {
    Question question;
    question.room = room_of(insert, layout::minimums_of(job.minimums, job.foam->firmness));
    for (const auto& pocket : drawer.pockets) {
        const Object* object = job::find_object(job, pocket.object);
        if (object == nullptr) continue;
        const auto form = form_of(job, drawer, *object, pocket.notches);
        if (!form) continue;
        question.figures.push_back(figure_of(*form, turns_of_standing(pocket, object->turns)));
        question.standing.push_back(&pocket);
        question.any_angle.push_back(object->turns == job::Turns::free && !pocket.locked);
    }
    for (const Object* object : not_placed(job)) {
        const auto form = form_of(job, drawer, *object, {});
        if (!form || form->cuts.empty()) continue;
        question.figures.push_back(figure_of(*form, turns_of(object->turns)));
        if (object->turns == job::Turns::free)
            question.figures.back().turns_deg = turns_that_fit(question.figures.back(), question.room);
        question.fresh.push_back(object);
        question.any_angle.push_back(object->turns == job::Turns::free);
    }
    return question;
}

/// Subjects that a wall or an edge is not enough for, or that lie over something.
std::set<std::string> troubled(const Job& job, const Drawer& drawer,
                               std::shared_ptr<const layout::Insert> insert) {
    std::set<std::string> out;
    const auto limits = layout::limits_of(job, drawer, std::move(insert));
    for (const auto& check : layout::layout_checks(standing_in(job, drawer), limits))
        if (about_place(check)) out.insert(check.subjects.begin(), check.subjects.end());
    return out;
}

/// The job with its pockets where the search has them.
struct Answer {
    Job job;
    std::vector<std::string> made;
    int moved = 0;
};

Answer with_answer(Job job, const std::string& drawer, const Question& question, const Parted& parted) {
    std::vector<std::string> made;
    const std::size_t old = question.standing.size();
    std::vector<job::Placement> moves;
    for (std::size_t i = 0; i < question.figures.size(); ++i) {
        const Stand& stand = parted.stands[i];
        const double turn_deg = question.figures[i].turns_deg[stand.turn];
        // A sum is no longer the turn that was asked for in the last digit: only where there is one.
        const shape::Pose pose{
            stand.at, stand.further_deg == 0 ? turn_deg : std::fmod(turn_deg + stand.further_deg + 360, 360)};
        if (i < old) {
            if (pose != question.standing[i]->pose)
                moves.push_back({job::subject_of(*question.standing[i]), pose});
        } else if (!parted.out[i]) {
            made.emplace_back();
            job = job::placed(std::move(job), drawer, question.fresh[i - old]->id, pose, &made.back());
        }
    }
    if (!moves.empty()) job = job::posed(std::move(job), moves);
    return {std::move(job), std::move(made), static_cast<int>(moves.size())};
}

/// New pockets that a check finds fault with go again; nothing where pockets that stood there got worse.
std::optional<Arranged> verified(const std::set<std::string>& old_trouble, Answer answer,
                                 const std::string& id, const std::shared_ptr<const layout::Insert>& insert) {
    Job job = std::move(answer.job);
    std::vector<std::string> made = std::move(answer.made);
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
    Arranged out{std::move(job), static_cast<int>(made.size()), answer.moved, 0};
    out.left = static_cast<int>(not_placed(out.job).size());
    return out;
}

/// One drawer of one job, asked about once with what stands fixed, once with it free.
class Asked {
  public:
    Asked(const Job& job, const Drawer& drawer, layout::Insert insert)
        : job_(job), drawer_(drawer), insert_(std::make_shared<const layout::Insert>(std::move(insert))),
          question_(question_of(job, drawer, *insert_)), trouble_(troubled(job, drawer, insert_)) {
        for (const Figure& figure : question_.figures) figures_.push_back(turned(figure));
    }

    bool in_order() const { return trouble_.empty(); }

    std::optional<Arranged> tried(bool may_move, const Budget& budget, const Watch& watch,
                                  const Tell& tell) const {
        Crowd crowd{question_.room, figures_, {}, {}, question_.any_angle};
        for (const job::Pocket* pocket : question_.standing) {
            crowd.standing.push_back({pocket->pose.at, 0});
            crowd.fixed.push_back(pocket->locked || !may_move);
        }
        const auto said = [&](const Parted& parted) {
            if (const auto found = checked(parted)) tell(*found);
        };
        return checked(all_parted(crowd, budget, watch, said));
    }

  private:
    std::optional<Arranged> checked(const Parted& parted) const {
        return verified(trouble_, with_answer(job_, drawer_.id, question_, parted), drawer_.id, insert_);
    }

    const Job& job_;
    const Drawer& drawer_;
    std::shared_ptr<const layout::Insert> insert_;
    Question question_;
    std::set<std::string> trouble_;
    std::vector<std::vector<TurnedFigure>> figures_;
};

Budget half(Budget budget) {
    budget.evaluations /= 2;
    return budget;
}

} // namespace

int not_placed_yet(const Job& job) { return static_cast<int>(not_placed(job).size()); }

Arranged arranged(const Job& job, const std::string& id, Moving moving, const Budget& budget,
                  const Watch& watch, const Tell& tell) {
    Arranged best{job, 0, 0, not_placed_yet(job)};
    const Drawer* drawer = job::find_drawer(job, id);
    if (drawer == nullptr) return best;
    auto insert = layout::insert_of(*drawer, layout::gap_of(*drawer, job.foam->firmness));
    if (!insert) return best;
    const bool loose = std::any_of(drawer->pockets.begin(), drawer->pockets.end(),
                                   [](const job::Pocket& pocket) { return !pocket.locked; });
    if (!loose) moving = Moving::none;
    const Asked asked(job, *drawer, std::move(*insert));
    if (best.left == 0 && (moving != Moving::unlocked || asked.in_order())) return best;
    const auto take = [&](const std::optional<Arranged>& found) {
        if (!found || found->placed < best.placed || (found->placed == best.placed && found->moved == 0))
            return;
        if (found->placed == best.placed && best.placed > 0) return;
        best = *found;
        tell(best);
    };
    if (moving == Moving::unlocked) {
        take(asked.tried(true, budget, watch, take));
        return best;
    }
    const bool twice = moving == Moving::unlocked_if_needed;
    const auto early = [&](double done) { return watch(twice ? done / 2 : done); };
    take(asked.tried(false, twice ? half(budget) : budget, early, take));
    if (best.left == 0 || !twice) return best;
    take(asked.tried(
        true, half(budget), [&](double done) { return watch(0.5 + done / 2); }, take));
    return best;
}

Arranged arranged(const Job& job, Moving moving, const Budget& budget, const Watch& watch, const Tell& tell) {
    Arranged all{job, 0, 0, not_placed_yet(job)};
    const auto with = [](const Arranged& before, Arranged one) {
        one.placed += before.placed;
        one.moved += before.moved;
        return one;
    };
    for (std::size_t i = 0; i < job.drawers.size() && all.left > 0; ++i) {
        const double count = static_cast<double>(job.drawers.size());
        const auto within = [&](double done) { return watch((static_cast<double>(i) + done) / count); };
        Budget share = budget; // else a drawer that is too small would leave no time to the next
        share.evaluations /= job.drawers.size();
        const auto told = [&](const Arranged& one) { tell(with(all, one)); };
        all = with(all, arranged(all.job, job.drawers[i]->id, moving, share, within, told));
    }
    return all;
}

std::vector<Trial> each_drawer(const Job& job, const Budget& budget, const Watch& watch) {
    struct Sized {
        Trial trial;
        double area_mm2;
    };
    std::vector<Sized> tried;
    const double count = static_cast<double>(job.drawers.size());
    for (std::size_t i = 0; i < job.drawers.size(); ++i) {
        const Drawer& drawer = *job.drawers[i];
        const auto insert = layout::insert_of(drawer, layout::gap_of(drawer, job.foam->firmness));
        const auto within = [&](double done) { return watch((static_cast<double>(i) + done) / count); };
        Budget share = budget;
        share.evaluations = static_cast<std::uint64_t>(static_cast<double>(budget.evaluations) / count);
        tried.push_back({{drawer.id, arranged(job, drawer.id, Moving::none, share, within)},
                         insert ? insert->area_mm2 : 0});
    }
    std::stable_sort(tried.begin(), tried.end(), [](const Sized& a, const Sized& b) {
        const int more = a.trial.arranged.placed - b.trial.arranged.placed;
        return more != 0 ? more > 0 : a.area_mm2 < b.area_mm2;
    });
    std::vector<Trial> out;
    for (Sized& one : tried) out.push_back(std::move(one.trial));
    return out;
}

} // namespace drawercast::arrange
