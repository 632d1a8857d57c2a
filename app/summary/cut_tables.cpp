// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/cut_tables.h"

#include "casting/fixing.h"
#include "stock/screws.h"

#include "language/goods.h"
#include "language/say.h"
#include "language/spoken.h"
#include "sheets/length_words.h"
#include "sheets/part_words.h"
#include "sheets/text.h"

#include <algorithm>
#include <array>

namespace drawercast::summary {

using sheets::Align;
using sheets::Table;

namespace {

using sheets::text;

/// "2 pcs 4 × 40"
QString counted_screws(const Summary& summary, const stock::ScrewUse& use) {
    return sheets::pieces_of(use.count, sheets::screw_size(summary.job, use.diameter_mm, use.length_mm));
}

/// "2 × Particleboard 16 + Particleboard 12"
QString layers(const std::vector<std::string>& names) {
    QStringList words;
    for (std::size_t i = 0; i < names.size();) {
        std::size_t same = i;
        while (same < names.size() && names[same] == names[i]) ++same;
        const QString name = language::goods_name(names[i]);
        words.append(same - i > 1 ? QStringLiteral("%1 × %2").arg(same - i).arg(name) : name);
        i = same;
    }
    return words.join(QStringLiteral(" + "));
}

QString saw_off_words(const Summary& summary, const stock::StackToHeight& stack) {
    if (stack.saw_off_mm <= 0) return {};
    return language::tr(", saw off %1").arg(summary.said(stack.saw_off_mm));
}

QString made_of(const Summary& summary, const stock::Body& body) {
    QString words = layers(body.layers);
    if (body.tube) {
        const QString tube = language::goods_name(body.tube->tube.name);
        words = body.make == stock::Make::half_tube && !words.isEmpty()
                    ? language::tr("half %1 on %2").arg(tube, words)
                    : tube;
        if (body.tube->wrap_mm > 0) words += language::tr(", wrap %1").arg(summary.said(body.tube->wrap_mm));
    }
    return words + saw_off_words(summary, body.stack);
}

QString rests(const stock::BlockByStock& block, const stock::Body& body) {
    if (body.rest == stock::Rest::on_board) return {};
    for (const auto& other : block.bodies)
        if (other.of == body.other)
            return (body.rest == stock::Rest::butts ? language::tr("butts ") : language::tr("stands on ")) +
                   text(other.label);
    return {};
}

/// "d1: wall front, wall back; d2: 7a.1": each label begins with its drawer.
QString labels_by_drawer(const std::vector<std::string>& labels) {
    QString words;
    std::string last;
    for (const auto& label : labels) {
        const auto blank = label.find(' ');
        const std::string drawer = label.substr(0, blank);
        if (drawer == last)
            words += QStringLiteral(", ");
        else
            words +=
                (words.isEmpty() ? QString() : QStringLiteral("; ")) + text(drawer) + QStringLiteral(": ");
        last = drawer;
        words += sheets::part_name(label);
    }
    return words;
}

/// "2 pcs 4 × 40", "1 pc 3 × 35, pin 2 × 30", "glue, 2 pins 2 × 25": from below through the base.
QString held_words(const Summary& summary, const stock::Body& body) {
    if (body.rest == stock::Rest::on_body) return {};
    QStringList words;
    if (body.screw_mm)
        words.append(counted_screws(summary, {body.held.diameter_mm, *body.screw_mm, body.held.screws}));
    else
        words.append(language::tr("glue", "in place of screws"));
    if (body.pin_mm)
        words.append(
            (body.held.pins == 1 ? language::tr("pin %2") : language::tr("%1 pins %2").arg(body.held.pins))
                .arg(sheets::screw_size(summary.job, casting::pin_mm, *body.pin_mm)));
    return words.join(QStringLiteral(", "));
}

QString filler_screws(const Summary& summary, const stock::Filler& filler) {
    if (filler.screws == 0) return language::tr("glue: too slim to screw");
    if (!filler.screw_mm) return language::tr("glue: too low to screw");
    return counted_screws(summary, {stock::joint_screw_mm, *filler.screw_mm, filler.screws});
}

QString money(const Summary& summary, double price) {
    if (price == 0) return {};
    const QString figure = language::fixed(price, 2);
    return summary.job.currency.empty() ? figure : figure + QStringLiteral(" ") + text(summary.job.currency);
}

/// The units of core's lines that are words.
QString unit_words(const char* unit) {
    static constexpr std::array words{
        QT_TRANSLATE_NOOP("", "pairs"), QT_TRANSLATE_NOOP("", "pcs"), QT_TRANSLATE_NOOP("", "L/pour"),
        QT_TRANSLATE_NOOP("", "a person and pour"), QT_TRANSLATE_NOOP("", "a batch")};
    const QString text = QString::fromUtf8(unit);
    const auto at = std::find_if(words.begin(), words.end(),
                                 [&](const char* word) { return text == QString::fromUtf8(word); });
    return at == words.end() ? text : language::tr(*at);
}

/// "0.62 L", "4 pairs"
QString amount_words(const stock::SupplyLine& line, double amount) {
    const bool whole = line.supply == stock::Supply::gloves || line.supply == stock::Supply::cups;
    const int places = whole || amount >= 100 ? 0 : amount >= 10 ? 1 : 2;
    return language::fixed(amount, places) + QStringLiteral(" ") + unit_words(line.unit);
}

/// A supply as it is bought: what is needed and left by amount, what is bought by packages.
std::vector<Table::Cell> package_row(const Summary& summary, const stock::SupplyLine& line) {
    const auto& packages = *line.packages;
    const QString bought = language::tr("%1 × %2").arg(packages.buy).arg(amount_words(line, packages.amount));
    return {{words_of(line.supply), false, {}},
            {amount_words(line, line.amount), false, {}},
            {amount_words(line, packages.at_hand), false, {}},
            {packages.buy > 0 ? bought : QStringLiteral("0"), true, {}},
            {money(summary, packages.price), false, {}}};
}

/// A wall that another drawer has cut already is shared with it.
QString wall_words(const Summary& summary, const plan::StockPlan& stock, const stock::Wall& wall) {
    const QString length = summary.said(wall.length_mm);
    return plan::is_cut(stock, wall.label) ? length : language::tr("%1, shared").arg(length);
}

} // namespace

QString words_of(stock::Make make) {
    switch (make) {
    case stock::Make::stack:
        return language::tr("stack");
    case stock::Make::discs:
        return language::tr("sawn round");
    case stock::Make::tube:
        return language::tr("tube with discs");
    case stock::Make::half_tube:
        return language::tr("half tube");
    case stock::Make::shaped:
        return language::tr("planed round");
    }
    return {};
}

QString words_of(stock::Supply supply) {
    switch (supply) {
    case stock::Supply::sealer:
        return language::tr("sealer, 3 coats, 2 more on raw edges");
    case stock::Supply::release:
        return language::tr("release, 2 coats");
    case stock::Supply::clay_length:
        return language::tr("clay fillet");
    case stock::Supply::clay_volume:
        return language::tr("clay, oil or wax based");
    case stock::Supply::seal:
        return language::tr("joint seal, base, walls, fillers, feet");
    case stock::Supply::glue:
        return language::tr("wood glue between layers");
    case stock::Supply::pigment:
        return language::tr("pigment");
    case stock::Supply::solvent:
        return language::tr("solvent for tools");
    case stock::Supply::gloves:
        return language::tr("gloves");
    case stock::Supply::cups:
        return language::tr("cups");
    }
    return {};
}

Table box_table(const Summary& summary, const plan::StockPlan& stock) {
    Table table;
    table.columns = {{language::tr("drawer"), Align::left, 1, 0},
                     {language::tr("inside"), Align::left, 0, 110},
                     {language::tr("outside"), Align::left, 0, 110},
                     {language::tr("front, back"), Align::right, 0, 86},
                     {language::tr("sides"), Align::right, 0, 86},
                     {language::tr("joint screws"), Align::right, 0, 0, true}};
    for (const auto& drawer : stock.drawers) {
        const stock::Box& box = drawer.box;
        QStringList screws;
        for (const auto& use : box.screws) screws.append(counted_screws(summary, use));
        table.rows.push_back(
            {{drawer_words(summary, drawer.drawer), true, {}},
             {sheets::sizes_words(summary.job, {box.width_mm, box.depth_mm, box.height_mm}), true, {}},
             {sheets::sizes_words(summary.job,
                                  {box.outside_width_mm, box.outside_depth_mm, box.outside_height_mm}),
              false,
              {}},
             {wall_words(summary, stock, box.walls[0]), false, {}},
             {wall_words(summary, stock, box.walls[1]), false, {}},
             {screws.join(QStringLiteral(", ")), false, {}}});
    }
    return table;
}

Table block_stock_table(const Summary& summary, const stock::DrawerStock& drawer) {
    Table table;
    table.columns = {{language::tr("body"), Align::left, 0, 34},
                     {language::tr("block"), Align::left, 0.8, 0, false, true},
                     {language::tr("made as"), Align::left, 0, 0, true},
                     {language::tr("of"), Align::left, 1.7, 0, false, true},
                     {language::tr("stands"), Align::left, 0, 0, true},
                     {language::tr("cut to"), Align::right, 0, 0, true},
                     {language::tr("height"), Align::right, 0, 44},
                     {language::tr("screws"), Align::right, 0, 0, true}};
    for (const auto& block : drawer.blocks)
        for (std::size_t i = 0; i < block.bodies.size(); ++i) {
            const stock::Body& body = block.bodies[i];
            table.rows.push_back(
                {{text(body.label), true, {}},
                 {i == 0 ? text(block.name) : QString(), false, {}},
                 {words_of(body.make), false, {}},
                 {made_of(summary, body), false, {}},
                 {rests(block, body), false, {}},
                 {sheets::sizes_words(summary.job, {body.panel.length_mm, body.panel.width_mm}), true, {}},
                 {summary.said(body.height_mm), true, {}},
                 {held_words(summary, body), false, {}}});
        }
    for (const auto& filler : drawer.fillers)
        table.rows.push_back(
            {{text(filler.label), true, {}},
             {language::tr("filler"), false, {}},
             {language::tr("stack"), false, {}},
             {layers(filler.layers) + saw_off_words(summary, filler.stack), false, {}},
             {},
             {sheets::sizes_words(summary.job, {filler.panel.length_mm, filler.panel.width_mm}), true, {}},
             {summary.said(filler.stack.height_mm), true, {}},
             {filler_screws(summary, filler), false, {}}});
    return table;
}

Table ticket_table(const Summary& summary, const plan::StockPlan& stock) {
    Table table;
    table.columns = {{language::tr("board"), Align::left, 0, 0, true},
                     {language::tr("fence at"), Align::right, 0, 0, true},
                     {language::tr("run"), Align::right, 0, 56},
                     {language::tr("then crosscut"), Align::right, 0, 0, true},
                     {language::tr("for"), Align::left, 1, 0, false, true}};
    for (const auto& ticket : stock.tickets) {
        bool first = true;
        for (const auto& line : ticket.lines) {
            const QString pieces =
                sheets::pieces_of(static_cast<int>(line.labels.size()), summary.said(line.length_mm));
            const QString from = line.from_strip ? language::tr("off one strip: ") : QString();
            table.rows.push_back(
                {{first ? language::goods_name(ticket.board) : QString(), false, {}},
                 {first ? sheets::fence_words(ticket.fence_mm, summary.said(ticket.fence_mm)) : QString(),
                  true,
                  {}},
                 {first ? summary.said(ticket.run_mm) : QString(), false, {}},
                 {pieces, true, {}},
                 {from + labels_by_drawer(line.labels), false, {}}});
            first = false;
        }
    }
    return table;
}

Table buy_table(const Summary& summary, const plan::StockPlan& stock) {
    Table table;
    table.columns = {{language::tr("what"), Align::left, 1, 0},
                     {language::tr("needed"), Align::right, 0, 64},
                     {language::tr("at hand"), Align::right, 0, 64},
                     {language::tr("buy"), Align::right, 0, 96},
                     {language::tr("price"), Align::right, 0, 90}};
    for (const auto& line : stock.buy) {
        const QString name = line.goods == stock::Goods::screw &&
                                     !text(line.name).startsWith(QStringLiteral("screw"), Qt::CaseInsensitive)
                                 ? language::tr("screws ") + text(line.name)
                             : line.goods == stock::Goods::pin
                                 ? language::tr("headless nails for pins, to nip off %1").arg(text(line.name))
                                 : language::goods_name(line.name);
        table.rows.push_back(
            {{name, false, {}},
             {QString::number(line.needed), false, {}},
             {QString::number(line.at_hand), false, {}},
             {QString::number(line.buy), true, {}},
             {stock::is_unpriced(line) ? language::tr("no price") : money(summary, line.price), false, {}}});
    }
    for (const auto& line : stock.supplies)
        if (line.packages) table.rows.push_back(package_row(summary, line));
    const int unpriced = stock::unpriced(stock.buy);
    const QString together = language::tr("together, foam apart");
    if (stock.price > 0)
        table.rows.push_back(
            {{unpriced == 0 ? together
                            : language::tr("%1; %2 without a price not in it").arg(together).arg(unpriced),
              true,
              {}},
             {},
             {},
             {},
             {money(summary, stock.price), true, {}}});
    return table;
}

Table supply_table(const Summary&, const plan::StockPlan& stock) {
    Table table;
    table.columns = {{language::tr("what"), Align::left, 1, 0},
                     {language::tr("rate"), Align::left, 0, 130},
                     {language::tr("from"), Align::left, 0, 120},
                     {language::tr("amount"), Align::right, 0, 74}};
    for (const auto& line : stock.supplies) {
        const QString rate = line.rate > 0 ? language::figures(QString::number(line.rate).toStdString()) +
                                                 QStringLiteral(" ") + unit_words(line.rate_unit)
                                           : QString();
        const QString from = line.source == stock::Rate::counted    ? language::tr("counted from the job")
                             : line.source == stock::Rate::practice ? language::tr("common practice")
                                                                    : language::tr("our guess");
        table.rows.push_back({{words_of(line.supply), false, {}},
                              {rate, false, {}},
                              {from, false, {}},
                              {amount_words(line, line.amount), true, {}}});
    }
    return table;
}

Table missed_table(const Summary& summary, const plan::StockPlan& stock) {
    Table table;
    table.columns = {{language::tr("drawer"), Align::left, 1, 0},
                     {language::tr("box wall tops"), Align::right, 0, 0, true},
                     {language::tr("edges of base and plate"), Align::right, 0, 0, true},
                     {language::tr("end grain of blocks"), Align::right, 0, 0, true},
                     {language::tr("screw holes"), Align::right, 0, 0, true},
                     {language::tr("vent holes"), Align::right, 0, 0, true}};
    for (const auto& drawer : stock.drawers) {
        const auto& missed = drawer.missed;
        const auto meters = [](double mm) { return language::fixed(mm / 1000, 1) + QStringLiteral(" m"); };
        table.rows.push_back(
            {{drawer_words(summary, drawer.drawer), true, {}},
             {meters(missed.wall_tops_mm), false, {}},
             {meters(missed.raw_edges_mm), false, {}},
             {language::fixed(missed.end_grain_mm2 / 1e6, 2) + QStringLiteral(" m²"), false, {}},
             {QString::number(missed.screw_holes), false, {}},
             {missed.vent_holes ? QString::number(*missed.vent_holes) : QStringLiteral("–"), false, {}}});
    }
    return table;
}

} // namespace drawercast::summary
