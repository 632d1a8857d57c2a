// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/paste.h"

#include "forms/form_context.h"

#include <QDialog>

class QCheckBox;
class QComboBox;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QTableView;

namespace drawercast::app {

class PasteColumnsEdit;
class PasteModel;

/// A list pasted from a spreadsheet, and how it is read row by row. Adding gives away the objects that could
/// be read and keeps the other rows in view, to be put right and added then.
class PasteDialog final : public QDialog {
    Q_OBJECT
  public:
    explicit PasteDialog(const FormContext& context, QWidget* parent = nullptr);

    void set_text(const QString& text);
    void take_copied();   ///< what the clipboard holds, where it reads as a list of objects
    QString text() const; ///< what is still to be added

    /// Objects of the rows that can be read, without ids.
    std::vector<job::Object> objects() const;

  signals:
    void added(const std::vector<drawercast::job::Object>& objects); ///< to be put into the job, as one act

  private:
    QWidget* make_options();
    void paste();
    void focus_what_comes_next();
    void read_text();   ///< another text or separator: everything is guessed anew
    void take_header(); ///< the first row is, or is not, a header after all
    void show_rows();   ///< as the columns are said now
    void add();
    QStringList column_names() const;
    bool pockets_said() const; ///< a column holds the pockets' depths
    void say_result(const QString& before = {});

    FormContext context_;
    job::PasteTable table_;
    job::PasteMeaning meaning_;
    QPlainTextEdit* text_;
    QComboBox* separator_;
    QCheckBox* header_;
    QComboBox* mark_;
    PasteColumnsEdit* columns_;
    PasteModel* model_;
    QTableView* view_;
    QLabel* result_;
    QPushButton* add_;
};

} // namespace drawercast::app
