// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/cost_dialog.h"

#include "forms/dialog_buttons.h"
#include "forms/figure_table.h"
#include "forms/money.h"
#include "forms/notation.h"
#include "forms/run_plot.h"
#include "forms/small_screen.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <cmath>

namespace drawercast::app {

namespace {

constexpr int usual_run = 10;

} // namespace

CostDialog::CostDialog(const plan::CostBasis& basis, const std::string& currency, const FormContext& context,
                       QWidget* parent)
    : QDialog(parent), basis_(basis), currency_(currency), context_(context), sets_(new QSpinBox),
      figures_(figures_label()), plot_(new RunPlot(basis)) {
    setWindowTitle(tr("Cost and quote"));
    sets_->setRange(1, RunPlot::most_sets);
    sets_->setValue(usual_run);
    sets_->setAccessibleName(tr("Sets in the run"));
    auto* label = new QLabel(tr("&Sets in the run"));
    label->setBuddy(sets_);
    auto* chosen = new QHBoxLayout;
    chosen->addWidget(label);
    chosen->addWidget(sets_);
    chosen->addStretch(1);
    auto* left = new QVBoxLayout;
    left->addLayout(chosen);
    left->addWidget(figures_);
    left->addStretch(1);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(24);
    columns->addLayout(left);
    columns->addWidget(plot_, 1);
    auto* words = new QLabel(notes());
    words->setWordWrap(true);
    auto* buttons = dialog_buttons(*this, QDialogButtonBox::Close, nullptr);
    auto* all = new QVBoxLayout(this);
    all->addLayout(columns, 1);
    all->addSpacing(8);
    all->addWidget(words);
    all->addWidget(buttons);
    connect(sets_, &QSpinBox::valueChanged, this, &CostDialog::show_run);
    show_run();
    constexpr int width_px = 900, height_px = 430;
    fit_screen(*this, {width_px, height_px});
    sets_->setFocus();
}

void CostDialog::show_run() {
    const auto one = plan::cost_of(basis_, 1), run = plan::cost_of(basis_, sets_->value());
    plot_->set_run(run.sets);
    const auto money = [&](double amount) { return money_words(amount, currency_, context_); };
    const auto priced = [&](bool known, double amount) { return known ? money(amount) : tr("no price"); };
    const auto hours = [&](double value) {
        return tr("%1 h").arg(number_words(std::round(value * 10) / 10, context_.mark));
    };
    const QString percent = number_words(100 * basis_.margin, context_.mark);
    const bool work = basis_.hour_price > 0;
    FigureTable table(22, 2);
    const auto heavy = [&](const QString& name, const QString& of_one, const QString& of_run) {
        table.row({bold(name), bold(of_one), bold(of_run)});
    };
    heavy({}, tr("one set"), tr("run of %1").arg(run.sets));
    table.row(
        {tr("Foam, whole kits"), priced(basis_.foam_priced, one.foam), priced(basis_.foam_priced, run.foam)});
    table.row({tr("Boards, lumber and tubes"), priced(basis_.wood_priced, one.wood),
               priced(basis_.wood_priced, run.wood)});
    table.row({tr("Closures of the plates"), money(one.closures), money(run.closures)});
    const bool sold = !basis_.supplies.empty();
    table.row({tr("What is used up"), priced(sold, one.supplies), priced(sold, run.supplies)});
    table.row({tr("Hours"), hours(one.hours), hours(run.hours)});
    table.row({tr("Work"), priced(work, one.work), priced(work, run.work)});
    table.row({tr("Markup, %1 %").arg(percent), money(one.margin), money(run.margin)});
    heavy(tr("Together"), money(one.total), money(run.total));
    heavy(tr("Each set"), money(one.each()), money(run.each()));
    figures_->setText(table.html());
}

QString CostDialog::notes() const {
    QString words =
        tr("A set is one insert of each drawer; the first is ready after %1 shop days. Whole sheets, lumber "
           "and kits are charged, those on the shelf too. Hours are the run sheet’s, our guess.")
            .arg(basis_.days);
    if (basis_.unpriced > 0)
        words += QLatin1Char(' ') + tr("%1 of the boards, lumber, tubes, screws and closures to buy have no "
                                       "price: they are not in it.")
                                        .arg(basis_.unpriced);
    if (basis_.hour_price <= 0)
        words += QLatin1Char(' ') + tr("A price for the hour stands under Job, Shop and day of the pour.");
    return words + QLatin1Char(' ') +
           tr("Sealer, release and the like count where the shop says how they are sold.");
}

} // namespace drawercast::app
