// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/paste_dialog.h"

#include "forms/dialog_buttons.h"
#include "forms/paste_columns_edit.h"
#include "forms/paste_model.h"
#include "forms/problem_words.h"
#include "forms/small_screen.h"
#include "theme/icons.h"

#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr int text_lines = 5;
constexpr int outcome_width = 320;

} // namespace

PasteDialog::PasteDialog(const FormContext& context, QWidget* parent)
    : QDialog(parent), context_(context), text_(new QPlainTextEdit(this)), separator_(new QComboBox(this)),
      header_(new QCheckBox(tr("First row is a &header"), this)), mark_(new QComboBox(this)),
      columns_(new PasteColumnsEdit(this)), model_(new PasteModel(this)), view_(new QTableView(this)),
      result_(new QLabel(this)) {
    setWindowTitle(tr("Paste a list of objects"));
    text_->setAccessibleName(tr("Pasted list"));
    text_->setPlaceholderText(
        tr("Copy rows in a spreadsheet and paste them here: name, length, width, height, mass, count. "
           "Units may stand in the header or in the cells."));
    text_->setTabChangesFocus(true);
    text_->setLineWrapMode(QPlainTextEdit::NoWrap);
    text_->setFixedHeight(text_lines * text_->fontMetrics().lineSpacing() + 24);
    view_->setModel(model_);
    view_->setAccessibleName(tr("How the rows are read"));
    view_->setSelectionBehavior(QAbstractItemView::SelectRows);
    view_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view_->setTabKeyNavigation(false);
    view_->setWordWrap(false);
    view_->horizontalHeader()->setHighlightSections(false);
    view_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    view_->verticalHeader()->setDefaultSectionSize(26);
    result_->setWordWrap(true);

    auto* buttons = dialog_buttons(*this, QDialogButtonBox::Close, this);
    add_ = buttons->addButton(QString(), QDialogButtonBox::ActionRole);
    add_->setDefault(true);
    auto* foot = new QHBoxLayout;
    foot->addWidget(result_, 1);
    foot->addWidget(buttons);
    auto* all = new QVBoxLayout(this);
    all->addWidget(text_);
    all->addWidget(make_options());
    all->addWidget(columns_);
    all->addWidget(view_, 1);
    all->addLayout(foot);

    connect(text_, &QPlainTextEdit::textChanged, this, &PasteDialog::read_text);
    connect(separator_, &QComboBox::activated, this, &PasteDialog::read_text);
    connect(header_, &QCheckBox::clicked, this, &PasteDialog::take_header);
    connect(columns_, &PasteColumnsEdit::edited, this, [this] {
        meaning_.fields = columns_->fields();
        show_rows();
    });
    connect(mark_, &QComboBox::activated, this, [this](int index) {
        meaning_.mark = index == 0 ? DecimalMark::point : DecimalMark::comma;
        show_rows();
    });
    connect(add_, &QPushButton::clicked, this, &PasteDialog::add);
    // Enter in the text is a new row.
    for (const auto key : {Qt::CTRL | Qt::Key_Return, Qt::CTRL | Qt::Key_Enter})
        connect(new QShortcut(key, this), &QShortcut::activated, add_, &QPushButton::click);
    read_text();
    fit_screen(*this, {980, 640});
}

QWidget* PasteDialog::make_options() {
    auto* options = new QWidget(this);
    auto* row = new QHBoxLayout(options);
    row->setContentsMargins(0, 0, 0, 0);
    auto* paste = new QPushButton(theme::icon(QStringLiteral("paste")), tr("&Paste from clipboard"), options);
    paste->setAutoDefault(false);
    connect(paste, &QPushButton::clicked, this, &PasteDialog::paste);
    separator_->addItems({tr("as found"), tr("tabs"), tr("semicolons"), tr("commas")});
    mark_->addItems({tr("82.5"), tr("82,5")});
    auto* separator = new QLabel(tr("Cells separated &by"), options);
    separator->setBuddy(separator_);
    separator_->setAccessibleName(tr("Cells separated by"));
    mark_->setAccessibleName(tr("Decimals like"));
    auto* mark = new QLabel(tr("&Decimals like"), options);
    mark->setBuddy(mark_);
    row->addWidget(paste);
    row->addSpacing(12);
    for (auto [label, combo] : {std::pair{separator, separator_}, {mark, mark_}}) {
        row->addWidget(label);
        row->addWidget(combo);
        row->addSpacing(12);
    }
    row->addWidget(header_);
    row->addStretch(1);
    return options;
}

void PasteDialog::set_text(const QString& text) { text_->setPlainText(text); }
QString PasteDialog::text() const { return text_->toPlainText(); }

void PasteDialog::take_copied() {
    set_text(QGuiApplication::clipboard()->text());
    if (objects().empty()) set_text({});
    focus_what_comes_next();
}

/// Rows that can be read wait for their button, others to be put right.
void PasteDialog::focus_what_comes_next() {
    (add_->isEnabled() ? static_cast<QWidget*>(add_) : text_)->setFocus();
}

void PasteDialog::paste() {
    text_->setPlainText(QGuiApplication::clipboard()->text());
    focus_what_comes_next();
}

void PasteDialog::read_text() {
    const int chosen = separator_->currentIndex();
    const auto separator =
        chosen == 0 ? std::nullopt : std::optional(static_cast<job::Separator>(chosen - 1));
    const auto table = job::paste_table(text_->toPlainText().toStdString(), separator);
    table_ = table ? *table : job::PasteTable{};
    meaning_ = job::guess_meaning(table_);
    show_rows();
    if (!table) result_->setText(problem_words(table.error()));
}

void PasteDialog::take_header() {
    meaning_ = job::guess_meaning(table_, header_->isChecked());
    show_rows();
}

QStringList PasteDialog::column_names() const {
    QStringList names;
    for (std::size_t i = 0; i < table_.columns; ++i) {
        const bool named = meaning_.header && i < table_.rows.front().cells.size();
        const QString name = named ? QString::fromStdString(table_.rows.front().cells[i]) : QString();
        names << (name.isEmpty() ? tr("Column %1").arg(i + 1) : name);
    }
    return names;
}

void PasteDialog::show_rows() {
    header_->setChecked(meaning_.header);
    mark_->setCurrentIndex(meaning_.mark == DecimalMark::comma ? 1 : 0);
    columns_->set_fields(meaning_.fields, column_names());
    model_->set_list(table_, meaning_, job::paste_units(context_.units));
    view_->setColumnWidth(PasteModel::outcome_column, outcome_width);
    say_result();
}

bool PasteDialog::pockets_said() const {
    return std::any_of(meaning_.fields.begin(), meaning_.fields.end(),
                       [](const auto& field) { return field.column == job::PasteColumn::pocket; });
}

void PasteDialog::say_result(const QString& before) {
    const int read = model_->read_count();
    const int rows = model_->rowCount();
    add_->setText(read == 0   ? tr("Add objects")
                  : read == 1 ? tr("Add 1 object")
                              : tr("Add %1 objects").arg(read));
    add_->setEnabled(read > 0);
    QString words = before;
    if (rows == 0)
        words += tr("Nothing pasted yet.");
    else if (read == rows && pockets_said())
        words +=
            tr("All %1 rows are read. Where no pocket depth is said, they go in %2 % of their height deep.")
                .arg(rows)
                .arg(100 * job::paste_depth_share);
    else if (read == rows)
        words += tr("All %1 rows are read. They go in %2 % of their height deep.")
                     .arg(rows)
                     .arg(100 * job::paste_depth_share);
    else
        words +=
            tr("%1 of %2 rows are read; the others stay here, with why beside them.").arg(read).arg(rows);
    result_->setText(words);
}

std::vector<job::Object> PasteDialog::objects() const {
    std::vector<job::Object> objects;
    for (const auto& row : model_->rows())
        if (row.read) objects.push_back(*row.read);
    return objects;
}

/// The rows that were not read stay, under their header and read the same way.
void PasteDialog::add() {
    const auto objects = this->objects();
    if (objects.empty()) return;
    QStringList left;
    for (const auto& row : model_->rows())
        if (!row.read) left << QString::fromStdString(row.text);
    const job::PasteMeaning meaning = meaning_;
    const auto separator = table_.separator;
    if (!left.isEmpty() && meaning_.header) left.prepend(QString::fromStdString(table_.rows.front().text));
    emit added(objects);
    if (left.isEmpty()) {
        accept();
        return;
    }
    separator_->setCurrentIndex(static_cast<int>(separator) + 1);
    text_->setPlainText(left.join(QLatin1Char('\n')));
    if (meaning.fields.size() >= table_.columns) {
        meaning_ = meaning;
        meaning_.fields.resize(table_.columns);
        show_rows();
    }
    say_result(objects.size() == 1 ? tr("1 object added. ") : tr("%1 objects added. ").arg(objects.size()));
    focus_what_comes_next();
}

} // namespace drawercast::app
