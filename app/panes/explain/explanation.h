// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <optional>
#include <vector>

namespace drawercast::app::explain {

/// Where a term of a formula is changed.
enum class Input {
    constant, ///< nowhere: a rule of this program
    figure,   ///< another figure of the answer, with an explanation of its own
    overpack, ///< the gauge in the Foam pane
    foam,
    shop,
    drawer,
    pockets, ///< on the drawer plan
    mold,    ///< the job's mold settings
};

/// One term of a formula, in the unit it is shown in.
struct Term {
    QString key; ///< in the formula's braces
    QString name;
    double value = 0;
    QString unit; ///< "mL"; empty: a bare number
    Input input = Input::constant;
    QString note; ///< where it comes from; for Input::figure: the id of that figure
};

/// What a formula gives, as it is shown: "862" "mL". The digits say to how many places.
struct Result {
    QString digits; ///< with a point: they are reckoned with
    QString unit;
    QString prefix;         ///< "×" of a rise
    QString figure() const; ///< the digits with the language's decimal mark
    QString text() const { return prefix + figure() + (unit.isEmpty() ? unit : u' ' + unit); }
};
/// "862 mL" taken apart.
Result result_of(const std::string& said);

/// One formula with its terms and what comes of it.
struct Line {
    QString name;
    QString formula; ///< see formula.h
    std::vector<Term> terms;
    Result result;
};

/// How a figure comes about. The first line gives the figure itself; more lines give terms of it.
struct Explanation {
    QString rule; ///< for what is no formula, or beside it
    std::vector<Line> lines;
    QString source; ///< published, or "common practice, no source", or "our guess"
    QString limits; ///< what it leaves out
};

/// "(1 + overpack) × what the mold holds / rise"
QString in_words(const Line& line);

/// What the formula gives with all digits of its terms.
std::optional<double> worked_out(const Line& line);

/// Whether a value, rounded as `result` is, reads as `result`.
bool gives(std::optional<double> value, const Result& result);

/// "(1 + 0.2) × 7183 mL / 10": every term with as few digits, but four, as still give the result that is
/// shown, so that the maker can work it out again.
QString in_numbers(const Line& line);

/// The terms as in_numbers prints them: "7183 mL".
QString printed(const Term& term, const Line& line);

/// Words for where a term is changed, and the action that opens it ("job.foam"); empty: none.
QString place_of(Input input);
QString action_of(Input input);

} // namespace drawercast::app::explain
