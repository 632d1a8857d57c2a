// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/ranges.h"

#include "forms/notation.h"

#include <QLineEdit>

#include <optional>

namespace drawercast::app {

/// A line in which a value of the job is shown and typed. What is shown is rounded; the value itself stays as
/// it was, to the last bit, until other text is typed.
class ValueEdit : public QLineEdit {
    Q_OBJECT
  public:
    ValueEdit(Notation notation, const job::Range& range, QWidget* parent = nullptr);

    void set_value(std::optional<double> value);
    /// Nothing where the field is empty, or holds what cannot be read or is out of range.
    std::optional<double> value() const { return problem_.isEmpty() ? value_ : std::nullopt; }

    /// Empty is an answer too, told by these words ("auto: 0.5 mm").
    void allow_empty(const QString& words);

    QString words_of(std::optional<double> value) const; ///< how that value would be shown

    const QString& problem() const { return problem_; } ///< one sentence; empty: none
    /// "mm, 0 to 500. Measured": a range nobody runs into is left out, `more` goes after it.
    QString hint(const QString& more = {}) const;

  signals:
    void edited(); ///< by the maker; value() or problem() may be another

  private:
    void read(const QString& text);
    void show_stored();
    QString range_words() const;

    Notation notation_;
    job::Range range_;
    bool may_be_empty_ = false;
    std::optional<double> stored_; ///< what the text shows
    QString stored_text_;
    std::optional<double> value_;
    QString problem_;
};

} // namespace drawercast::app
