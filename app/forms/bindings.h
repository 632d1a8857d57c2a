// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forms/field_rows.h"
#include "forms/value_edit.h"

#include <optional>
#include <string>
#include <type_traits>
#include <variant>
#include <vector>

namespace drawercast::app {

/// Fields and the members of a T they stand for: filled from it and taken back into it.
template <class T>
class Bindings {
  public:
    using Member = std::variant<double T::*, int T::*, std::optional<double> T::*, std::optional<int> T::*>;

    struct Field {
        std::string path; ///< within T
        QString label;
        ValueEdit* edit;
        Member member;
        QString hint = {};
    };

    /// A row of its own; what it holds is in `rows` to be shown.
    void add(FieldRows& rows, Field field) {
        rows.add(field.path, field.label, field.edit, field.hint);
        fields_.push_back(std::move(field));
    }

    void fill(const T& from) const {
        for (const Field& field : fields_)
            std::visit([&](auto member) { field.edit->set_value(optional_of(from.*member)); }, field.member);
    }

    /// False where a field cannot be read; `to` then has the others.
    bool take(T& to) const {
        bool all = true;
        for (const Field& field : fields_) {
            if (!field.edit->problem().isEmpty()) {
                all = false;
                continue;
            }
            std::visit([&](auto member) { put(to.*member, field.edit->value()); }, field.member);
        }
        return all;
    }

    const std::vector<Field>& fields() const { return fields_; }

  private:
    template <class Number>
    static std::optional<double> optional_of(const Number& number) {
        return static_cast<double>(number);
    }
    template <class Number>
    static std::optional<double> optional_of(const std::optional<Number>& number) {
        return number ? std::optional<double>(static_cast<double>(*number)) : std::nullopt;
    }
    template <class Number>
    static void put(Number& to, const std::optional<double>& value) {
        if (value) to = static_cast<Number>(*value); // whole where Number is: the edit's range says so
    }
    template <class Number>
    static void put(std::optional<Number>& to, const std::optional<double>& value) {
        to = value ? std::optional<Number>(static_cast<Number>(*value)) : std::nullopt;
    }

    std::vector<Field> fields_;
};

} // namespace drawercast::app
