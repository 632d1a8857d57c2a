// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/quote_report.h"

#include "base/without_controls.h"
#include "plan/say.h"

namespace drawercast::subcommands {

namespace {

using plan::fixed;

std::string line(const std::string& what, const plan::Ranged& range, const std::string& unit, int decimals) {
    const std::string behind = unit.empty() ? unit : " " + unit;
    return what + ": about " + fixed(range.expected, decimals) + behind + ", from " +
           fixed(range.low, decimals) + " to " + fixed(range.high, decimals) + "\n";
}

} // namespace

std::string quote_report(const job::Job& job, const plan::QuickQuote& quote) {
    constexpr double ml_per_l = 1000;
    const plan::Ranged liters{quote.mixed_ml.low / ml_per_l, quote.mixed_ml.expected / ml_per_l,
                              quote.mixed_ml.high / ml_per_l};
    std::string text = "foam: " + without_controls(job.foam->name) + "\n" + line("mixed", liters, "L", 2) +
                       line("boards", quote.sheets, "sheets", 0) + line("work", quote.hours, "h", 1) +
                       line("until ready", quote.days, "shop days", 0);
    text += line("price", quote.total, without_controls(job.currency), 0);
    if (!quote.foam_priced) text += "The foam's kits have no prices: foam is not in it.\n";
    if (!quote.work_priced) text += "The shop's hour has no price: work is not in it.\n";
    return text + "A guess before anything is measured. Sealer, release, clay and glue are not in it.\n";
}

} // namespace drawercast::subcommands
