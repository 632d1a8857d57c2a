// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/print_order.h"

#include "document/preferences.h"
#include "subcommands/drawing_files.h"
#include "summary/summary.h"

#include <array>
#include <string_view>
#include <utility>

namespace drawercast::app {

namespace {

/// Names of an enumeration's values in the settings, in its order.
template <std::size_t n>
using Names = std::array<std::string_view, n>;
constexpr Names<3> what_names{"templates", "summary", "drawings"}, to_names{"pdf", "printer", "svg"};
constexpr Names<4> paper_names{"a4", "letter", "a3", "tabloid"};
constexpr Names<6> sheet_names{"pattern-board", "drawer-check",   "wall-strips",
                               "labels",        "pressure-plate", "base-drilling"};
constexpr Names<2> orientation_names{"portrait", "landscape"};

template <class E, std::size_t n>
QString name_of(E value, const Names<n>& names) {
    const auto name = names.at(static_cast<std::size_t>(value));
    return QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
}

template <class E, std::size_t n>
std::optional<E> named(const QString& text, const Names<n>& names) {
    for (std::size_t i = 0; i < n; ++i)
        if (text == name_of(static_cast<E>(i), names)) return static_cast<E>(i);
    return std::nullopt;
}

template <class E, std::size_t n>
QString name_or_any(const std::optional<E>& value, const Names<n>& names) {
    return value ? name_of(*value, names) : QStringLiteral("any");
}

std::vector<print::Page> drawing_pages(const job::Job& job, const plan::Plan& plan) {
    std::vector<print::Page> pages;
    for (auto& drawing : subcommands::drawings(job, plan))
        pages.push_back({drawing.size_mm, sheets::moved(std::move(drawing.inks_mm), theme::px_per_mm, {}),
                         QString::fromStdString(drawing.file)});
    return pages;
}

} // namespace

std::vector<print::Page> order_pages(const PrintOrder& order, const job::Job& job, const plan::Plan& plan,
                                     const print::Printing& printing) {
    switch (order.what) {
    case PrintOrder::What::templates:
        return print::template_pages(job, plan, order.choice, printing);
    case PrintOrder::What::summary:
        return summary::summary_pages(job, plan, order.choice.paper, printing);
    case PrintOrder::What::drawings:
        break;
    }
    return drawing_pages(job, plan);
}

std::vector<print::Page> chosen_pages(const PrintOrder& order, std::vector<print::Page> all) {
    std::vector<print::Page> chosen;
    for (const std::size_t i : order.pages)
        if (i < all.size()) chosen.push_back(std::move(all[i]));
    return chosen;
}

print::Paper usual_paper(job::DisplayUnits units) {
    return units == job::DisplayUnits::mm ? print::Paper::a4 : print::Paper::letter;
}

PrintOrder remembered_order(const Preferences& preferences, job::DisplayUnits units) {
    const auto kept = [&](const char* key) { return preferences.printing(QLatin1String(key)); };
    PrintOrder order;
    order.what = named<PrintOrder::What>(kept("what"), what_names).value_or(order.what);
    order.to = named<PrintOrder::To>(kept("to"), to_names).value_or(order.to);
    order.choice.paper = named<print::Paper>(kept("paper"), paper_names).value_or(usual_paper(units));
    order.choice.orientation = named<print::Orientation>(kept("orientation"), orientation_names);
    order.choice.only = named<print::TemplateKind>(kept("sheet"), sheet_names);
    order.printer = kept("printer");
    return order;
}

void remember(const PrintOrder& order, Preferences& preferences) {
    const auto keep = [&](const char* key, const QString& value) {
        preferences.set_printing(QLatin1String(key), value);
    };
    keep("what", name_of(order.what, what_names));
    keep("to", name_of(order.to, to_names));
    keep("paper", name_of(order.choice.paper, paper_names));
    keep("orientation", name_or_any(order.choice.orientation, orientation_names));
    keep("sheet", name_or_any(order.choice.only, sheet_names));
    keep("printer", order.printer);
}

} // namespace drawercast::app
