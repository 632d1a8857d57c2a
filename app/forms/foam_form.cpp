// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/foam_form.h"

#include "casting/profile.h"
#include "job/catalog.h"

#include "forms/foam_pages.h"
#include "forms/problem_words.h"
#include "forms/table_edit.h"
#include "language/goods.h"
#include "language/say.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr int most_kits = 100;
constexpr int most_name = 200;

bool is_builtin_name(const QString& name) {
    const auto& foams = job::builtin_foams();
    return std::any_of(foams.begin(), foams.end(),
                       [&](const job::Foam& foam) { return language::goods_name(foam.name) == name; });
}

TableEdit* kit_table(const FormContext& context) {
    const Notation volume = quantity_notation(Quantity::volume_ml, context);
    NumberColumn name{FoamForm::tr("kit"), {}, {}, 0, true};
    NumberColumn contents{FoamForm::tr("A and B, %1").arg(volume.unit), volume,
                          job::range_of("/foam/kits/*/volume_ml"), 1900};
    NumberColumn price{FoamForm::tr("price"), number_notation(context, {}),
                       job::range_of("/foam/kits/*/price")};
    NumberColumn at_hand{FoamForm::tr("at hand"), number_notation(context, {}),
                         job::range_of("/foam/kits/*/at_hand")};
    return new TableEdit({name, contents, price, at_hand},
                         {FoamForm::tr("Kits"), FoamForm::tr("Add a kit (Insert)"),
                          FoamForm::tr("Take this kit away (Delete)")},
                         0, most_kits);
}

QWidget* page_of(QWidget* content, const QString& intro = {}) {
    auto* page = new QWidget;
    auto* all = new QVBoxLayout(page);
    if (!intro.isEmpty()) {
        auto* words = new QLabel(intro, page);
        words->setWordWrap(true);
        all->addWidget(words);
    }
    all->addWidget(content);
    all->addStretch(1);
    return page;
}

} // namespace

FoamForm::FoamForm(const job::Foam& foam, const job::Shop& shop, const FormContext& context, QWidget* parent)
    : FormDialog(tr("Foam"), tr("Use this foam"), context, parent), profiles_{foam}, shop_(shop),
      choice_(new QComboBox), name_rows_(new FieldRows), name_(new QLineEdit), today_(new QLabel),
      pages_(new QTabWidget), rise_rows_(new FieldRows), cured_rows_(new FieldRows), cup_rows_(new FieldRows),
      firmness_(new QComboBox), crush_(new QCheckBox(tr("&Crush by hand after demolding"))),
      use_cup_(new QCheckBox(tr("&Use this cup in place of the label"))), kits_(kit_table(context)) {
    for (const auto& builtin : job::builtin_foams())
        if (!(builtin == foam)) profiles_.push_back(builtin);
    auto* body = new QWidget;
    auto* all = new QVBoxLayout(body);
    all->addWidget(make_head());
    all->addWidget(make_pages(), 1);
    fill(foam);
    set_body(body);
    choice_->setFocus();
}

QWidget* FoamForm::make_head() {
    for (std::size_t i = 0; i < profiles_.size(); ++i) {
        const QString name = language::goods_name(profiles_[i].name);
        choice_->addItem(i == 0 ? tr("This job's: %1").arg(name) : tr("Built in: %1").arg(name));
    }
    name_->setMaxLength(most_name);
    today_->setWordWrap(true);
    name_rows_->add_wide("/profile", tr("Start &from"), choice_);
    name_rows_->add_wide("/name", tr("&Name"), name_);
    auto* head = new QWidget;
    auto* lines = new QVBoxLayout(head);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(name_rows_);
    lines->addWidget(today_);
    connect(choice_, &QComboBox::activated, this, &FoamForm::choose_profile);
    connect(name_, &QLineEdit::textEdited, this, &FoamForm::refresh);
    return head;
}

QWidget* FoamForm::make_pages() {
    add_rise_rows(*rise_rows_, rise_, context());
    for (const QString& words : {tr("firm"), tr("medium"), tr("soft")}) firmness_->addItem(words);
    cured_rows_->add("/firmness", tr("Firmn&ess"), firmness_,
                     tr("Says which fits, walls and floors are practice"));
    add_cured_rows(*cured_rows_, cured_, context());
    cured_rows_->add_widget(crush_);
    pages_->setAccessibleName(tr("Parts of the foam’s figures"));
    pages_->addTab(page_of(rise_rows_), tr("Rise and mix"));
    pages_->addTab(page_of(cured_rows_), tr("Once cured"));
    pages_->addTab(page_of(kits_, tr("What the foam is sold in. The cheapest combination of whole kits that "
                                     "covers the job is taken, "
                                     "what is at hand first.")),
                   tr("Kits"));
    pages_->addTab(make_cup_page(), tr("Test cup"));
    const auto own = [this] {
        make_own();
        refresh();
    };
    connect(rise_rows_, &FieldRows::edited, this, own);
    connect(cured_rows_, &FieldRows::edited, this, own);
    connect(cup_rows_, &FieldRows::edited, this, &FoamForm::refresh); // today's cup is no other foam
    connect(use_cup_, &QCheckBox::toggled, this, &FoamForm::refresh);
    connect(firmness_, &QComboBox::activated, this, own);
    connect(crush_, &QCheckBox::clicked, this, own);
    connect(kits_, &TableEdit::edited, this, own);
    return pages_;
}

QWidget* FoamForm::make_cup_page() {
    add_cup_rows(*cup_rows_, cup_, context());
    auto* content = new QWidget;
    auto* all = new QVBoxLayout(content);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(use_cup_);
    all->addWidget(cup_rows_);
    return page_of(
        content,
        tr("A cup poured today tells how far this foam rises here and now. With it the pour is dosed "
           "closer, and less has to be held down."));
}

void FoamForm::choose_profile(int index) {
    job::Foam foam = profiles_[static_cast<std::size_t>(index)];
    if (!foam.cup && index != 0) { // what the maker measured stays, and tells nothing of another foam
        foam.cup = profiles_.front().cup;
        foam.cups = profiles_.front().cups;
        if (foam.cup) foam.cup->use = false;
        for (auto& cup : foam.cups) cup.use = false;
    }
    fill(foam);
    refresh();
}

void FoamForm::fill(const job::Foam& foam) {
    profile_ = foam;
    name_->setText(language::goods_name(foam.name));
    rise_.fill(foam);
    cured_.fill(foam);
    cup_.fill(foam.cup.value_or(job::Cup{}));
    firmness_->setCurrentIndex(static_cast<int>(foam.firmness));
    crush_->setChecked(foam.crush);
    const QSignalBlocker quiet(use_cup_);
    use_cup_->setChecked(foam.cup && foam.cup->use);
    std::vector<NumberRow> rows;
    for (const auto& kit : foam.kits)
        rows.push_back({language::goods_name(kit.name),
                        {0, kit.volume_ml, kit.price, double(kit.at_hand)},
                        int(rows.size())});
    kits_->set_rows(std::move(rows));
}

/// A changed built-in profile is not that profile any more, and must not go by its name.
void FoamForm::make_own() {
    if (is_builtin_name(name_->text())) name_->setText(tr("%1, own").arg(name_->text()));
}

std::optional<job::Foam> FoamForm::typed() const {
    job::Foam foam = profile_;
    job::Cup cup = foam.cup.value_or(job::Cup{});
    const bool rise_read = rise_.take(foam), cured_read = cured_.take(foam), cup_read = cup_.take(cup);
    if (!rise_read || !cured_read || (use_cup_->isChecked() && !cup_read)) return std::nullopt;
    foam.name = language::goods_key(name_->text());
    foam.firmness = static_cast<job::Firmness>(firmness_->currentIndex());
    foam.crush = crush_->isChecked();
    cup.use = use_cup_->isChecked();
    if (foam.cup || !(cup == job::Cup{})) foam.cup = cup;
    std::vector<job::Kit> kits;
    for (const NumberRow& row : kits_->rows()) {
        job::Kit kit = row.origin < 0 ? job::Kit{} : profile_.kits[static_cast<std::size_t>(row.origin)];
        kit.name = language::goods_key(row.words);
        kit.volume_ml = row.numbers[1];
        kit.price = row.numbers[2];
        kit.at_hand = static_cast<int>(row.numbers[3]);
        kits.push_back(std::move(kit));
    }
    foam.kits = std::move(kits);
    return foam;
}

std::optional<job::Foam> FoamForm::value() const { return problems().empty() ? typed() : std::nullopt; }

FieldProblems FoamForm::reader_problems(const job::Foam& foam) const {
    job::Job job;
    job.foam = foam;
    FieldProblems problems = problems_of(job, "/foam");
    const auto today = casting::profile_of({foam, shop_.temperature_c, shop_.altitude_m});
    if (!today) problems.push_back({"/cup", problem_words(today.error()), tr("Test cup"), use_cup_});
    return problems;
}

FieldProblems FoamForm::show_problems() {
    const auto foam = typed();
    const FieldProblems of_reader = foam ? reader_problems(*foam) : FieldProblems{};
    show_differences();
    show_today(foam);
    cup_rows_->setEnabled(use_cup_->isChecked());

    FieldProblems shown;
    FieldProblems left = of_reader;
    if (name_->text().trimmed().isEmpty())
        left.insert(left.begin(), {"/name", tr("Give it a name to be known by")});
    left = name_rows_->show(left, shown);
    for (FieldRows* rows : {rise_rows_, cured_rows_, cup_rows_}) {
        FieldProblems mine =
            rows == cup_rows_ && !use_cup_->isChecked() ? FieldProblems{} : rows->own_problems();
        mine.insert(mine.end(), left.begin(), left.end());
        left = rows->show(mine, shown);
    }
    shown.insert(shown.end(), left.begin(), left.end());
    return shown;
}

/// Beside each number that is not the profile's: what the profile has.
void FoamForm::show_differences() {
    job::Foam now = profile_;
    for (const auto& [rows, numbers] : {std::pair{rise_rows_, &rise_}, {cured_rows_, &cured_}}) {
        numbers->take(now);
        for (const auto& field : numbers->fields()) {
            const auto words = [&](auto member) -> QString {
                return now.*member == profile_.*member ? QString() : field.edit->words_of(profile_.*member);
            };
            const QString was = std::visit(words, field.member);
            const QString hint = field.edit->hint(field.hint);
            rows->set_hint(field.path, was.isEmpty() ? hint : tr("The profile has %1. %2").arg(was, hint));
        }
    }
}

void FoamForm::show_today(const std::optional<job::Foam>& foam) {
    const auto today =
        foam ? std::optional(casting::profile_of({*foam, shop_.temperature_c, shop_.altitude_m}))
             : std::nullopt;
    if (!today || !*today) {
        today_->clear();
        return;
    }
    const casting::Profile& p = **today;
    const auto units = context().units;
    const double weight_b =
        100 * foam->ratio_b * foam->density_b_g_ml / (foam->ratio_a * foam->density_a_g_ml);
    const QString density = language::say_density_kg_m3(1000 * p.liquid_g_ml / p.expansion, units);
    today_->setText(tr("Today, at %1 and %2: rises ×%3 (%4 free rise), by weight 100 A to %5 B, pot life %6 "
                       "s, risen after %7 s.")
                        .arg(language::say_temperature_c(shop_.temperature_c, units),
                             language::say_altitude_m(shop_.altitude_m, units),
                             language::fixed(p.expansion, 1), density, language::fixed(weight_b, 0),
                             language::fixed(p.pot_life_s, 0), language::fixed(p.rise_s, 0)));
}

} // namespace drawercast::app
