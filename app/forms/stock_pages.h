// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/shop.h"

#include "forms/field_problem.h"
#include "forms/form_context.h"
#include "forms/number_table.h"

#include <QObject>

#include <functional>
#include <vector>

class QTabWidget;

namespace drawercast::app {

class TableEdit;

/// What the shop builds with and uses up, as pages of its form: boards as measured, bars and tubes, closures,
/// and the packages of what is used up; each with its price and what is at hand. A table nobody changed
/// gives back what it was made of, so that a shop without lists of its own stays with the built-in ones.
class StockPages final : public QObject {
    Q_OBJECT
  public:
    StockPages(const job::Shop& shop, const FormContext& context, QTabWidget& pages);

    void take(job::Shop& shop) const;
    FieldProblems problems() const; ///< names that are missing or there twice

  signals:
    void edited();

  private:
    template <class Goods>
    struct Fields;
    /// `shown`: the list as it counts, the built-in one where the shop has none.
    template <class Goods>
    TableEdit* add_table(std::vector<Goods> job::Shop::*list, std::vector<Goods> shown,
                         const Fields<Goods>& fields);
    TableEdit* add_supplies(const job::Shop& shop, const FormContext& context);
    TableEdit* watched(TableEdit* table);

    struct Named { ///< a table whose rows must have names of their own, once any is changed
        const char* path;
        TableEdit* table;
        std::vector<NumberRow> given;
    };
    std::vector<Named> named_;
    std::vector<std::function<void(job::Shop&)>> takers_;
};

} // namespace drawercast::app
