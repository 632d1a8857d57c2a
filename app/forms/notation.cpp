// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/notation.h"

#include "base/number.h"

#include <cmath>

namespace drawercast::app {

namespace {

constexpr int most_digits = 6;
constexpr int converted_digits = 4; ///< of values shown in another unit than the job's: 1.411 lb for 640 g

QString digits_of(double value, int digits, DecimalMark mark) {
    QString text = QString::fromStdString(rounded_text(value, digits));
    if (mark == DecimalMark::comma) text.replace(QLatin1Char('.'), QLatin1Char(','));
    return text;
}

struct Shown {
    std::string_view word;
    const char* text;
};

/// The unit a quantity is shown in.
Shown shown_unit(Quantity quantity, bool metric) {
    switch (quantity) {
    case Quantity::mass_g:
        return metric ? Shown{"g", "g"} : Shown{"lb", "lb"};
    case Quantity::load_kg:
        return metric ? Shown{"kg", "kg"} : Shown{"lb", "lb"};
    case Quantity::volume_ml:
        return metric ? Shown{"ml", "mL"} : Shown{"qt", "qt"};
    case Quantity::pressure_kpa:
        return metric ? Shown{"kpa", "kPa"} : Shown{"psi", "psi"};
    case Quantity::temperature_c:
        return metric ? Shown{"°c", "°C"} : Shown{"°f", "°F"};
    case Quantity::warmer_k:
        return metric ? Shown{"°c", "°C"} : Shown{"°f", "°F"};
    case Quantity::altitude_m:
        return metric ? Shown{"m", "m"} : Shown{"ft", "ft"};
    }
    return {"", ""};
}

} // namespace

QString number_words(double value, DecimalMark mark) { return digits_of(value, most_digits, mark); }

Notation length_notation(const FormContext& context) {
    const LengthUnit unit = context.length_unit();
    const DecimalMark mark = context.mark;
    return {context.metric() ? QStringLiteral("mm") : QStringLiteral("in"),
            [unit, mark](double mm) { return QString::fromStdString(length_digits(mm, unit, mark)); },
            [unit, mark](const QString& typed) { return parse_length(typed.toStdString(), unit, mark); }};
}

Notation quantity_notation(Quantity quantity, const FormContext& context) {
    const auto [word, text] = shown_unit(quantity, context.metric());
    const Unit unit = *find_unit(quantity, word);
    const DecimalMark mark = context.mark;
    const int digits = unit.scale == 1 && unit.zero == 0 ? most_digits : converted_digits;
    return {QString::fromUtf8(text),
            [unit, mark, digits](double value) {
                return digits_of((value - unit.zero) / unit.scale, digits, mark);
            },
            [quantity, unit, mark](const QString& typed) {
                return parse_quantity(typed.toStdString(), quantity, unit, mark);
            }};
}

Notation number_notation(const FormContext& context, const QString& unit, double scale) {
    const DecimalMark mark = context.mark;
    const double tens = std::log10(scale); // of a percentage a whole number: nothing is converted
    const int digits = tens == std::round(tens) ? most_digits : converted_digits;
    return {unit, [scale, mark, digits](double value) { return digits_of(value / scale, digits, mark); },
            [scale, mark](const QString& typed) -> Expected<double> {
                const auto value = parse_typed_number(typed.toStdString(), mark);
                if (!value) return value.error();
                return *value * scale;
            }};
}

} // namespace drawercast::app
