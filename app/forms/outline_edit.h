// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/field_problem.h"
#include "forms/form_context.h"
#include "forms/outline_kind.h"

#include <QWidget>

class QComboBox;

namespace drawercast::app {

class FieldRows;
class LengthEdit;
class TableEdit;

/// The rows in which an outline is given: its kind, then sizes, corners or cylinders. The rows belong to a
/// FieldRows of the owner, so that what follows (a depth, a place) stands in line with them.
class OutlineEdit final : public QObject {
    Q_OBJECT
  public:
    OutlineEdit(FieldRows& rows, const FormContext& context, const std::vector<OutlineKind>& kinds,
                QObject* parent);

    void set_outline(const Outline& outline);
    /// Nothing where a field cannot be read.
    std::optional<Outline> outline() const;
    OutlineKind kind() const;

  signals:
    void edited();
    void kind_changed();

  private:
    void add_rows(const FormContext& context);
    QWidget* make_ways();
    void draw();
    void read_drawing();
    void take_free(const shape::Polygon& polygon);
    void choose(OutlineKind kind);
    void show_rows();
    OutlineSizes sizes() const;

    FieldRows& rows_;
    FormContext context_;
    std::vector<OutlineKind> kinds_;
    QComboBox* kind_;
    LengthEdit* length_;
    LengthEdit* width_;
    LengthEdit* corner_;
    TableEdit* corners_;
    TableEdit* cylinders_;
    bool typed_ = false; ///< since the kind was chosen: sizes of other kinds are older
    Outline last_;       ///< the last one that could be read: what another kind starts from
};

} // namespace drawercast::app
