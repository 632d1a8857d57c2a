// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/explain/explanation.h"

#include "base/number.h"
#include "plan/say.h"

#include "language/spoken.h"
#include "panes/explain/formula.h"

#include <QCoreApplication>

#include <algorithm>

namespace drawercast::app::explain {

namespace {

constexpr int fewest_digits = 4;
constexpr int most_digits = 12;

QString digits_of(double value, int digits) {
    const QString plain = QString::fromStdString(number_text(value));
    const auto whole = plain.indexOf(u'.') < 0 ? plain.size() : plain.indexOf(u'.');
    return QString::fromStdString(rounded_text(value, std::max(digits, static_cast<int>(whole))));
}

const Term* find(const Line& line, const QString& key) {
    const auto found =
        std::find_if(line.terms.begin(), line.terms.end(), [&](const Term& term) { return term.key == key; });
    return found == line.terms.end() ? nullptr : &*found;
}

std::optional<double> worked_out_with(const Line& line, int digits) {
    return evaluate(line.formula, [&](const QString& key) -> std::optional<double> {
        const auto* term = find(line, key);
        if (term == nullptr) return std::nullopt;
        return digits_of(term->value, digits).toDouble();
    });
}

int digits_for(const Line& line) {
    int digits = fewest_digits;
    while (digits < most_digits && !gives(worked_out_with(line, digits), line.result)) ++digits;
    return digits;
}

QString with_unit(const Term& term, int digits) {
    const QString number = language::figures(digits_of(term.value, digits).toStdString());
    return term.unit.isEmpty() ? number : number + u' ' + term.unit;
}

QString words(const char* text) { return QCoreApplication::translate("drawercast::app::explain", text); }

} // namespace

QString Result::figure() const { return language::figures(digits.toStdString()); }

Result result_of(const std::string& said) {
    const QString text = QString::fromStdString(said);
    const auto blank = text.indexOf(u' ');
    return blank < 0 ? Result{text, {}, {}} : Result{text.left(blank), text.mid(blank + 1), {}};
}

QString in_words(const Line& line) {
    return with_terms(line.formula, [&](const QString& key) {
        const auto* term = find(line, key);
        return term == nullptr ? key : term->name;
    });
}

std::optional<double> worked_out(const Line& line) {
    return evaluate(line.formula, [&](const QString& key) -> std::optional<double> {
        const auto* term = find(line, key);
        return term == nullptr ? std::nullopt : std::optional(term->value);
    });
}

bool gives(std::optional<double> value, const Result& result) {
    if (!value) return false;
    const auto point = result.digits.indexOf(u'.');
    const auto places = point < 0 ? 0 : static_cast<int>(result.digits.size() - point - 1);
    const QString rounded = QString::fromStdString(plan::fixed(*value, places));
    return rounded == result.digits;
}

QString in_numbers(const Line& line) {
    const int digits = digits_for(line);
    return with_terms(line.formula, [&](const QString& key) {
        const auto* term = find(line, key);
        return term == nullptr ? key : with_unit(*term, digits);
    });
}

QString printed(const Term& term, const Line& line) { return with_unit(term, digits_for(line)); }

QString place_of(Input input) {
    switch (input) {
    case Input::constant:
        return words(QT_TRANSLATE_NOOP("drawercast::app::explain", "a rule of this program"));
    case Input::figure:
        return {};
    case Input::overpack:
        return words(QT_TRANSLATE_NOOP("drawercast::app::explain", "the gauge in the Foam pane"));
    case Input::foam:
        return words(QT_TRANSLATE_NOOP("drawercast::app::explain", "Foam…"));
    case Input::shop:
        return words(QT_TRANSLATE_NOOP("drawercast::app::explain", "Shop…"));
    case Input::drawer:
        return words(QT_TRANSLATE_NOOP("drawercast::app::explain", "Drawer…"));
    case Input::pockets:
        return words(QT_TRANSLATE_NOOP("drawercast::app::explain", "the pockets on the drawer plan"));
    case Input::mold:
        return words(QT_TRANSLATE_NOOP("drawercast::app::explain", "How the molds are built…"));
    }
    return {};
}

QString action_of(Input input) {
    switch (input) {
    case Input::foam:
        return QStringLiteral("job.foam");
    case Input::shop:
        return QStringLiteral("job.shop");
    case Input::mold:
        return QStringLiteral("job.mold");
    case Input::drawer:
        return QStringLiteral("drawers.change");
    default:
        return {};
    }
}

} // namespace drawercast::app::explain
