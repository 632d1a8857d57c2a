// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/record.h"

#include "forms/bindings.h"
#include "forms/form_context.h"

#include <QWidget>

#include <optional>
#include <string>
#include <vector>

class QCheckBox;
class QLineEdit;

namespace drawercast::app {

class FieldRows;
class TableEdit;

/// A pocket as the maker knows it: by its block's number and name.
struct CastPocket {
    std::string subject;
    int number = 0;
    QString name;
    QString words() const { return QStringLiteral("%1 %2").arg(number).arg(name); }
};

/// What was weighed and measured of one cast. A field left empty was not measured.
class CastPage final : public QWidget {
    Q_OBJECT
  public:
    CastPage(const job::Cast& cast, std::vector<CastPocket> pockets, const FormContext& context,
             QWidget* parent = nullptr);

    /// As filled in; nothing while a field can't be read.
    std::optional<job::Cast> typed() const;
    FieldProblems own_problems() const;
    /// Shows those of its rows; returns the others.
    FieldProblems show(const FieldProblems& problems, FieldProblems& shown);

  signals:
    void edited();

  private:
    void add_weights(const FormContext& context);
    void add_lengths(const FormContext& context);
    void add_mold(const FormContext& context);
    QString words_of(const std::string& pocket) const;
    std::string pocket_of(const QString& words) const;

    job::Cast given_;
    std::vector<CastPocket> pockets_;
    FieldRows* left_;
    FieldRows* right_;
    Bindings<job::Cast> numbers_;
    QLineEdit* day_;
    QCheckBox* new_holes_;
    TableEdit* fits_;
    QLineEdit* note_;
};

} // namespace drawercast::app
