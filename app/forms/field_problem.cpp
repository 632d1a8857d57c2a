// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/field_problem.h"

#include "job/write.h"

#include "forms/problem_words.h"

namespace drawercast::app {

bool is_below(std::string_view path, std::string_view of) {
    return path.substr(0, of.size()) == of && (path.size() == of.size() || path[of.size()] == '/');
}

FieldProblems problems_of(const job::Job& job, std::string_view base) {
    const auto text = job::checked_text(job);
    FieldProblems found;
    if (text) return found;
    for (const Problem& problem : text.error()) {
        const std::string& path = problem.where.name;
        found.push_back(
            {is_below(path, base) ? path.substr(base.size()) : std::string(), problem_words(problem)});
    }
    return found;
}

FieldProblems taken_below(FieldProblems& problems, std::string_view path) {
    FieldProblems taken;
    FieldProblems left;
    for (FieldProblem& problem : problems) {
        if (!is_below(problem.path, path)) {
            left.push_back(std::move(problem));
            continue;
        }
        problem.path.erase(0, path.size());
        taken.push_back(std::move(problem));
    }
    problems = std::move(left);
    return taken;
}

} // namespace drawercast::app
