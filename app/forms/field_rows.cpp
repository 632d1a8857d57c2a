// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/field_rows.h"

#include "forms/row_note.h"
#include "forms/value_edit.h"

#include <QGridLayout>
#include <QLabel>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr int field_width_in_zeros = 12;

/// Nothing was typed yet: that is missing, not wrong.
bool is_blank(const QWidget* editor) {
    const auto* line = qobject_cast<const QLineEdit*>(editor);
    return line && line->text().trimmed().isEmpty();
}

QString without_mnemonic(QString label) { return label.remove(QLatin1Char('&')); }

} // namespace

FieldRows::FieldRows(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(8);
    grid_->setVerticalSpacing(2);
    grid_->setColumnStretch(2, 1);
}

void FieldRows::append(Row row, bool wide) {
    row.label->setBuddy(row.editor);
    row.editor->setAccessibleName(without_mnemonic(row.label->text()));
    row.note->set_hint(row.hint);
    const int at = grid_->rowCount();
    const bool one_line = row.editor->sizePolicy().verticalPolicy() == QSizePolicy::Fixed;
    grid_->addWidget(row.label, at, 0, (one_line ? Qt::AlignVCenter : Qt::AlignTop) | Qt::AlignLeft);
    grid_->addWidget(row.editor, at, 1, 1, wide ? 2 : 1);
    grid_->addWidget(row.note, wide ? at + 1 : at, wide ? 1 : 2, 1, wide ? 2 : 1);
    if (wide) row.note->setVisible(!row.hint.isEmpty());
    row.wide = wide;
    rows_.push_back(std::move(row));
}

void FieldRows::add(const std::string& path, const QString& label, QWidget* editor, const QString& hint,
                    std::vector<std::string> further) {
    further.insert(further.begin(), path);
    editor->setParent(this);
    editor->setFixedWidth(fontMetrics().horizontalAdvance(QLatin1Char('0')) * field_width_in_zeros + 16);
    append({std::move(further), new QLabel(label, this), editor, new RowNote(this), hint}, false);
}

void FieldRows::add(const std::string& path, const QString& label, ValueEdit* editor,
                    const QString& more_hint, std::vector<std::string> further) {
    add(path, label, static_cast<QWidget*>(editor), editor->hint(more_hint), std::move(further));
    connect(editor, &ValueEdit::edited, this, &FieldRows::edited);
}

void FieldRows::add_wide(const std::string& path, const QString& label, QWidget* editor,
                         std::vector<std::string> further) {
    further.insert(further.begin(), path);
    editor->setParent(this);
    append({std::move(further), new QLabel(label, this), editor, new RowNote(this), {}}, true);
}

void FieldRows::add_head(const QString& words) {
    auto* head = new QLabel(words, this);
    QFont bold = font();
    bold.setBold(true);
    head->setFont(bold);
    add_widget(head);
}

void FieldRows::add_widget(QWidget* widget) {
    widget->setParent(this);
    grid_->addWidget(widget, grid_->rowCount(), 0, 1, 3);
}

FieldRows::Row* FieldRows::find(const std::string& path) {
    const auto found =
        std::find_if(rows_.begin(), rows_.end(), [&](const Row& row) { return row.paths.front() == path; });
    return found == rows_.end() ? nullptr : &*found;
}

void FieldRows::set_row_shown(const std::string& path, bool shown) {
    Row* row = find(path);
    if (!row || row->shown == shown) return;
    row->shown = shown;
    row->label->setVisible(shown);
    row->editor->setVisible(shown);
    row->note->setVisible(shown && !row->note->words().isEmpty());
}

void FieldRows::set_label(const std::string& path, const QString& label) {
    if (Row* row = find(path)) {
        row->label->setText(label);
        row->editor->setAccessibleName(without_mnemonic(label));
    }
}

void FieldRows::set_hint(const std::string& path, const QString& hint) {
    if (Row* row = find(path)) {
        row->hint = hint;
        row->note->set_hint(hint);
    }
}

FieldProblems FieldRows::own_problems() const {
    FieldProblems problems;
    for (const Row& row : rows_)
        if (const auto* edit = qobject_cast<ValueEdit*>(row.editor);
            edit && row.shown && !edit->problem().isEmpty())
            problems.push_back({row.paths.front(), edit->problem()});
    return problems;
}

/// What is missing in a wide line stands in it: a note below it would go at the first letter, and all that
/// is below would jump.
void FieldRows::show_words(const Row& row, const QString& problem) {
    const bool missing = is_blank(row.editor);
    auto* line = qobject_cast<QLineEdit*>(row.editor);
    const bool within = row.wide && missing && line;
    if (row.wide && line) line->setPlaceholderText(within ? problem : QString());
    row.note->set_problem(within ? QString() : problem,
                          missing ? RowNote::Tone::missing : RowNote::Tone::wrong);
    row.note->setVisible(row.shown && !row.note->words().isEmpty());
    row.editor->setAccessibleDescription(within ? problem : row.note->words());
}

FieldProblems FieldRows::show(const FieldProblems& problems, FieldProblems& shown) {
    std::vector<QString> words(rows_.size());
    FieldProblems left;
    for (const FieldProblem& problem : problems) {
        const auto row = std::find_if(rows_.begin(), rows_.end(), [&](const Row& r) {
            return r.shown && std::any_of(r.paths.begin(), r.paths.end(), [&](const std::string& path) {
                       return is_below(problem.path, path);
                   });
        });
        if (row == rows_.end()) {
            left.push_back(problem);
            continue;
        }
        auto& first = words[static_cast<std::size_t>(row - rows_.begin())];
        if (!first.isEmpty()) continue;
        first = problem.words;
        shown.push_back({problem.path, problem.words, without_mnemonic(row->label->text()), row->editor});
    }
    for (std::size_t i = 0; i < rows_.size(); ++i) show_words(rows_[i], words[i]);
    return left;
}

} // namespace drawercast::app
