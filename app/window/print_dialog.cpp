// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/print_dialog.h"

#include "base/contains.h"

#include "forms/dialog_buttons.h"
#include "forms/either_mark.h"
#include "forms/small_screen.h"
#include "language/say.h"
#include "theme/theme_of.h"
#include "window/page_preview.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPrinterInfo>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace drawercast::app {

namespace {

using What = PrintOrder::What;
using To = PrintOrder::To;

constexpr int any = -1; ///< data of a choice that leaves something open
const QSize thumbnail_size(44, 58);

template <class E>
void add(QComboBox* box, const QString& words, E value) {
    box->addItem(words, static_cast<int>(value));
}

template <class E>
std::optional<E> chosen(const QComboBox* box) {
    const int value = box->currentData().toInt();
    return value == any ? std::nullopt : std::optional(static_cast<E>(value));
}

template <class E>
void choose(QComboBox* box, const std::optional<E>& value) {
    const int at = box->findData(value ? static_cast<int>(*value) : any);
    box->setCurrentIndex(at < 0 ? 0 : at);
}

/// What a scale of 100 mm measures; far too much can be typed too, and is answered.
QDoubleSpinBox* measured(QWidget* parent, const QString& name, const QString& suffix) {
    auto* box = new EitherMark(parent);
    box->setAccessibleName(name);
    box->setRange(80, 120);
    box->setDecimals(2);
    box->setSingleStep(0.05);
    box->setValue(100);
    box->setSuffix(suffix);
    box->setKeyboardTracking(false);
    return box;
}

QComboBox* combo(QWidget* parent, const QString& name) {
    auto* box = new QComboBox(parent);
    box->setAccessibleName(name);
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    return box;
}

} // namespace

PrintDialog::PrintDialog(const PrintOrder& usual, const job::Job& job, const plan::Plan& plan,
                         const print::Printing& printing, QWidget* parent)
    : QDialog(parent), job_(job), plan_(plan), printing_(printing), changed_(usual.changed),
      preview_(new PagePreview(this)) {
    setWindowTitle(tr("Print"));
    auto* panes = new QHBoxLayout;
    panes->setContentsMargins(0, 0, 0, 0);
    panes->setSpacing(0);
    panes->addWidget(preview_, 3);
    panes->addWidget(page_list(), 0);
    panes->addWidget(settings(), 0);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addLayout(panes);
    show_order(usual);
    for (auto* box : {what_, sheet_, paper_, orientation_})
        connect(box, &QComboBox::currentIndexChanged, this, &PrintDialog::renew_pages);
    connect(to_, &QComboBox::currentIndexChanged, this, [this] {
        show_correction();
        renew_pages();
    });
    for (auto* box : {short_, long_})
        connect(box, &QDoubleSpinBox::valueChanged, this, &PrintDialog::take_correction);
    connect(list_, &QListWidget::currentRowChanged, this, &PrintDialog::show_current);
    connect(list_, &QListWidget::itemChanged, this, &PrintDialog::renew_buttons);
    fit_screen(*this, {1080, 660});
}

QWidget* PrintDialog::page_list() {
    auto* pane = new QWidget(this);
    pane->setFixedWidth(256);
    list_ = new QListWidget(pane);
    list_->setAccessibleName(tr("Pages"));
    list_->setIconSize(thumbnail_size);
    list_->setFrameShape(QFrame::NoFrame);
    list_->setTextElideMode(Qt::ElideMiddle);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    count_ = new QLabel(pane);
    const auto button = [&](const QString& words, bool on) {
        auto* made = new QToolButton(pane);
        made->setText(words);
        made->setFocusPolicy(Qt::StrongFocus);
        connect(made, &QToolButton::clicked, this, [this, on] { check_all(on); });
        return made;
    };
    all_ = button(tr("All"), true);
    none_ = button(tr("None"), false);
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(12, 6, 12, 12);
    foot->addWidget(count_, 1);
    foot->addWidget(all_);
    foot->addWidget(none_);
    auto* column = new QVBoxLayout(pane);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(list_, 1);
    column->addLayout(foot);
    return pane;
}

QWidget* PrintDialog::settings() {
    auto* pane = new QWidget(this);
    pane->setFixedWidth(330);
    what_ = combo(pane, tr("What"));
    add(what_, tr("Templates, true size"), What::templates);
    add(what_, tr("Summary"), What::summary);
    add(what_, tr("Drawings, true size"), What::drawings);
    add(what_, tr("Pour cards and rescue card"), What::cards);
    sheet_ = combo(pane, tr("Sheets"));
    sheet_->addItem(tr("All of them"), any);
    add(sheet_, tr("Pattern board"), print::TemplateKind::pattern_board);
    add(sheet_, tr("Trial sheet"), print::TemplateKind::drawer_check);
    add(sheet_, tr("Pressure plate, to drill"), print::TemplateKind::pressure_plate);
    add(sheet_, tr("Base, to drill"), print::TemplateKind::base_drilling);
    add(sheet_, tr("Strips for the box walls’ screws"), print::TemplateKind::wall_strips);
    add(sheet_, tr("Labels"), print::TemplateKind::labels);
    paper_ = combo(pane, tr("Paper"));
    add(paper_, tr("A4, 210 × 297 mm"), print::Paper::a4);
    add(paper_, tr("Letter, 8.5 × 11 in"), print::Paper::letter);
    add(paper_, tr("A3, 297 × 420 mm"), print::Paper::a3);
    add(paper_, tr("Tabloid, 11 × 17 in"), print::Paper::tabloid);
    orientation_ = combo(pane, tr("Orientation"));
    orientation_->addItem(tr("Whichever takes fewer tiles"), any);
    add(orientation_, tr("Portrait"), print::Orientation::portrait);
    add(orientation_, tr("Landscape"), print::Orientation::landscape);
    to_ = combo(pane, tr("Print to"));
    short_ = measured(pane, tr("100 mm along the paper’s short side measure"), tr(" mm"));
    long_ = measured(pane, tr("100 mm along the paper’s long side measure"), tr(" mm"));
    auto* scales = new QHBoxLayout;
    scales->addWidget(short_);
    scales->addWidget(long_);
    note_ = new QLabel(pane);
    note_->setWordWrap(true);

    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapAllRows);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setVerticalSpacing(4);
    for (const auto& [words, box] : {std::pair{tr("&What"), what_},
                                     {tr("&Sheets"), sheet_},
                                     {tr("P&aper"), paper_},
                                     {tr("&Orientation of the tiles"), orientation_},
                                     {tr("Print &to"), to_}})
        form->addRow(words, box);
    auto* measures = new QLabel(tr("100 mm scales &measure, on its short and long side"), pane);
    measures->setWordWrap(true);
    measures->setBuddy(short_);
    form->addRow(measures, scales);
    auto* buttons = dialog_buttons(*this, QDialogButtonBox::Ok | QDialogButtonBox::Cancel, pane);
    take_ = buttons->button(QDialogButtonBox::Ok);
    auto* column = new QVBoxLayout(pane);
    column->setContentsMargins(16, 14, 16, 12);
    column->setSpacing(12);
    column->addLayout(form);
    column->addWidget(note_);
    column->addStretch(1);
    column->addWidget(buttons);
    return pane;
}

void PrintDialog::show_order(const PrintOrder& order) {
    choose(what_, std::optional(order.what));
    choose(sheet_, order.choice.only);
    choose(paper_, std::optional(order.choice.paper));
    choose(orientation_, order.choice.orientation);
    corrections_ = order.corrections;
    renew_destinations();
    const int at =
        order.to == To::printer ? to_->findText(order.printer) : to_->findData(static_cast<int>(order.to));
    if (at >= 0) to_->setCurrentIndex(at);
    show_correction();
    renew_list();
}

void PrintDialog::show_correction() {
    const auto known = corrections_.find(destination_of(order()));
    const print::Correction correction = known == corrections_.end() ? print::Correction{} : known->second;
    const QSignalBlocker quiet_short(short_), quiet_long(long_);
    short_->setValue(correction.short_mm);
    long_->setValue(correction.long_mm);
}

void PrintDialog::take_correction() {
    corrections_[destination_of(order())] = {short_->value(), long_->value()};
    renew_pages();
}

void PrintDialog::renew_pages() {
    renew_destinations();
    renew_list();
}

/// Asks the system for its printers, which takes time where they stand in a network.
void PrintDialog::renew_destinations() {
    const bool drawings = order().what == What::drawings;
    const QString before = to_->currentText();
    {
        const QSignalBlocker quiet(to_);
        to_->clear();
        if (drawings)
            add(to_, tr("SVG files in a folder"), To::svg);
        else {
            add(to_, tr("A PDF file"), To::pdf);
            for (const QString& name : QPrinterInfo::availablePrinterNames()) add(to_, name, To::printer);
        }
        to_->setCurrentIndex(std::max(0, to_->findText(before)));
    }
    if (to_->currentText() != before) show_correction();
}

void PrintDialog::renew_list() {
    const PrintOrder now = order();
    const bool templates = now.what == What::templates, drawings = now.what == What::drawings;
    sheet_->setEnabled(templates);
    orientation_->setEnabled(templates);
    paper_->setEnabled(!drawings);
    short_->setEnabled(!drawings);
    long_->setEnabled(!drawings);
    const QString words =
        templates  ? tr("Print at 100 %, not scaled to the page, in the printer’s own window too. Hold a "
                         "ruler to both scale bars of every page before you cut.")
        : drawings ? tr("One unit of a drawing is one millimeter: open it at 100 %.")
                   : tr("Print at 100 %, not scaled to the page: then the scales in the title blocks hold.");
    QStringList sentences{words};
    if (!changed_.isEmpty()) sentences.prepend(changed_);
    const print::Correction measured{short_->value(), long_->value()};
    if (!drawings && !print::is_sound(measured))
        sentences << tr("No printer is off by more than %1 mm in 100: some window fitted these pages. Print "
                        "them at 100 % and measure again.")
                         .arg(language::fixed(print::correctable_mm, 1));
    else if (!drawings && !print::is_none(measured))
        sentences << tr("Pages are corrected for what its scales measured, and say so. To measure again, "
                        "print a page with 100 and 100.");
    if (!drawings && to_->count() == 1) // a PDF file
        sentences << tr("No printer is set up on this computer; a PDF can be printed elsewhere.");
    note_->setText(sentences.join(QStringLiteral("\n\n")));
    const QSignalBlocker quiet(list_);
    preview_->show_page(nullptr);
    const std::vector<std::size_t> before_pages = now.pages;
    const std::size_t before_count = pages_.size();
    pages_ = order_pages(now, job_, plan_, printing_);
    const bool same_pages = pages_.size() == before_count; // another printer's: what was left out stays so
    const auto left_out = [&](std::size_t i) { return same_pages && !contains(before_pages, i); };
    const int current = list_->currentRow();
    list_->clear();
    const auto& theme = theme::theme_of(this);
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        QString page = tr("%1  %2").arg(i + 1).arg(pages_[i].name);
        if (!pages_[i].drawer.isEmpty()) page += QLatin1Char('\n') + pages_[i].drawer;
        auto* item = new QListWidgetItem(
            thumbnail(pages_[i], thumbnail_size, devicePixelRatioF(), theme.edge), page, list_);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(left_out(i) ? Qt::Unchecked : Qt::Checked);
        item->setToolTip(page);
    }
    list_->setCurrentRow(pages_.empty() ? -1 : same_pages ? std::max(0, current) : 0);
    show_current();
    renew_buttons();
}

void PrintDialog::show_current() {
    const auto row = static_cast<std::size_t>(list_->currentRow());
    preview_->set_empty_words(tr("No pages: no drawer of this job can be drawn yet. The checks say why."));
    preview_->show_page(row < pages_.size() ? &pages_[row] : nullptr);
}

void PrintDialog::check_all(bool on) {
    {
        const QSignalBlocker quiet(list_);
        for (int i = 0; i < list_->count(); ++i)
            list_->item(i)->setCheckState(on ? Qt::Checked : Qt::Unchecked);
    }
    renew_buttons();
}

void PrintDialog::renew_buttons() {
    const PrintOrder now = order();
    count_->setText(tr("%1 of %2").arg(now.pages.size()).arg(pages_.size()));
    take_->setEnabled(!now.pages.empty() && print::is_sound({short_->value(), long_->value()}));
    take_->setText(now.to == To::printer ? tr("Print") : tr("Write…"));
    all_->setEnabled(now.pages.size() < pages_.size());
    none_->setEnabled(!now.pages.empty());
}

PrintOrder PrintDialog::order() const {
    PrintOrder order;
    order.corrections = corrections_;
    order.what = chosen<What>(what_).value_or(order.what);
    order.choice = {chosen<print::Paper>(paper_).value_or(order.choice.paper),
                    chosen<print::Orientation>(orientation_), chosen<print::TemplateKind>(sheet_)};
    order.to = chosen<To>(to_).value_or(order.to);
    if (to_->count() == 0) order.to = order.what == What::drawings ? To::svg : To::pdf;
    if (order.to == To::printer) order.printer = to_->currentText();
    for (int i = 0; i < list_->count(); ++i)
        if (list_->item(i)->checkState() == Qt::Checked) order.pages.push_back(static_cast<std::size_t>(i));
    return order;
}

} // namespace drawercast::app
