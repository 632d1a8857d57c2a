// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/stock_pages.h"

#include "job/catalog.h"
#include "stock/tubes.h"

#include "forms/table_edit.h"
#include "language/goods.h"

#include <QHeaderView>
#include <QLabel>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <array>
#include <cmath>
#include <set>
#include <utility>
#include <variant>

namespace drawercast::app {

namespace {

constexpr int most_rows = 1000; ///< as many as a job takes
constexpr int name_px = 150;

QWidget* page_of(std::initializer_list<QWidget*> parts) {
    auto* page = new QWidget;
    auto* all = new QVBoxLayout(page);
    for (auto* part : parts) all->addWidget(part, qobject_cast<TableEdit*>(part) != nullptr ? 1 : 0);
    return page;
}

QLabel* intro(const QString& words) {
    auto* label = new QLabel(words);
    label->setWordWrap(true);
    return label;
}

NumberColumn length_column(const QString& title, const char* path, const FormContext& context,
                           const QString& hint = {}) {
    const Notation length = length_notation(context);
    return {title.arg(length.unit), length, job::range_of(path), 0, false, hint};
}

NumberColumn number_column(const QString& title, const char* path, const FormContext& context,
                           const QString& hint = {}) {
    return {title, number_notation(context, {}), job::range_of(path), 0, false, hint};
}

/// As the job writes the amounts of job::SupplyPack.
QString words_of(job::Supply supply) {
    switch (supply) {
    case job::Supply::sealer:
        return StockPages::tr("sealer, L");
    case job::Supply::release:
        return StockPages::tr("release, L");
    case job::Supply::clay:
        return StockPages::tr("clay, mL");
    case job::Supply::seal:
        return StockPages::tr("joint seal, mL");
    case job::Supply::glue:
        return StockPages::tr("wood glue, g");
    case job::Supply::pigment:
        return StockPages::tr("pigment, mL");
    case job::Supply::solvent:
        return StockPages::tr("solvent, L");
    case job::Supply::gloves:
        return StockPages::tr("gloves, pairs");
    case job::Supply::cups:
        return StockPages::tr("cups");
    }
    return {};
}

constexpr std::array all_supplies{job::Supply::sealer,  job::Supply::release, job::Supply::clay,
                                  job::Supply::seal,    job::Supply::glue,    job::Supply::pigment,
                                  job::Supply::solvent, job::Supply::gloves,  job::Supply::cups};

} // namespace

/// The columns of one kind of goods, beside the name's.
template <class Goods>
struct StockPages::Fields {
    using Member = std::variant<double Goods::*, int Goods::*, std::optional<int> Goods::*>;
    struct Field {
        NumberColumn column;
        Member member;
    };
    const char* path;
    QString name_head;
    TableEdit::Words words;
    std::vector<Field> all;

    static double read(const Goods& goods, const Member& member) {
        return std::visit(
            [&](auto at) {
                if constexpr (std::is_same_v<decltype(at), std::optional<int> Goods::*>)
                    return static_cast<double>((goods.*at).value_or(0));
                else
                    return static_cast<double>(goods.*at);
            },
            member);
    }

    static void write(Goods& goods, const Member& member, double number) {
        if (read(goods, member) == number) return; // nothing said stays nothing said
        std::visit(
            [&](auto at) {
                if constexpr (std::is_same_v<decltype(at), double Goods::*>)
                    goods.*at = number;
                else
                    goods.*at = static_cast<int>(number);
            },
            member);
    }

    NumberRow row_of(const Goods& goods, int origin) const {
        NumberRow row{language::goods_name(goods.name), {0}, origin};
        for (const Field& field : all) row.numbers.push_back(read(goods, field.member));
        return row;
    }

    Goods goods_of(const NumberRow& row, const std::vector<Goods>& given) const {
        Goods goods = row.origin < 0 ? Goods{} : given[static_cast<std::size_t>(row.origin)];
        goods.name = language::goods_key(row.words.trimmed());
        for (std::size_t i = 0; i < all.size(); ++i) write(goods, all[i].member, row.numbers[i + 1]);
        return goods;
    }
};

StockPages::StockPages(const job::Shop& shop, const FormContext& context, QTabWidget& pages)
    : QObject(&pages) {
    const auto length = [&](const QString& title, const char* path, const QString& hint = {}) {
        return length_column(title, path, context, hint);
    };
    const auto number = [&](const QString& title, const char* path, const QString& hint = {}) {
        return number_column(title, path, context, hint);
    };
    const QString stiffness = tr("stiffness, MPa"), strength = tr("strength, MPa");
    const QString elasticity = tr("Modulus of elasticity in bending"), rupture = tr("Modulus of rupture");
    const QString price = tr("price"), at_hand = tr("at hand");
    using job::Board, job::Stiffener, job::Tube, job::Closure;

    auto* boards = add_table<Board>(
        &job::Shop::boards, job::boards_of(shop),
        {"/boards",
         tr("board"),
         {tr("Boards"), tr("Add a board like this one (Insert)"), tr("Take this board away (Delete)")},
         {{length(tr("thick, %1"), "/shop/boards/*/thickness_mm",
                  tr("As measured: the box, blocks and "
                     "their heights follow from it")),
           &Board::thickness_mm},
          {length(tr("sheet, %1"), "/shop/boards/*/sheet_mm", tr("Length of a whole sheet")),
           &Board::sheet_length_mm},
          {length(tr("by, %1"), "/shop/boards/*/sheet_mm", tr("Width of a whole sheet")),
           &Board::sheet_width_mm},
          {number(price, "/shop/boards/*/price", tr("Of a sheet")), &Board::price},
          {number(at_hand, "/shop/boards/*/at_hand", tr("Whole sheets; blocks are made of boards at hand")),
           &Board::at_hand},
          {number(stiffness, "/shop/boards/*/elasticity_mpa", elasticity), &Board::elasticity_mpa},
          {number(strength, "/shop/boards/*/rupture_mpa", rupture), &Board::rupture_mpa},
          {number(tr("gravity"), "/shop/boards/*/specific_gravity",
                  tr("Specific, oven-dry: screws hold by it")),
           &Board::specific_gravity}}});
    auto* bars = add_table<Stiffener>(
        &job::Shop::stiffeners, job::stiffeners_of(shop),
        {"/stiffeners",
         tr("stiffener"),
         {tr("Stiffeners"), tr("Add a piece like this one (Insert)"), tr("Take this piece away (Delete)")},
         {{length(tr("wide, %1"), "/shop/stiffeners/*/section_mm"), &Stiffener::width_mm},
          {length(tr("high, %1"), "/shop/stiffeners/*/section_mm", tr("Standing on the plate")),
           &Stiffener::height_mm},
          {length(tr("length, %1"), "/shop/stiffeners/*/length_mm", tr("As sold")), &Stiffener::length_mm},
          {number(price, "/shop/stiffeners/*/price", tr("Of a piece")), &Stiffener::price},
          {number(stiffness, "/shop/stiffeners/*/elasticity_mpa", elasticity), &Stiffener::elasticity_mpa},
          {number(strength, "/shop/stiffeners/*/rupture_mpa", rupture), &Stiffener::rupture_mpa}}});
    auto* tubes = add_table<Tube>(
        &job::Shop::tubes, stock::tubes_of(shop),
        {"/tubes",
         tr("tube"),
         {tr("Tubes"), tr("Add a tube like this one (Insert)"), tr("Take this tube away (Delete)")},
         {{length(tr("outside, %1"), "/shop/tubes/*/outside_mm", tr("Diameter")), &Tube::outside_mm},
          {length(tr("wall, %1"), "/shop/tubes/*/wall_mm"), &Tube::wall_mm},
          {length(tr("length, %1"), "/shop/tubes/*/length_mm", tr("As sold")), &Tube::length_mm},
          {number(price, "/shop/tubes/*/price", tr("Of a tube")), &Tube::price},
          {number(at_hand, "/shop/tubes/*/at_hand", tr("Whole tubes; they are taken before others")),
           &Tube::at_hand}}});
    auto* closures = add_table<Closure>(
        &job::Shop::closures, job::closures_of(shop),
        {"/closures",
         tr("closure"),
         {tr("Closures"), tr("Add a screw of this size (Insert)"), tr("Take this closure away (Delete)")},
         {{length(tr("thick, %1"), "/shop/closures/*/diameter_mm", tr("Diameter")), &Closure::diameter_mm},
          {length(tr("length, %1"), "/shop/closures/*/length_mm"), &Closure::length_mm},
          {number(price, "/shop/closures/*/price", tr("Of one")), &Closure::price},
          {number(at_hand, "/shop/closures/*/at_hand"), &Closure::at_hand}}});

    pages.addTab(page_of({intro(tr("Measure the boards: nominal thicknesses are off by half a millimeter. "
                                   "Sheets at hand are used before any are bought.")),
                          boards}),
                 tr("Boards"));
    pages.addTab(page_of({bars, tubes}), tr("Lumber and tubes"));
    pages.addTab(page_of({intro(tr("What holds the plate down; joints and blocks take screws of these sizes "
                                   "too. An added row is a screw.")),
                          closures}),
                 tr("Closures"));
    pages.addTab(page_of({intro(tr("How the shop buys what is used up. Where a package is 0, the lists say "
                                   "how much is needed and no price.")),
                          add_supplies(shop, context)}),
                 tr("Used up"));
}

TableEdit* StockPages::watched(TableEdit* table) {
    auto* heads = table->view().horizontalHeader();
    heads->setSectionResizeMode(0, QHeaderView::Interactive);
    heads->resizeSection(0, name_px);
    connect(table, &TableEdit::edited, this, &StockPages::edited);
    return table;
}

template <class Goods>
TableEdit* StockPages::add_table(std::vector<Goods> job::Shop::*list, std::vector<Goods> shown,
                                 const Fields<Goods>& fields) {
    std::vector<NumberColumn> columns{{fields.name_head, {}, {}, 0, true}};
    for (const auto& field : fields.all) columns.push_back(field.column);
    auto* table = watched(new TableEdit(std::move(columns), fields.words, 1, most_rows));
    std::vector<NumberRow> given;
    for (const Goods& goods : shown) given.push_back(fields.row_of(goods, int(given.size())));
    table->set_rows(given);
    named_.push_back({fields.path, table, given});
    takers_.push_back([=, shown = std::move(shown), given = std::move(given)](job::Shop& shop) {
        if (table->rows() == given) return;
        (shop.*list).clear();
        for (const NumberRow& row : table->rows()) (shop.*list).push_back(fields.goods_of(row, shown));
    });
    return table;
}

/// One row for each kind; those without a package are not in the job.
TableEdit* StockPages::add_supplies(const job::Shop& shop, const FormContext& context) {
    NumberColumn kind{tr("what"), {}, {}, 0, true};
    kind.fixed = true;
    NumberColumn amount = number_column(tr("in a package"), "/shop/supplies/*/amount", context,
                                        tr("0: not bought by packages"));
    amount.range.open_least = false;
    const auto price = number_column(tr("price"), "/shop/supplies/*/price", context, tr("Of a package"));
    const auto at_hand =
        number_column(tr("at hand"), "/shop/supplies/*/at_hand", context, tr("Amount left, opened or not"));
    constexpr int kinds = int(all_supplies.size());
    auto* table =
        watched(new TableEdit({kind, amount, price, at_hand}, {tr("What is used up"), {}, {}}, kinds, kinds));
    std::vector<NumberRow> given;
    for (const job::Supply supply : all_supplies) {
        NumberRow row{words_of(supply), {0, 0, 0, 0}, -1};
        for (std::size_t i = 0; i < shop.supplies.size(); ++i)
            if (const auto& pack = shop.supplies[i]; pack.supply == supply)
                row.numbers = {0, pack.amount, pack.price, pack.at_hand}, row.origin = int(i);
        given.push_back(std::move(row));
    }
    table->set_rows(given);
    takers_.push_back([table, given](job::Shop& taken) {
        if (table->rows() == given) return;
        std::vector<job::SupplyPack> packs;
        for (std::size_t i = 0; i < all_supplies.size(); ++i) {
            const NumberRow& row = table->rows()[i];
            if (row.numbers[1] == 0) continue;
            job::SupplyPack pack =
                row.origin < 0 ? job::SupplyPack{} : taken.supplies[static_cast<std::size_t>(row.origin)];
            pack.supply = all_supplies[i];
            pack.amount = row.numbers[1], pack.price = row.numbers[2], pack.at_hand = row.numbers[3];
            packs.push_back(std::move(pack));
        }
        taken.supplies = std::move(packs);
    });
    return table;
}

void StockPages::take(job::Shop& shop) const {
    for (const auto& taker : takers_) taker(shop);
}

FieldProblems StockPages::problems() const {
    FieldProblems found;
    for (const auto& [path, table, given] : named_) {
        if (table->rows() == given) continue;
        std::set<QString> names;
        for (const NumberRow& row : table->rows()) {
            const QString name = row.words.trimmed();
            if (!name.isEmpty() && names.insert(name).second) continue;
            const QString words = name.isEmpty() ? tr("A row has no name: type one")
                                                 : tr("“%1” is there twice: give one another name").arg(name);
            found.push_back({path, words, table->view().accessibleName(), table});
            break;
        }
    }
    return found;
}

} // namespace drawercast::app
