// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/quick_quote_form.h"

#include "job/catalog.h"

#include "forms/figure_table.h"
#include "forms/length_edit.h"
#include "forms/money.h"
#include "forms/problem_words.h"
#include "language/goods.h"
#include "language/say.h"
#include "sheets/text.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr job::Range drawer_count{"", 1, 100, false, true};
constexpr job::Range drawer_side{"", 50, 10000};
constexpr job::Range object_count{"", 0, 10000, false, true};
constexpr job::Range area_share{"", 0.01, 0.9};

using sheets::text;

} // namespace

QuickQuoteForm::QuickQuoteForm(const job::Job& job, const FormContext& context, QWidget* parent)
    : FormDialog(tr("Rough estimate"), tr("Start a job with it"), context, parent), job_(job),
      rows_(new FieldRows), answer_(figures_label()) {
    add_rows();
    Fields start;
    start.hour_price = job.shop->hour_price, start.margin = job.shop->margin;
    numbers_.fill(start);
    answer_->setWordWrap(true);
    answer_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    constexpr int answer_px = 400;
    answer_->setFixedWidth(answer_px);
    auto* intro = new QLabel(tr("Before anything is measured: about what would it cost?"));
    auto* columns = new QHBoxLayout;
    columns->setSpacing(24);
    auto* left = new QVBoxLayout;
    left->addWidget(rows_);
    left->addStretch(1);
    columns->addLayout(left, 1);
    columns->addWidget(answer_);
    auto* body = new QWidget;
    auto* all = new QVBoxLayout(body);
    all->addWidget(intro);
    all->addLayout(columns, 1);
    connect(rows_, &FieldRows::edited, this, &QuickQuoteForm::refresh);
    if (auto* buttons = findChild<QDialogButtonBox*>())
        buttons->button(QDialogButtonBox::Cancel)->setText(tr("Close"));
    set_body(body);
    numbers_.fields().front().edit->setFocus();
}

void QuickQuoteForm::add_rows() {
    const auto number = [&](const job::Range& range, const QString& unit, double scale = 1) {
        return new ValueEdit(number_notation(context(), unit, scale), range);
    };
    const auto length = [&](const job::Range& range) { return new LengthEdit(context(), range); };
    const QString currency = text(job_.currency), percent = QStringLiteral("%");
    numbers_.add(*rows_, {"/drawers", tr("&Drawers"), number(drawer_count, {}), &Fields::drawers,
                          tr("All of a size")});
    numbers_.add(*rows_, {"/width_mm", tr("&Width"), length(drawer_side), &Fields::width_mm, tr("Inside")});
    numbers_.add(*rows_, {"/depth_mm", tr("De&pth"), length(drawer_side), &Fields::depth_mm, tr("Inside")});
    numbers_.add(*rows_, {"/insert_mm",
                          tr("&Insert's thickness"),
                          length(job::range_of("/drawers/*/insert_mm")),
                          &Fields::insert_mm,
                          {}});
    numbers_.add(*rows_, {"/objects", tr("&Objects"), number(object_count, {}), &Fields::objects,
                          tr("About how many, in all drawers")});
    numbers_.add(*rows_, {"/area_share", tr("They &cover"), number(area_share, percent, 0.01),
                          &Fields::area_share, tr("About, of the inserts")});
    numbers_.add(*rows_,
                 {"/hour_price", tr("An &hour costs"), number(job::range_of("/shop/hour_price"), currency),
                  &Fields::hour_price, tr("Of work")});
    numbers_.add(*rows_, {"/margin", tr("&Markup"), number(job::range_of("/shop/margin"), percent, 0.01),
                          &Fields::margin, tr("On all of it")});
}

job::Job QuickQuoteForm::priced(const Fields& fields) const {
    job::Job job = job_;
    job.shop.edit([&](job::Shop& shop) { shop.hour_price = fields.hour_price, shop.margin = fields.margin; });
    return job;
}

std::optional<job::Job> QuickQuoteForm::value() const {
    Fields fields;
    if (!problems().empty() || !numbers_.take(fields)) return std::nullopt;
    job::DrawerSize size;
    size.width_mm = fields.width_mm, size.depth_mm = fields.depth_mm, size.insert_mm = fields.insert_mm;
    size.clear_height_mm = std::max(size.clear_height_mm, fields.insert_mm);
    job::Job job = job::new_job(size);
    const job::Job prices = priced(fields);
    job.foam = prices.foam, job.shop = prices.shop;
    job.display_units = prices.display_units, job.currency = prices.currency;
    const job::Drawer first = *job.drawers.front();
    for (int i = 1; i < fields.drawers; ++i) {
        job::Drawer drawer = first;
        drawer.id = "d" + std::to_string(i + 1);
        drawer.name = tr("Drawer %1").arg(i + 1).toStdString();
        job.drawers.emplace_back(std::move(drawer));
    }
    return job;
}

FieldProblems QuickQuoteForm::show_problems() {
    FieldProblems all = rows_->own_problems();
    Fields fields;
    if (all.empty() && numbers_.take(fields)) {
        const plan::QuickDrawer drawer{fields.width_mm, fields.depth_mm, fields.insert_mm};
        const plan::QuickIn in{
            {static_cast<std::size_t>(fields.drawers), drawer}, fields.objects, fields.area_share};
        const job::Job job = priced(fields);
        if (const auto quote = plan::quick_quote(job, in))
            answer_->setText(answer(job, *quote));
        else
            all.push_back({"/insert_mm", problem_words(quote.error())});
    }
    FieldProblems shown;
    for (auto& problem : rows_->show(all, shown)) shown.push_back(std::move(problem));
    return shown;
}

QString QuickQuoteForm::answer(const job::Job& job, const plan::QuickQuote& quote) const {
    const auto units = context().units;
    FigureTable table(18, 2);
    const auto row = [&](const QString& name, const plan::Ranged& range, const auto& said) {
        table.row({name, bold(said(range.expected)), said(range.low), said(range.high)});
    };
    const auto ml = [&](double value) { return language::say_volume_ml(value, units); };
    const auto whole = [&](double value) { return number_words(std::round(value), context().mark); };
    const auto hours = [&](double value) { return tr("%1 h").arg(whole(value)); };
    const auto money = [&](double value) { return language::fixed(value, 0); };
    table.row({{}, tr("about"), tr("from"), tr("to")});
    row(tr("foam mixed"), quote.mixed_ml, ml);
    row(tr("boards, sheets"), quote.sheets, whole);
    row(tr("work"), quote.hours, hours);
    row(tr("shop days until ready"), quote.days, whole);
    row(bold(job.currency.empty() ? tr("price") : tr("price, %1").arg(text(job.currency))), quote.total,
        money);
    QString words = table.html() + QStringLiteral("<p>");
    words += tr("With the foam “%1”. The spread is that of what is not known yet: pockets’ depths, area, "
                "number, the foam’s rise, hours, boards.")
                 .arg(language::goods_name(job.foam->name).toHtmlEscaped());
    if (!quote.work_priced) words += QLatin1Char(' ') + tr("The hour has no price: work is not in it.");
    if (!quote.foam_priced) words += QLatin1Char(' ') + tr("The kits have no prices: foam is not in it.");
    return words + QLatin1Char(' ') + tr("Sealer, release, clay and glue are not in it.") +
           QStringLiteral("</p>");
}

} // namespace drawercast::app
