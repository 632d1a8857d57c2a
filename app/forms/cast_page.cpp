// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/cast_page.h"

#include "forms/length_edit.h"
#include "forms/table_edit.h"
#include "sheets/text.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>

#include <utility>

namespace drawercast::app {

namespace {

using job::Cast;

constexpr int most_fits = 1000;
constexpr int fits_height_px = 116;

using sheets::text;

TableEdit* fit_table(const FormContext& context) {
    const Notation length = length_notation(context);
    const NumberColumn pocket{
        CastPage::tr("pocket"), {}, {}, 0, true, CastPage::tr("Its block’s number or name")};
    const NumberColumn wider{CastPage::tr("wider, %1").arg(length.unit),
                             length,
                             job::range_of("/casts/*/fits/*/wider_mm"),
                             0,
                             false,
                             CastPage::tr("Than planned, its whole width; below 0: narrower")};
    auto* table = new TableEdit({pocket, wider},
                                {CastPage::tr("Pockets measured"), CastPage::tr("Add a pocket (Insert)"),
                                 CastPage::tr("Take this pocket away (Delete)")},
                                0, most_fits);
    table->view().setMinimumHeight(fits_height_px);
    table->view().setMaximumHeight(fits_height_px);
    return table;
}

/// The pockets to choose from; anything else may be typed.
class PocketDelegate final : public QStyledItemDelegate {
  public:
    PocketDelegate(QStringList pockets, QObject* parent)
        : QStyledItemDelegate(parent), pockets_(std::move(pockets)) {}

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex&) const override {
        auto* box = new QComboBox(parent);
        box->setEditable(true);
        box->addItems(pockets_);
        box->setAccessibleName(CastPage::tr("pocket"));
        return box;
    }
    void setEditorData(QWidget* editor, const QModelIndex& index) const override {
        auto* box = static_cast<QComboBox*>(editor);
        box->setEditText(index.data(Qt::EditRole).toString());
        box->lineEdit()->selectAll();
    }
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override {
        model->setData(index, static_cast<QComboBox*>(editor)->currentText(), Qt::EditRole);
    }

  private:
    QStringList pockets_;
};

ValueEdit* may_be_empty(ValueEdit* edit) {
    edit->allow_empty(CastPage::tr("not measured"));
    return edit;
}

/// As scales show it, like the test cup; other units may be typed.
Notation in_grams(FormContext context) {
    context.units = job::DisplayUnits::mm;
    return quantity_notation(Quantity::mass_g, context);
}

} // namespace

CastPage::CastPage(const Cast& cast, std::vector<CastPocket> pockets, const FormContext& context,
                   QWidget* parent)
    : QWidget(parent), given_(cast), pockets_(std::move(pockets)), left_(new FieldRows),
      right_(new FieldRows), day_(new QLineEdit),
      new_holes_(new QCheckBox(tr("Its closures' &holes were new or shifted"))), fits_(fit_table(context)),
      note_(new QLineEdit) {
    add_weights(context);
    add_lengths(context);
    add_mold(context);
    numbers_.fill(cast);
    day_->setText(text(cast.day));
    note_->setText(text(cast.note));
    new_holes_->setChecked(cast.new_holes);
    std::vector<NumberRow> rows;
    for (const auto& fit : cast.fits)
        rows.push_back({words_of(fit.pocket), {0, fit.wider_mm}, static_cast<int>(rows.size())});
    fits_->set_rows(std::move(rows));
    QStringList names;
    for (const auto& pocket : pockets_) names << pocket.words();
    fits_->view().setItemDelegateForColumn(0, new PocketDelegate(std::move(names), fits_));
    auto* columns = new QHBoxLayout(this);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(24);
    for (auto* rows_of : {left_, right_}) {
        auto* column = new QVBoxLayout;
        column->addWidget(rows_of);
        column->addStretch(1);
        columns->addLayout(column, 1);
        connect(rows_of, &FieldRows::edited, this, &CastPage::edited);
    }
    connect(day_, &QLineEdit::textEdited, this, &CastPage::edited);
    connect(note_, &QLineEdit::textEdited, this, &CastPage::edited);
    connect(new_holes_, &QCheckBox::toggled, this, &CastPage::edited);
    connect(fits_, &TableEdit::edited, this, &CastPage::edited);
}

void CastPage::add_weights(const FormContext& context) {
    const auto mass = [&](const char* path) {
        return may_be_empty(new ValueEdit(in_grams(context), job::range_of(path)));
    };
    left_->add("/day", tr("&Day"), day_);
    numbers_.add(
        *left_, {"/mixed_g", tr("&Mixed"), mass("/casts/*/mixed_g"), &Cast::mixed_g, tr("Into all buckets")});
    numbers_.add(*left_, {"/batches",
                          tr("&Buckets"),
                          new ValueEdit(number_notation(context, {}), job::range_of("/casts/*/batches")),
                          &Cast::batches,
                          {}});
    numbers_.add(*left_, {"/cast_g", tr("&Insert"), mass("/casts/*/cast_g"), &Cast::cast_g, tr("Trimmed")});
    numbers_.add(*left_, {"/trimmed_g", tr("&Trimmings"), mass("/casts/*/trimmed_g"), &Cast::trimmed_g,
                          tr("Flash; the vents' plugs apart")});
    numbers_.add(*left_, {"/plugs_g", tr("&Plugs of vents"), mass("/casts/*/plugs_g"), &Cast::plugs_g,
                          tr("If pegged once it stood still")});
}

void CastPage::add_lengths(const FormContext& context) {
    const auto length = [&](const char* path) {
        return may_be_empty(new LengthEdit(context, job::range_of(path)));
    };
    numbers_.add(*left_, {"/bow_mm", tr("B&ow of the underside"), length("/casts/*/bow_mm"), &Cast::bow_mm,
                          tr("Under a straightedge")});
    numbers_.add(*left_, {"/bar_mm", tr("&Length in the mold"), length("/casts/*/bar_mm"), &Cast::bar_mm,
                          tr("The insert's, or a bar's")});
    numbers_.add(*left_, {"/bar_cured_mm", tr("The same, &cured"), length("/casts/*/bar_cured_mm"),
                          &Cast::bar_cured_mm, tr("A day after")});
}

void CastPage::add_mold(const FormContext& context) {
    const auto mass = [&](const char* path) {
        return may_be_empty(new ValueEdit(in_grams(context), job::range_of(path)));
    };
    numbers_.add(*right_, {"/wax_g", tr("&Release used"), mass("/casts/*/wax_g"), &Cast::wax_g,
                           tr("Release agent on the mold")});
    numbers_.add(*right_, {"/clay_g", tr("Cla&y renewed"), mass("/casts/*/clay_g"), &Cast::clay_g, {}});
    right_->add_widget(new_holes_);
    right_->add_wide("/fits", tr("Pockets measured"), fits_);
    right_->add_wide("/note", tr("&Note"), note_);
}

QString CastPage::words_of(const std::string& pocket) const {
    for (const auto& one : pockets_)
        if (one.subject == pocket) return one.words();
    return text(pocket);
}

/// By words, number or name; what is none of this drawer's stays as it was typed.
std::string CastPage::pocket_of(const QString& words) const {
    for (const auto& one : pockets_)
        for (const QString& known : {one.words(), QString::number(one.number), one.name})
            if (words.trimmed().compare(known, Qt::CaseInsensitive) == 0) return one.subject;
    return words.trimmed().toStdString();
}

std::optional<Cast> CastPage::typed() const {
    Cast cast = given_;
    if (!numbers_.take(cast)) return std::nullopt;
    cast.day = day_->text().trimmed().toStdString();
    cast.note = note_->text().toStdString();
    cast.new_holes = new_holes_->isChecked();
    cast.fits.clear();
    for (const NumberRow& row : fits_->rows()) {
        if (row.words.trimmed().isEmpty() && row.numbers[1] == 0)
            continue; // added, not filled in: no measure of 0
        job::CastFit fit;
        if (row.origin >= 0) fit = given_.fits[static_cast<std::size_t>(row.origin)];
        fit.pocket = pocket_of(row.words);
        fit.wider_mm = row.numbers[1];
        cast.fits.push_back(std::move(fit));
    }
    return cast;
}

FieldProblems CastPage::own_problems() const {
    FieldProblems all = left_->own_problems();
    for (auto& problem : right_->own_problems()) all.push_back(std::move(problem));
    return all;
}

FieldProblems CastPage::show(const FieldProblems& problems, FieldProblems& shown) {
    return right_->show(left_->show(problems, shown), shown);
}

} // namespace drawercast::app
