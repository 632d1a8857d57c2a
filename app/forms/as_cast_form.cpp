// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/as_cast_form.h"

#include "plan/pour_steps.h"

#include "forms/figure_table.h"
#include "forms/notation.h"
#include "forms/part_tabs.h"
#include "language/say.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr int most_casts = 500;

QLabel* answer_label() {
    auto* label = figures_label();
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    return label;
}

/// Rows of planned and cast; a row of which nothing was measured is left out.
class Comparison {
  public:
    Comparison() { table_.row({{}, AsCastForm::tr("planned"), bold(AsCastForm::tr("cast"))}); }
    void row(const QString& name, const QString& planned, const QString& cast) {
        if (!cast.isEmpty()) table_.row({name, planned, bold(cast)});
    }
    QString table() const { return table_.rows() > 1 ? table_.html() : QString(); }

  private:
    FigureTable table_{16, 0};
};

const plan::DrawerPlan& drawer_of(const plan::Plan& plan, const std::string& id) {
    static const plan::DrawerPlan none;
    const auto* found = plan::find_drawer(plan, id);
    return found == nullptr ? none : *found;
}

std::vector<CastPocket> pockets_of(const job::Job& job, const plan::DrawerPlan& drawer) {
    std::vector<CastPocket> all;
    if (const auto board = plan::pattern_board(job, drawer))
        for (const auto& block : board->blocks)
            all.push_back({block.subject, block.number, QString::fromStdString(block.name)});
    return all;
}

/// One cast tells of no spread.
QString deviation_words(const plan::Spread& seen, const QString& words) {
    return seen.count > 1 ? words : QStringLiteral("?");
}

} // namespace

AsCastForm::AsCastForm(const job::Job& job, const plan::Plan& plan, const std::string& drawer,
                       const QString& day, const FormContext& context, QWidget* parent)
    : FormDialog(tr("As cast"), tr("Keep the casts"), context, parent), job_(job), plan_(plan),
      drawer_(drawer_of(plan, drawer)), day_(day),
      tabs_(new PartTabs({tr("Cast %1"), tr("Add a cast"), tr("Take this cast away"), {}}, 0, most_casts)),
      comparison_(answer_label()), learned_(answer_label()), mold_(answer_label()),
      bucket_left_(new QCheckBox), viscosity_(new QCheckBox), shrinkage_(new QCheckBox) {
    drawer_.id = drawer;
    pockets_ = pockets_of(job, drawer_);
    for (std::size_t i = 0; i < job.casts.size(); ++i)
        if (job.casts[i].drawer == drawer) add_page(job.casts[i], static_cast<int>(i));
    if (all_pages_.empty()) add_another();
    tabs_->show_page(all_pages_.back().widget);
    connect(tabs_, &PartTabs::asked_for_another, this, [this] {
        add_another();
        tabs_->show_page(all_pages_.back().widget);
        refresh();
    });
    connect(tabs_, &PartTabs::taken_away, this, &AsCastForm::refresh);
    connect(tabs_, &PartTabs::turned, this, &AsCastForm::refresh);
    auto* body = new QWidget;
    auto* all = new QHBoxLayout(body);
    all->setSpacing(24);
    all->addWidget(tabs_, 1);
    all->addWidget(answers());
    set_body(body);
}

QWidget* AsCastForm::answers() {
    constexpr int width_px = 350;
    auto* side = new QWidget;
    side->setFixedWidth(width_px);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    const auto head = [&](const QString& words) {
        auto* label = new QLabel(QStringLiteral("<b>%1</b>").arg(words));
        column->addWidget(label);
    };
    head(tr("This cast"));
    column->addWidget(comparison_);
    column->addSpacing(10);
    head(tr("Casts of this foam together"));
    column->addWidget(learned_);
    for (auto* box : {bucket_left_, viscosity_, shrinkage_}) {
        column->addWidget(box);
        connect(box, &QCheckBox::toggled, this, &AsCastForm::refresh);
    }
    column->addSpacing(10);
    head(tr("This mold"));
    column->addWidget(mold_);
    column->addStretch(1);
    return side;
}

void AsCastForm::add_page(const job::Cast& cast, int origin) {
    auto* page = new CastPage(cast, pockets_, context());
    connect(page, &CastPage::edited, this, &AsCastForm::refresh);
    tabs_->add_page(page);
    all_pages_.push_back({page, origin});
}

void AsCastForm::add_another() { add_page(plan::blank_cast(job_, drawer_, day_.toStdString()), -1); }

std::vector<AsCastForm::Page> AsCastForm::pages() const { return tabs_->those_there(all_pages_); }

/// The casts of other drawers stay where they are in the list.
std::optional<job::Job> AsCastForm::typed() const {
    const auto there = pages();
    std::vector<job::Cast> casts;
    const auto take = [&](const Page& page) {
        const auto cast = page.widget->typed();
        if (cast) casts.push_back(*cast);
        return cast.has_value();
    };
    for (std::size_t i = 0; i < job_.casts.size(); ++i) {
        if (job_.casts[i].drawer != drawer_.id) {
            casts.push_back(job_.casts[i]);
            continue;
        }
        const auto page = std::find_if(there.begin(), there.end(),
                                       [&](const Page& one) { return one.origin == static_cast<int>(i); });
        if (page != there.end() && !take(*page)) return std::nullopt;
    }
    for (const Page& page : there)
        if (page.origin < 0 && !take(page)) return std::nullopt;
    job::Job job = job_;
    job.casts = std::move(casts);
    return job;
}

plan::Wanted AsCastForm::wanted() const {
    const auto asked = [](const QCheckBox* box) { return !box->isHidden() && box->isChecked(); };
    return {asked(bucket_left_), asked(viscosity_), asked(shrinkage_)};
}

std::optional<job::Job> AsCastForm::value() const {
    if (!problems().empty()) return std::nullopt;
    auto job = typed();
    if (!job) return std::nullopt;
    return plan::with_calibration(*job, plan::calibration_of(*job, plan_), wanted());
}

FieldProblems AsCastForm::show_problems() {
    FieldProblems shown;
    int index = 0;
    for (const Page& page : pages()) {
        FieldProblems mine = page.widget->own_problems();
        if (const auto cast = page.widget->typed(); cast && mine.empty()) {
            job::Job job;
            job.drawers = job_.drawers;
            job.objects = job_.objects;
            job.casts = {*cast};
            mine = problems_of(job, "/casts/0");
        }
        const std::size_t before = shown.size();
        for (auto& left : page.widget->show(mine, shown)) shown.push_back(std::move(left));
        tabs_->set_to_mend(index++, shown.size() > before);
    }
    if (const auto job = shown.empty() ? typed() : std::nullopt) show_answers(*job);
    return shown;
}

void AsCastForm::show_answers(const job::Job& job) {
    comparison_->clear();
    for (const Page& page : pages())
        if (page.widget->isVisibleTo(tabs_))
            if (const auto cast = page.widget->typed()) comparison_->setText(comparison(job, *cast));
    show_learned(job);
    const auto log = plan::mold_log(job.casts, drawer_.id);
    QString words = tr("Casts: %1. Release: %2, clay renewed: %3.")
                        .arg(log.casts)
                        .arg(language::say_mass_g(log.wax_g, context().units),
                             language::say_mass_g(log.clay_g, context().units));
    if (log.on_these_holes >= plan::holes_wear_from)
        words +=
            QLatin1Char(' ') + tr("%1 casts on the same holes: in an edge they strip after 3 to 5 drives "
                                  "(our guess). Shift the closures by half their spacing.")
                                   .arg(log.on_these_holes);
    mold_->setText(words);
}

void AsCastForm::show_learned(const job::Job& job) {
    const auto learned = plan::calibration_of(job, plan_);
    const auto units = context().units;
    const auto offer = [](QCheckBox* box, const std::optional<plan::Spread>& spread, const QString& words) {
        box->setVisible(spread.has_value());
        if (spread) box->setText(words);
    };
    const auto ml = [&](double value) { return language::say_volume_ml(value, units); };
    const auto percent = [&](double share) {
        return tr("%1 %").arg(number_words(100 * share, context().mark));
    };
    const auto round = [&](double value) { return number_words(std::round(value), context().mark); };
    if (const auto& left = learned.bucket_left_ml)
        offer(bucket_left_, left,
              tr("L&eft in a bucket: %1 ± %2 (%3)")
                  .arg(ml(left->mean), deviation_words(*left, ml(left->deviation)))
                  .arg(left->count));
    else
        offer(bucket_left_, {}, {});
    if (const auto& seen = learned.viscosity_pa_s)
        offer(viscosity_, seen,
              tr("&Viscosity: %1 ± %2 Pa·s (%3), now %4")
                  .arg(round(seen->mean), deviation_words(*seen, round(seen->deviation)))
                  .arg(seen->count)
                  .arg(round(job.foam->viscosity_pa_s)));
    else
        offer(viscosity_, {}, {});
    if (const auto& seen = learned.shrinkage)
        offer(shrinkage_, seen,
              tr("&Shrinks by %1 ± %2 (%3), now %4")
                  .arg(percent(std::round(seen->mean * 1e5) / 1e5),
                       deviation_words(*seen, percent(std::round(seen->deviation * 1e5) / 1e5)))
                  .arg(seen->count)
                  .arg(percent(job.foam->shrinkage)));
    else
        offer(shrinkage_, {}, {});
    const bool any = learned.bucket_left_ml || learned.viscosity_pa_s || learned.shrinkage;
    QString words =
        any ? tr("Mean ± standard deviation (casts). Check what the job is to reckon with from now "
                 "on; undo takes it back.")
            : tr("Nothing measured yet that could be reckoned with.");
    if (learned.wider_mm)
        words += QLatin1Char(' ') +
                 tr("Pockets came out %1 ± %2 wider than planned.")
                     .arg(language::say_length(learned.wider_mm->mean, units),
                          deviation_words(*learned.wider_mm,
                                          language::say_length(learned.wider_mm->deviation, units)));
    words +=
        QLatin1Char(' ') + tr("How far the foam rises is for the test cup to say: a closed mold forces it.");
    learned_->setText(words);
}

QString AsCastForm::comparison(const job::Job& job, const job::Cast& cast) const {
    const auto units = context().units;
    const auto seen = plan::cast_figures(job, drawer_, cast);
    const auto dose = plan::dose_to_pour(job, drawer_);
    const QString none = QStringLiteral("–");
    const auto g = [&](const std::optional<double>& value) {
        return value ? language::say_mass_g(*value, units) : QString();
    };
    const auto ml = [&](const std::optional<double>& value) {
        return value ? language::say_volume_ml(*value, units) : QString();
    };
    const auto mm = [&](const std::optional<double>& value) {
        return value ? language::say_length(*value, units) : QString();
    };
    const auto kpa = [&](const std::optional<double>& value) {
        return value ? language::say_pressure_kpa(*value, units) : QString();
    };
    const auto planned = [&](const QString& words) { return words.isEmpty() ? none : words; };
    Comparison rows;
    rows.row(tr("mixed"), dose ? g(dose->a_g + dose->b_g) : none, g(cast.mixed_g));
    rows.row(tr("insert"), dose ? g(dose->insert_g) : none, g(cast.cast_g));
    rows.row(tr("left in a bucket"), dose ? ml(dose->bucket_left_ml) : none, ml(seen.bucket_left_ml));
    rows.row(tr("out of the vents"), planned(ml(cast.plugs_planned_ml)), ml(seen.plugs_ml));
    rows.row(tr("when closed, by its mass"), drawer_.pressure ? kpa(drawer_.pressure->closed_kpa) : none,
             kpa(seen.closed_kpa));
    rows.row(tr("bow of the underside"), drawer_.plate ? mm(drawer_.plate->answer.bow_mm) : none,
             mm(cast.bow_mm));
    rows.row(tr("pockets wider by"), mm(0.0), mm(seen.wider_mm));
    const QString table = rows.table();
    if (table.isEmpty()) return tr("Nothing weighed or measured yet.");
    if (seen.wasted_g && *seen.wasted_g < 0) return table + tr("More came out than was mixed: weigh again.");
    return table;
}

} // namespace drawercast::app
