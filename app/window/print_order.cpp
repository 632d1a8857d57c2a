// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/print_order.h"

#include "document/preferences.h"
#include "print/drawing_files.h"
#include "summary/summary.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace drawercast::app {

namespace {

/// Names of an enumeration's values in the settings, in its order.
template <std::size_t n>
using Names = std::array<std::string_view, n>;
constexpr Names<4> what_names{"templates", "summary", "drawings", "cards"};
constexpr Names<3> to_names{"pdf", "printer", "svg"};
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
    for (auto& drawing : print::drawings(job, plan))
        pages.push_back({drawing.size_mm, sheets::moved(std::move(drawing.inks_mm), theme::px_per_mm, {}),
                         QString::fromStdString(drawing.file)});
    return pages;
}

} // namespace

QString destination_of(const PrintOrder& order) {
    switch (order.to) {
    case PrintOrder::To::pdf:
        return QStringLiteral("PDF");
    case PrintOrder::To::printer:
        return order.printer;
    case PrintOrder::To::svg:
        break;
    }
    return {};
}

print::Correction correction_of(const PrintOrder& order) {
    const auto known = order.corrections.find(destination_of(order));
    return known != order.corrections.end() && print::is_sound(known->second) ? known->second
                                                                              : print::Correction{};
}

std::vector<print::Page> order_pages(const PrintOrder& order, const job::Job& job, const plan::Plan& plan,
                                     const print::Printing& printing) {
    const print::Correction correction = correction_of(order);
    print::Printing now = printing;
    if (!print::is_none(correction)) {
        now.corrected = destination_of(order);
        now.correction = print::sentence_of(correction, now.corrected);
    }
    std::vector<print::Page> pages;
    switch (order.what) {
    case PrintOrder::What::templates:
        pages = print::template_pages(job, plan, order.choice, now);
        break;
    case PrintOrder::What::summary:
        pages = summary::summary_pages(job, plan, order.choice.paper, now);
        break;
    case PrintOrder::What::cards:
        pages = summary::pour_cards(job, plan, order.choice.paper, now);
        break;
    case PrintOrder::What::drawings:
        return drawing_pages(job, plan);
    }
    for (print::Page& page : pages) page.stretch = print::stretch_of(correction, page.size_mm);
    return pages;
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
    order.corrections = remembered_corrections(preferences);
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
    QJsonObject corrections;
    for (const auto& [printer, correction] : order.corrections)
        if (!print::is_none(correction) && print::is_sound(correction))
            corrections[printer] = QJsonArray{correction.short_mm, correction.long_mm};
    keep("corrections", QString::fromUtf8(QJsonDocument(corrections).toJson(QJsonDocument::Compact)));
}

print::Corrections remembered_corrections(const Preferences& preferences) {
    const QString text = preferences.printing(QStringLiteral("corrections"));
    const QJsonObject kept = QJsonDocument::fromJson(text.toUtf8()).object();
    print::Corrections corrections;
    for (auto one = kept.begin(); one != kept.end(); ++one) {
        const QJsonArray mm = one.value().toArray();
        const print::Correction correction{mm.at(0).toDouble(), mm.at(1).toDouble()};
        if (print::is_sound(correction)) corrections[one.key()] = correction;
    }
    return corrections;
}

} // namespace drawercast::app
