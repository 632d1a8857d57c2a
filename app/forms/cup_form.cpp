// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/cup_form.h"

#include "casting/cups.h"
#include "casting/profile.h"
#include "plan/cup_effect.h"
#include "plan/foam_in_mold.h"

#include "forms/figure_table.h"
#include "forms/foam_pages.h"
#include "forms/part_tabs.h"
#include "forms/problem_words.h"
#include "forms/rise_plot.h"
#include "language/say.h"
#include "sheets/text.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::app {

namespace {

constexpr int most_cups = 20;

using sheets::text;
QString percent(double share, int decimals) { return language::fixed(100 * share, decimals); }

/// What a cup would show if the foam did as its label says: what was measured is typed over it.
job::Cup by_the_label(const job::Job& job) {
    job::Cup cup;
    const auto label = plan::profile_today(job, plan::by_label(*job.foam));
    if (!label) return cup;
    const double floor_mm2 = std::numbers::pi * cup.diameter_mm * cup.diameter_mm / 4;
    cup.risen_mm = std::round(1000 * cup.liquid_g / label->liquid_g_ml * label->expansion / floor_mm2);
    cup.start_s = std::round(label->pot_life_s);
    cup.full_s = std::round(label->rise_s);
    cup.half_s = std::round((cup.start_s + cup.full_s) / 2);
    cup.parts_c = cup.room_c = job.shop->temperature_c;
    return cup;
}

/// What the reader has against one cup.
FieldProblems reader_problems(const job::Cup& cup) {
    job::Job job;
    job.foam.edit([&](job::Foam& foam) { foam.cup = cup; });
    return problems_of(job, "/foam");
}

} // namespace

CupForm::CupForm(const job::Job& job, const plan::Plan& plan, const FormContext& context, QWidget* parent)
    : FormDialog(tr("Test cup"), tr("Keep the cups"), context, parent), job_(job), plan_(plan),
      tabs_(new PartTabs({tr("Cup %1"), tr("Add a cup"), tr("Take this cup away"), {}}, 1, most_cups)),
      together_(new QLabel), effect_(figures_label()), plot_(new RisePlot) {
    auto* body = new QWidget;
    auto* all = new QVBoxLayout(body);
    auto* intro = new QLabel(tr("A straight cup of today’s foam, mixed as for the pour. With it the mold is "
                                "dosed closer, and less has to be held down."));
    if (!job.foam->cup)
        intro->setText(tr("%1 Until something is typed the fields hold what the label would make of it.")
                           .arg(intro->text()));
    intro->setWordWrap(true);
    together_->setWordWrap(true);
    together_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* answers = new QVBoxLayout;
    for (QWidget* part : std::initializer_list<QWidget*>{plot_, together_, effect_}) answers->addWidget(part);
    answers->addStretch(1);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(24);
    columns->addWidget(tabs_);
    columns->addLayout(answers, 1);
    all->addWidget(intro);
    all->addLayout(columns, 1);
    fresh_ = !job.foam->cup.has_value();
    add_page(fresh_ ? by_the_label(job) : *job.foam->cup);
    for (const auto& cup : job.foam->cups) add_page(cup);
    tabs_->show_page(all_pages_.front().widget);
    connect(tabs_, &PartTabs::asked_for_another, this, [this] {
        job::Cup cup = pages().back().given;
        pages().back().numbers->take(cup); // the next cup is mostly the same size
        cup.use = true;
        cup.unknown.clear();
        add_page(cup);
        tabs_->show_page(all_pages_.back().widget);
        refresh();
    });
    connect(tabs_, &PartTabs::taken_away, this, &CupForm::refresh);
    set_body(body);
}

void CupForm::add_page(const job::Cup& cup) {
    Page page{new QWidget, new QCheckBox(tr("&Use this cup in place of the label")), new FieldRows,
              std::make_shared<Bindings<job::Cup>>(), cup};
    add_cup_rows(*page.rows, *page.numbers, context());
    page.numbers->fill(cup);
    page.use->setChecked(cup.use);
    auto* column = new QVBoxLayout(page.widget);
    column->addWidget(page.use);
    column->addWidget(page.rows);
    connect(page.use, &QCheckBox::toggled, this, &CupForm::refresh);
    connect(page.rows, &FieldRows::edited, this, [this, use = page.use] {
        if (fresh_) use->setChecked(true); // who types what a cup measured means it
        fresh_ = false;
        refresh();
    });
    connect(page.use, &QCheckBox::clicked, this, [this] {
        fresh_ = false;
        refresh();
    });
    tabs_->add_page(page.widget);
    all_pages_.push_back(std::move(page));
}

std::vector<CupForm::Page> CupForm::pages() const { return tabs_->those_there(all_pages_); }

std::optional<job::Foam> CupForm::typed() const {
    job::Foam foam = *job_.foam;
    foam.cups.clear();
    bool first = true;
    for (const Page& page : pages()) {
        job::Cup cup = page.given;
        if (!page.numbers->take(cup)) return std::nullopt;
        cup.use = page.use->isChecked();
        if (first && fresh_ && !cup.use)
            foam.cup.reset(); // nothing was measured
        else if (first)
            foam.cup = cup;
        else
            foam.cups.push_back(cup);
        first = false;
    }
    return foam;
}

std::optional<job::Foam> CupForm::value() const { return problems().empty() ? typed() : std::nullopt; }

FieldProblems CupForm::show_problems() {
    FieldProblems shown;
    int index = 0;
    for (const Page& page : pages()) {
        FieldProblems mine = page.rows->own_problems();
        job::Cup cup = page.given;
        if (mine.empty() && page.numbers->take(cup)) {
            mine = reader_problems(cup);
            const auto risen = casting::profile_of({*job_.foam, job_.shop->temperature_c, 0});
            if (mine.empty() && page.use->isChecked() && risen)
                if (const auto used = casting::cup_expansion(cup, risen->liquid_g_ml); !used)
                    mine.push_back({"/cup/risen_mm", problem_words(used.error())});
        }
        const std::size_t before = shown.size();
        for (auto& left : page.rows->show(mine, shown)) shown.push_back(std::move(left));
        tabs_->set_to_mend(index++, shown.size() > before);
    }
    show_effect(shown.empty() ? typed() : std::nullopt);
    return shown;
}

void CupForm::show_effect(const std::optional<job::Foam>& foam) {
    if (!foam) return; // the last good answer stays while something is being typed
    const auto label = plan::profile_today(job_, plan::by_label(*foam));
    const auto now = plan::profile_today(job_, *foam);
    const bool by_cup = now && now->by_cup;
    plot_->set_profiles(label ? std::optional(*label) : std::nullopt,
                        by_cup ? std::optional(*now) : std::nullopt);
    together_->setText(together(*foam));
    effect_->setText(table(*foam));
}

QString CupForm::together(const job::Foam& foam) const {
    const auto used = casting::cups_in_use(foam);
    const auto now = plan::profile_today(job_, foam);
    if (used.empty() || !now) return tr("No cup is in use: every figure of the foam is by the label.");
    const auto mean = casting::mean_of_cups(used, now->liquid_g_ml);
    if (!mean) return problem_words(mean.error());
    const QString rise = language::fixed(mean->expansion, 2);
    if (mean->count == 1)
        return tr("Rises ×%1 here, after the label’s ×%2; ± %3 % is reckoned with, our guess.")
            .arg(rise, language::fixed(foam.expansion, 2), percent(now->uncertainty, 1));
    return tr("%1 cups: rise ×%2 in the mean, standard deviation %3, ± %4 % from the least to the greatest; "
              "± %5 % is reckoned with, never less than 4 % (our guess).")
        .arg(mean->count)
        .arg(rise, language::fixed(mean->deviation, 2), percent(mean->spread, 1),
             percent(now->uncertainty, 1));
}

QString CupForm::table(const job::Foam& foam) const {
    const auto units = context().units;
    FigureTable table(14, 1);
    table.row({bold(tr("drawer")), bold(tr("poured")), bold(tr("overpack")), bold(tr("when closed")),
               bold(tr("build for"))});
    const auto add = [&](const QString& name, const std::optional<plan::FoamEffect>& effect) {
        if (!effect) return table.remark(name, tr("refused: see the checks"), 4);
        table.row({name, language::say_volume_ml(effect->dose.poured_ml, units),
                   percent(effect->dose.overpack, 0) + QStringLiteral(" %"),
                   language::say_pressure_kpa(effect->pressure.closed_kpa, units),
                   language::say_pressure_kpa(effect->pressure.build_for_kpa, units)});
    };
    const bool by_cup = !casting::cups_in_use(foam).empty();
    for (std::size_t i = 0; i < std::min(plan_.drawers.size(), job_.drawers.size()); ++i) {
        if (!plan_.drawers[i].cavity) continue;
        const QString name = text(job_.drawers[i]->name).toHtmlEscaped();
        add(tr("%1, by the label").arg(name), effect_of(job_, plan_.drawers[i], plan::by_label(foam)));
        if (by_cup) add(tr("%1, by the cup").arg(bold(name)), effect_of(job_, plan_.drawers[i], foam));
    }
    return table.html();
}

} // namespace drawercast::app
