// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/money.h"

#include "language/say.h"
#include "language/spoken.h"

namespace drawercast::app {

QString money_words(double amount, const std::string& currency, const FormContext& context) {
    constexpr double whole_from = 100;
    QString figure = language::fixed(amount, amount >= whole_from ? 0 : 2);
    if (context.mark == DecimalMark::comma) figure.replace(QLatin1Char('.'), QLatin1Char(','));
    if (currency.empty()) return figure;
    return language::tr("%1 %2").arg(figure, QString::fromStdString(currency));
}

} // namespace drawercast::app
