// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/paste_columns_edit.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>

namespace drawercast::app {

namespace {

using job::PasteColumn;

constexpr std::size_t most_shown = 16; ///< columns that can be put right; the others go to the note

QStringList meaning_words() { // in the order of PasteColumn
    return {PasteColumnsEdit::tr("name"),         PasteColumnsEdit::tr("length"),
            PasteColumnsEdit::tr("width"),        PasteColumnsEdit::tr("height"),
            PasteColumnsEdit::tr("pocket depth"), PasteColumnsEdit::tr("length × width × height"),
            PasteColumnsEdit::tr("mass"),         PasteColumnsEdit::tr("count"),
            PasteColumnsEdit::tr("note"),         PasteColumnsEdit::tr("leave out")};
}

bool is_length(PasteColumn column) {
    return column == PasteColumn::length || column == PasteColumn::width || column == PasteColumn::height ||
           column == PasteColumn::pocket || column == PasteColumn::size;
}

/// The unit words offered for a column; the first, empty, is the job's.
QStringList units_for(PasteColumn column) {
    if (is_length(column))
        return {{}, QStringLiteral("mm"), QStringLiteral("cm"), QStringLiteral("m"), QStringLiteral("in")};
    if (column == PasteColumn::mass)
        return {{}, QStringLiteral("g"), QStringLiteral("kg"), QStringLiteral("oz"), QStringLiteral("lb")};
    return {};
}

/// Note and "leave out" may be said of many columns.
bool only_once(PasteColumn column) { return column != PasteColumn::note && column != PasteColumn::ignored; }

} // namespace

PasteColumnsEdit::PasteColumnsEdit(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setVerticalSpacing(2);
}

void PasteColumnsEdit::set_fields(const std::vector<job::PasteField>& fields, const QStringList& names) {
    if (fields.size() != fields_.size() || names != names_) {
        while (auto* item = grid_->takeAt(0)) {
            item->widget()->deleteLater();
            delete item;
        }
        columns_.clear();
        choosing_.reset();
        fields_ = fields;
        names_ = names;
        for (std::size_t i = 0; i < fields.size() && i < most_shown; ++i) add_column(i, names[int(i)]);
    }
    fields_ = fields;
    show_fields();
}

void PasteColumnsEdit::add_column(std::size_t i, const QString& name) {
    auto* label = new QLabel(fontMetrics().elidedText(name, Qt::ElideRight, 120), this);
    label->setToolTip(name);
    auto* meaning = new QComboBox(this);
    meaning->addItems(meaning_words());
    meaning->setAccessibleName(tr("%1 holds").arg(name));
    auto* unit = new QComboBox(this);
    unit->setAccessibleName(tr("Unit of %1").arg(name));
    grid_->addWidget(label, 0, int(i));
    grid_->addWidget(meaning, 1, int(i));
    grid_->addWidget(unit, 2, int(i));
    for (auto* combo : {meaning, unit}) {
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(7);
    }
    connect(meaning, &QComboBox::activated, this, [this, i] { choose_meaning(i); });
    connect(unit, &QComboBox::activated, this, [this, i] { choose_unit(i); });
    columns_.push_back({meaning, unit});
}

/// What one column is said to hold, no other can; that one goes to the note. Arrow keys pass through other
/// meanings on the way to the one that is meant: each starts from what the columns held before.
void PasteColumnsEdit::choose_meaning(std::size_t i) {
    if (choosing_ != i) before_ = fields_;
    choosing_ = i;
    fields_ = before_;
    const auto chosen = static_cast<PasteColumn>(columns_[i].meaning->currentIndex());
    if (only_once(chosen))
        for (auto& field : fields_)
            if (field.column == chosen) field = {};
    const bool unit_fits = units_for(chosen).contains(QString::fromStdString(fields_[i].unit));
    fields_[i] = {chosen, unit_fits ? fields_[i].unit : std::string()};
    show_fields();
    emit edited();
}

void PasteColumnsEdit::choose_unit(std::size_t i) {
    const auto units = units_for(fields_[i].column);
    choosing_.reset();
    fields_[i].unit = units[columns_[i].unit->currentIndex()].toStdString();
    emit edited();
}

void PasteColumnsEdit::show_fields() {
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        columns_[i].meaning->setCurrentIndex(static_cast<int>(fields_[i].column));
        const auto units = units_for(fields_[i].column);
        columns_[i].unit->clear();
        for (const QString& unit : units) columns_[i].unit->addItem(unit.isEmpty() ? tr("job's") : unit);
        columns_[i].unit->setCurrentIndex(int(units.indexOf(QString::fromStdString(fields_[i].unit))));
        columns_[i].unit->setEnabled(!units.isEmpty());
    }
}

} // namespace drawercast::app
