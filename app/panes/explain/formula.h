// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <functional>
#include <optional>

namespace drawercast::app::explain {

/// The value of a term, by the key that stands in braces.
using TermValue = std::function<std::optional<double>(const QString& key)>;

/// Works out a formula as it is shown to the maker: numbers, terms in braces ("{rise}"), + − × / ^ and
/// parentheses, and the functions min, max (any number of arguments), roundup, exp, ln, sin, asin (radians).
/// Blanks are no matter. Nothing where it can't be read, a term is unknown or the answer is not finite.
std::optional<double> evaluate(const QString& formula, const TermValue& term);

/// The formula with each term replaced by what `words` says of its key.
QString with_terms(const QString& formula, const std::function<QString(const QString& key)>& words);

} // namespace drawercast::app::explain
