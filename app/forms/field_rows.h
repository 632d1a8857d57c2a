// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/field_problem.h"

#include <QWidget>

class QGridLayout;
class QLabel;

namespace drawercast::app {

class RowNote;
class ValueEdit;

/// Fields under each other: label, editor, and the words beside it.
class FieldRows final : public QWidget {
    Q_OBJECT
  public:
    explicit FieldRows(QWidget* parent = nullptr);

    /// A row of that path (and of further ones, whose problems it shows too). The label's letter after &
    /// leads to the editor, whose accessible name it is as well.
    void add(const std::string& path, const QString& label, QWidget* editor, const QString& hint = {},
             std::vector<std::string> further = {});
    void add(const std::string& path, const QString& label, ValueEdit* editor, const QString& more_hint = {},
             std::vector<std::string> further = {});
    /// An editor that takes the room of the words; they stand below it.
    void add_wide(const std::string& path, const QString& label, QWidget* editor,
                  std::vector<std::string> further = {});
    void add_head(const QString& words);
    void add_widget(QWidget* widget); ///< across all columns, without problems of its own

    void set_row_shown(const std::string& path, bool shown);
    void set_label(const std::string& path, const QString& label);
    void set_hint(const std::string& path, const QString& hint);

    /// Problems of the rows' own editors: unreadable text, values out of range.
    FieldProblems own_problems() const;
    /// Shows each problem beside its row, the first of each; fills in label and field. Returns those of no
    /// row.
    FieldProblems show(const FieldProblems& problems, FieldProblems& shown);

  signals:
    void edited(); ///< an editor that was added as a ValueEdit

  private:
    struct Row {
        std::vector<std::string> paths;
        QLabel* label;
        QWidget* editor;
        RowNote* note;
        QString hint;
        bool shown = true;
        bool wide = false; ///< its note stands below it
    };
    Row* find(const std::string& path);
    void append(Row row, bool wide);
    void show_words(const Row& row, const QString& problem);

    QGridLayout* grid_;
    std::vector<Row> rows_;
};

} // namespace drawercast::app
