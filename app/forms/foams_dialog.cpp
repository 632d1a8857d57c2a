// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/foams_dialog.h"

#include "forms/dialog_buttons.h"
#include "forms/form_context.h"
#include "forms/money.h"
#include "forms/small_screen.h"
#include "language/goods.h"
#include "language/say.h"
#include "sheets/text.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <functional>

namespace drawercast::app {

namespace {

using sheets::text;

QString firmness_words(job::Firmness firmness) {
    switch (firmness) {
    case job::Firmness::soft:
        return FoamsDialog::tr("soft");
    case job::Firmness::medium:
        return FoamsDialog::tr("medium");
    case job::Firmness::firm:
        return FoamsDialog::tr("firm");
    }
    return {};
}

QString foot_words(const plan::FoamBeside& foam, job::DisplayUnits units) {
    if (foam.foot_kpa <= 0) return FoamsDialog::tr("none rests on it");
    return FoamsDialog::tr("%1 of %2")
        .arg(language::say_pressure_kpa(foam.foot_kpa, units),
             language::say_pressure_kpa(foam.foot_most_kpa, units));
}

QString check_words(const plan::FoamBeside& foam) {
    if (foam.mends + foam.looks == 0) return FoamsDialog::tr("nothing");
    return FoamsDialog::tr("%1 to mend, %2 to look at").arg(foam.mends).arg(foam.looks);
}

} // namespace

FoamsDialog::FoamsDialog(std::vector<plan::FoamBeside> foams, const job::Job& job, QWidget* parent)
    : QDialog(parent), foams_(std::move(foams)) {
    setWindowTitle(tr("Foams side by side"));
    auto* table = new QWidget;
    auto* grid = new QGridLayout(table);
    grid->setHorizontalSpacing(24);
    grid->setVerticalSpacing(8);
    const auto units = job.display_units;
    const auto context = form_context(job);
    const auto row = [&](const QString& caption,
                         const std::function<QString(const plan::FoamBeside&)>& words) {
        QStringList all;
        for (const auto& foam : foams_) all << words(foam);
        add_row(*grid, caption, all);
    };
    row({}, [](const auto& foam) {
        return foam.of_job ? tr("%1 (this job’s)").arg(language::goods_name(foam.foam.name))
                           : language::goods_name(foam.foam.name);
    });
    row(tr("Firmness"), [](const auto& foam) { return firmness_words(foam.foam.firmness); });
    row(tr("The inserts weigh"),
        [&](const auto& foam) { return language::say_mass_g(foam.inserts_g, units); });
    row(tr("Wall beside the deepest pocket"),
        [&](const auto& foam) { return language::say_length(foam.wall_mm, units); });
    row(tr("Checks"), check_words);
    row(tr("Foot pressure, the most"), [&](const auto& foam) { return foot_words(foam, units); });
    row(tr("Pressure when closed"),
        [&](const auto& foam) { return language::say_pressure_kpa(foam.closed_kpa, units); });
    row(tr("Mixed"), [&](const auto& foam) { return language::say_volume_ml(foam.mixed_ml, units); });
    row(tr("Kits to buy"), [&](const auto& foam) {
        return foam.price ? money_words(*foam.price, job.currency, context) : tr("no price");
    });
    add_buttons(*grid);
    grid->setRowStretch(grid->rowCount(), 1);
    grid->setColumnStretch(grid->columnCount(), 1);

    QString foot = tr("The built-in foams are invented, generic ones: a data sheet’s figures go in under "
                      "Job, Foam. The layout stays as it is; a softer foam wants wider walls.");
    if (!foams_.empty() && !foams_.front().foot_object.empty())
        foot +=
            QLatin1Char(' ') + tr("The heaviest foot is that of “%1”.").arg(text(foams_.front().foot_object));
    auto* notes = new QLabel(foot, this);
    notes->setWordWrap(true);
    auto* view = new QScrollArea(this);
    view->setAccessibleName(tr("Foams side by side"));
    view->setWidget(table);
    view->setWidgetResizable(true);
    view->setFrameShape(QFrame::NoFrame);
    auto* buttons = dialog_buttons(*this, QDialogButtonBox::Close, this);
    auto* column = new QVBoxLayout(this);
    column->addWidget(view, 1);
    column->addWidget(notes);
    column->addWidget(buttons);
    const QSize wanted = table->sizeHint() + QSize(48, 120);
    fit_screen(*this, wanted.boundedTo({1100, 640}));
}

/// Words in a column of their own for each foam; the first row is bold.
void FoamsDialog::add_row(QGridLayout& grid, const QString& caption, const QStringList& words) {
    const int row = grid.count() == 0 ? 0 : grid.rowCount();
    grid.addWidget(new QLabel(caption), row, 0);
    for (int i = 0; i < words.size(); ++i) {
        auto* cell = new QLabel(words[i]);
        cell->setTextInteractionFlags(Qt::TextSelectableByMouse);
        if (row == 0) {
            QFont bold = cell->font();
            bold.setBold(true);
            cell->setFont(bold);
        }
        grid.addWidget(cell, row, i + 1);
    }
}

void FoamsDialog::add_buttons(QGridLayout& grid) {
    const int row = grid.rowCount();
    for (std::size_t i = 0; i < foams_.size(); ++i) {
        if (foams_[i].of_job) continue;
        auto* take = new QPushButton(tr("Take this foam"));
        take->setAutoDefault(false);
        take->setAccessibleName(tr("Take the foam “%1”").arg(language::goods_name(foams_[i].foam.name)));
        connect(take, &QPushButton::clicked, this, [this, i] {
            taken_ = i;
            accept();
        });
        grid.addWidget(take, row, static_cast<int>(i) + 1);
    }
}

std::optional<job::Foam> FoamsDialog::taken() const {
    return taken_ ? std::optional(foams_[*taken_].foam) : std::nullopt;
}

} // namespace drawercast::app
