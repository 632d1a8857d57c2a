// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/mold_form.h"

#include "job/catalog.h"

#include "forms/length_edit.h"
#include "language/goods.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

FieldProblems reader_problems(const job::Mold& mold, const job::Shop& shop) {
    job::Job job;
    job.mold = mold;
    job.shop = shop; // what is fixed is one of the shop's
    return problems_of(job, "/mold");
}

template <class Items>
QStringList names_of(const Items& items) {
    QStringList names;
    for (const auto& item : items) names << language::goods_name(item.name);
    return names;
}

std::optional<std::string> chosen(const QComboBox* combo) {
    if (combo->currentIndex() <= 0) return std::nullopt; // the first says "automatic"
    return language::goods_key(combo->currentText());
}

} // namespace

MoldForm::MoldForm(const job::Mold& mold, const job::Shop& shop, const FormContext& context, QWidget* parent)
    : FormDialog(tr("How the molds are built"), tr("Keep changes"), context, parent), given_(mold),
      shop_(shop), rows_(new FieldRows), stiffening_(new QComboBox), along_(new QComboBox),
      glued_(new QCheckBox(tr("&Glued onto the plate"))),
      gasket_(new QCheckBox(tr("A gas&ket strip on the box walls"))), corner_(new QComboBox),
      share_walls_(new QCheckBox(tr("Equal box &walls serve all drawers, cast one after the other"))) {
    auto* body = new QWidget;
    auto* all = new QVBoxLayout(body);
    auto* intro =
        new QLabel(tr("What is automatic is found anew after every change: the cheapest of the shop’s "
                      "that holds and can be closed in time. What you fix is checked alike."),
                   body);
    intro->setWordWrap(true);
    all->addWidget(intro);
    all->addWidget(rows_);
    all->addStretch(1);
    add_plate();
    add_stiffeners();
    add_rest();
    fill();
    connect(rows_, &FieldRows::edited, this, &MoldForm::refresh);
    set_body(body);
    board_->setFocus();
}

/// "automatic" and the shop's; one that the shop has no more stays, so that the form changes nothing unasked.
QComboBox* MoldForm::names(QStringList names, const std::optional<std::string>& now) {
    auto* combo = new QComboBox;
    const QString name = now ? language::goods_name(*now) : QString();
    if (now && !names.contains(name)) names << name;
    combo->addItem(tr("automatic"));
    combo->addItems(names);
    combo->setCurrentIndex(now ? combo->findText(name) : 0);
    connect(combo, &QComboBox::activated, this, &MoldForm::refresh);
    return combo;
}

void MoldForm::add_plate() {
    board_ = names(names_of(job::boards_of(shop_)), given_.board);
    box_board_ = names(names_of(job::boards_of(shop_)), given_.box_board);
    closure_ = names(names_of(job::closures_of(shop_)), given_.closure);
    rows_->add_head(tr("Plate and box"));
    rows_->add_wide("/board", tr("&Board of the plate"), board_);
    rows_->add_wide("/box_board", tr("Board of wa&lls and base"), box_board_);
    rows_->add_wide("/closure", tr("&Closures"), closure_);
    auto* spacing = new LengthEdit(context(), job::range_of("/mold/spacing_mm"));
    spacing->allow_empty(tr("automatic"));
    numbers_.add(*rows_, {"/spacing_mm", tr("Greatest &pitch of closures"), spacing, &job::Mold::spacing_mm,
                          tr("Along a wall; common practice is 50 to 75 mm without stiffeners")});
    rows_->add_widget(gasket_);
    connect(gasket_, &QCheckBox::toggled, this, &MoldForm::refresh);
}

void MoldForm::add_stiffeners() {
    stiffening_->addItems({tr("automatic"), tr("none"), tr("fixed by you")});
    along_->addItems({tr("the short side of the plate"), tr("the long side of the plate")});
    piece_ = new QComboBox;
    piece_->addItems(names_of(job::stiffeners_of(shop_)));
    rows_->add_head(tr("Stiffeners"));
    rows_->add_wide("/stiffeners", tr("&Stiffeners"), stiffening_);
    auto* count = new ValueEdit(number_notation(context(), {}), job::range_of("/mold/stiffeners/count"));
    count_.add(*rows_, {"/stiffeners/count", tr("&Number of them"), count, &job::StiffenerChoice::count});
    rows_->add_wide("/stiffeners/name", tr("P&iece"), piece_);
    rows_->add_wide("/stiffeners/along", tr("&Along"), along_);
    rows_->add_widget(glued_);
    connect(stiffening_, &QComboBox::activated, this, [this] {
        show_stiffeners();
        refresh();
    });
    for (auto* combo : {piece_, along_}) connect(combo, &QComboBox::activated, this, &MoldForm::refresh);
    connect(glued_, &QCheckBox::toggled, this, &MoldForm::refresh);
}

void MoldForm::add_rest() {
    using job::Mold;
    const auto length = [&](const char* path) { return new LengthEdit(context(), job::range_of(path)); };
    corner_->addItems({tr("butted: two walls run through"), tr("pinwheel: each wall runs past the next")});
    rows_->add_head(tr("Corners and blocks"));
    rows_->add_wide("/corner", tr("C&orners of the box"), corner_);
    rows_->add_widget(share_walls_);
    connect(corner_, &QComboBox::activated, this, &MoldForm::refresh);
    connect(share_walls_, &QCheckBox::toggled, this, &MoldForm::refresh);
    numbers_.add(*rows_, {"/fillet_mm", tr("&Radius of the clay fillets"), length("/mold/fillet_mm"),
                          &Mold::fillet_mm, tr("Around the foot of every block")});
    numbers_.add(*rows_, {"/film_mm", tr("Thickness of the s&ealer"), length("/mold/film_mm"), &Mold::film_mm,
                          tr("Blocks are cut smaller by it")});
    rows_->add_head(tr("Vents and pressure"));
    numbers_.add(*rows_, {"/vent_spacing_mm", tr("&Vents along walls every"), length("/mold/vent_spacing_mm"),
                          &Mold::vent_spacing_mm, tr("Common practice; those over air pockets come first")});
    numbers_.add(*rows_,
                 {"/pressure_factor", tr("&Margin on the pressure"),
                  new ValueEdit(number_notation(context(), {}), job::range_of("/mold/pressure_factor")),
                  &Mold::pressure_factor, tr("To build for, over the pressure when closed; our guess")});
}

void MoldForm::fill() {
    numbers_.fill(given_);
    gasket_->setChecked(given_.gasket);
    corner_->setCurrentIndex(given_.corner == job::BoxCorner::pinwheel ? 1 : 0);
    share_walls_->setChecked(given_.share_walls);
    job::StiffenerChoice choice = given_.stiffeners.value_or(job::StiffenerChoice{});
    stiffening_->setCurrentIndex(!given_.stiffeners ? automatic : choice.count == 0 ? none : fixed);
    const QString name = language::goods_name(choice.name);
    if (!name.isEmpty() && piece_->findText(name) < 0) piece_->addItem(name);
    if (!name.isEmpty()) piece_->setCurrentIndex(piece_->findText(name));
    along_->setCurrentIndex(choice.along == job::Along::long_side ? 1 : 0);
    glued_->setChecked(choice.glued);
    if (choice.count == 0) choice.count = 1; // where the maker turns to "fixed"
    count_.fill(choice);
    show_stiffeners();
}

void MoldForm::show_stiffeners() {
    const bool shown = stiffening_->currentIndex() == fixed;
    for (const char* path : {"/stiffeners/count", "/stiffeners/name", "/stiffeners/along"})
        rows_->set_row_shown(path, shown);
    glued_->setVisible(shown);
}

std::optional<job::Mold> MoldForm::typed() const {
    job::Mold mold = given_;
    if (!numbers_.take(mold)) return std::nullopt;
    mold.board = chosen(board_);
    mold.box_board = chosen(box_board_);
    mold.closure = chosen(closure_);
    mold.gasket = gasket_->isChecked();
    mold.corner = corner_->currentIndex() == 1 ? job::BoxCorner::pinwheel : job::BoxCorner::lapped;
    mold.share_walls = share_walls_->isChecked();
    if (stiffening_->currentIndex() == automatic) {
        mold.stiffeners.reset();
        return mold;
    }
    job::StiffenerChoice choice = given_.stiffeners.value_or(job::StiffenerChoice{});
    if (stiffening_->currentIndex() == none) {
        choice.count = 0;
    } else {
        if (!count_.take(choice)) return std::nullopt;
        choice.name = language::goods_key(piece_->currentText());
        choice.along = along_->currentIndex() == 1 ? job::Along::long_side : job::Along::short_side;
        choice.glued = glued_->isChecked();
    }
    mold.stiffeners = choice;
    return mold;
}

std::optional<job::Mold> MoldForm::value() const { return problems().empty() ? typed() : std::nullopt; }

FieldProblems MoldForm::show_problems() {
    const auto mold = typed();
    FieldProblems all = rows_->own_problems();
    if (mold)
        for (auto& problem : reader_problems(*mold, shop_)) all.push_back(std::move(problem));
    FieldProblems shown;
    for (auto& problem : rows_->show(all, shown)) shown.push_back(std::move(problem));
    return shown;
}

} // namespace drawercast::app
