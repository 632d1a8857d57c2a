// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/paste_columns.h"

#include <QWidget>

#include <optional>
#include <vector>

class QComboBox;
class QGridLayout;

namespace drawercast::app {

/// What each column of a pasted list holds, and the unit of its bare numbers, side by side in the order of
/// the columns.
class PasteColumnsEdit final : public QWidget {
    Q_OBJECT
  public:
    explicit PasteColumnsEdit(QWidget* parent = nullptr);

    /// `names`: of the columns, from the header or "column 3".
    void set_fields(const std::vector<job::PasteField>& fields, const QStringList& names);
    const std::vector<job::PasteField>& fields() const { return fields_; }

  signals:
    void edited();

  private:
    struct Column {
        QComboBox* meaning;
        QComboBox* unit;
    };
    void add_column(std::size_t i, const QString& name);
    void choose_meaning(std::size_t i);
    void choose_unit(std::size_t i);
    void show_fields();

    std::vector<job::PasteField> fields_;
    std::vector<job::PasteField> before_; ///< what the columns held before `choosing_` was put right
    std::optional<std::size_t> choosing_; ///< the column whose meaning is being put right
    QStringList names_;
    std::vector<Column> columns_;
    QGridLayout* grid_ = nullptr;
};

} // namespace drawercast::app
