// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/shop_form.h"

#include "base/units.h"

#include "forms/length_edit.h"
#include "forms/stock_pages.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QTabWidget>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

using job::Shop;

FieldProblems reader_problems(const Shop& shop) {
    job::Job job;
    job.shop = shop;
    return problems_of(job, "/shop");
}

QWidget* column_of(QWidget* rows) {
    auto* column = new QWidget;
    auto* all = new QVBoxLayout(column);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(rows);
    all->addStretch(1);
    return column;
}

} // namespace

ShopForm::ShopForm(const Shop& shop, const FormContext& context, QWidget* parent)
    : FormDialog(tr("Shop"), tr("Keep changes"), context, parent), given_(shop), pages_(new QTabWidget),
      left_(new FieldRows), right_(new FieldRows), drills_(new QLineEdit) {
    add_day_rows();
    add_mixing_rows();
    add_saw_rows();
    numbers_.fill(shop);
    auto* day = new QWidget;
    auto* all = new QVBoxLayout(day);
    auto* columns = new QHBoxLayout;
    all->addLayout(columns, 1);
    constexpr int wide_px = 940; // hints and heads of columns are read whole, where the screen is as wide
    all->addSpacerItem(new QSpacerItem(wide_px, 0, QSizePolicy::Preferred, QSizePolicy::Fixed));
    columns->setSpacing(24);
    columns->addWidget(column_of(left_));
    columns->addWidget(column_of(right_));
    for (auto* rows : {left_, right_}) connect(rows, &FieldRows::edited, this, &ShopForm::refresh);
    connect(drills_, &QLineEdit::textEdited, this, &ShopForm::refresh);
    pages_->setAccessibleName(tr("Parts of the shop"));
    pages_->addTab(day, tr("Day and tools"));
    stock_ = new StockPages(shop, context, *pages_);
    connect(stock_, &StockPages::edited, this, &ShopForm::refresh);
    set_body(pages_);
    numbers_.fields().front().edit->setFocus();
}

void ShopForm::add_day_rows() {
    const auto number = [this](const char* path, const QString& unit) {
        return new ValueEdit(number_notation(context(), unit), job::range_of(path));
    };
    auto* temperature = new ValueEdit(quantity_notation(Quantity::temperature_c, context()),
                                      job::range_of("/shop/temperature_c"));
    auto* altitude =
        new ValueEdit(quantity_notation(Quantity::altitude_m, context()), job::range_of("/shop/altitude_m"));
    left_->add_head(tr("The day"));
    numbers_.add(*left_, {"/temperature_c", tr("&Temperature"), temperature, &Shop::temperature_c,
                          tr("Of room and parts")});
    numbers_.add(*left_, {"/altitude_m", tr("&Altitude"), altitude, &Shop::altitude_m,
                          tr("Thin air lets foam rise more")});
    numbers_.add(*left_, {"/people", tr("People who mi&x"), number("/shop/people", {}), &Shop::people,
                          tr("Each with a mixer")});
    left_->add_head(tr("Closing the mold"));
    numbers_.add(*left_, {"/drivers", tr("People closin&g"), number("/shop/drivers", {}), &Shop::drivers,
                          tr("They tighten the closures")});
    numbers_.add(*left_, {"/seconds_per_closure", tr("Seconds a &closure"),
                          number("/shop/seconds_per_closure", tr("s")), &Shop::seconds_per_closure,
                          tr("3 pre-started, 5 not (common practice)")});
    numbers_.add(*left_, {"/set_plate_s", tr("&Setting the plate"), number("/shop/set_plate_s", tr("s")),
                          &Shop::set_plate_s, tr("8 is common practice")});
    left_->add_head(tr("Hours and prices"));
    numbers_.add(*left_, {"/opens_h", tr("Ope&ns at"), number("/shop/opens_h", tr("o’clock")), &Shop::opens_h,
                          tr("Half past eight is 8.5")});
    numbers_.add(
        *left_,
        {"/closes_h", tr("C&loses at"), number("/shop/closes_h", tr("o’clock")), &Shop::closes_h, {}});
    numbers_.add(*left_, {"/hour_price", tr("An h&our costs"), number("/shop/hour_price", {}),
                          &Shop::hour_price, tr("Of work, in the job's currency")});
    auto* margin =
        new ValueEdit(number_notation(context(), QStringLiteral("%"), 0.01), job::range_of("/shop/margin"));
    numbers_.add(*left_, {"/margin", tr("Mar&kup"), margin, &Shop::margin, tr("On top of the cost")});
}

void ShopForm::add_mixing_rows() {
    const auto volume = [this](const char* path) {
        return new ValueEdit(quantity_notation(Quantity::volume_ml, context()), job::range_of(path));
    };
    const bool metric = context().metric();
    auto* rate = new ValueEdit(
        number_notation(context(), metric ? tr("L/s") : tr("qt/s"), metric ? 1 : units::ml_per_quart / 1000),
        job::range_of("/shop/pour_l_s"));
    auto* pour = new ValueEdit(number_notation(context(), tr("s")), job::range_of("/shop/pour_s"));
    auto* mixer = volume("/shop/mixer_ml");
    auto* left_over = volume("/shop/bucket_left_ml");
    pour->allow_empty(tr("by the rate"));
    mixer->allow_empty(tr("no limit"));
    left_over->allow_empty(tr("auto"));
    auto* room = new ValueEdit(number_notation(context(), {}), job::range_of("/shop/stir_room"));
    auto* scale = new ValueEdit(number_notation(context(), tr("g")), job::range_of("/shop/scale_step_g"));
    right_->add_head(tr("Mixing and pouring"));
    numbers_.add(*right_, {"/scale_step_g", tr("Scal&e's step"), scale, &Shop::scale_step_g,
                           tr("The smallest it shows")});
    numbers_.add(*right_, {"/container_ml", tr("&Bucket"), volume("/shop/container_ml"), &Shop::container_ml,
                           tr("Of the largest one")});
    numbers_.add(*right_, {"/stir_room", tr("Room to st&ir"), room, &Shop::stir_room,
                           tr("Left empty above, as a multiple of the liquid")});
    numbers_.add(*right_, {"/mixer_ml", tr("&Mixer takes"), mixer, &Shop::mixer_ml, {}});
    numbers_.add(*right_, {"/bucket_left_ml", tr("Left in the b&ucket"), left_over, &Shop::bucket_left_ml,
                           tr("Auto: the more of 40 mL and 4 % (common practice)")});
    numbers_.add(*right_,
                 {"/pour_l_s", tr("Pour &rate"), rate, &Shop::pour_l_s, tr("0.1 L/s is common practice")});
    numbers_.add(*right_, {"/pour_s", tr("&Pouring takes"), pour, &Shop::pour_s, tr("As in the dry run")});
}

void ShopForm::add_saw_rows() {
    auto* step = new LengthEdit(context(), job::range_of("/shop/saw_step_mm"));
    auto* kerf = new LengthEdit(context(), job::range_of("/shop/kerf_mm"));
    const auto length = length_notation(context());
    QStringList drills;
    for (const double mm : given_.drills_mm) drills << length.shown(mm);
    drills_shown_ = drills.join(QStringLiteral("; "));
    drills_->setText(drills_shown_);
    right_->add_head(tr("Saw and drills"));
    numbers_.add(*right_,
                 {"/saw_step_mm", tr("Sa&w's step"), step, &Shop::saw_step_mm, tr("Cuts are rounded to it")});
    numbers_.add(*right_, {"/kerf_mm", tr("Ker&f"), kerf, &Shop::kerf_mm, tr("What the blade takes")});
    right_->add_wide("/drills_mm", tr("Drills at &hand, %1").arg(length.unit), drills_);
}

/// Lengths with semicolons or blanks between, as shown; nothing where one cannot be read.
std::optional<std::vector<double>> ShopForm::typed_drills() const {
    if (drills_->text() == drills_shown_) return given_.drills_mm;
    const auto length = length_notation(context());
    std::vector<double> drills;
    for (const QString& one : drills_->text().split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
        if (one.trimmed().isEmpty()) continue;
        const auto mm = length.typed(one);
        if (!mm) return std::nullopt;
        drills.push_back(*mm);
    }
    return drills;
}

std::optional<Shop> ShopForm::typed() const {
    Shop shop = given_;
    const auto drills = typed_drills();
    if (!numbers_.take(shop) || !drills) return std::nullopt;
    shop.drills_mm = *drills;
    stock_->take(shop);
    return shop;
}

std::optional<Shop> ShopForm::value() const { return problems().empty() ? typed() : std::nullopt; }

FieldProblems ShopForm::show_problems() {
    FieldProblems all = left_->own_problems();
    for (auto& problem : right_->own_problems()) all.push_back(std::move(problem));
    if (!typed_drills()) all.push_back({"/drills_mm", tr("Type them like 2; 2.5; 3")});
    if (const auto shop = typed())
        for (auto& problem : reader_problems(*shop)) all.push_back(std::move(problem));
    FieldProblems shown;
    for (auto& problem : right_->show(left_->show(all, shown), shown)) shown.push_back(std::move(problem));
    for (auto& problem : stock_->problems()) shown.push_back(std::move(problem));
    return shown;
}

} // namespace drawercast::app
