// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/value_edit.h"

#include "forms/problem_words.h"

#include <cmath>

namespace drawercast::app {

namespace {

/// A range up to here and beyond only keeps nonsense out: nobody needs to be told before it is typed.
constexpr double too_wide_to_say = 1000;

} // namespace

ValueEdit::ValueEdit(Notation notation, const job::Range& range, QWidget* parent)
    : QLineEdit(parent), notation_(std::move(notation)), range_(range) {
    setMaxLength(64);
    connect(this, &QLineEdit::textEdited, this, [this](const QString& text) {
        read(text);
        emit edited();
    });
    connect(this, &QLineEdit::editingFinished, this, [this] {
        if (!problem_.isEmpty()) return; // left as it was typed, to be mended
        stored_ = value_;
        const bool typed = isModified(); // whoever listens next still has to know
        show_stored();
        setModified(typed);
    });
    read({});
}

void ValueEdit::set_value(std::optional<double> value) {
    const bool not_said_yet = value && range_.open_least && *value == range_.least;
    stored_ = value_ = not_said_yet ? std::nullopt : value;
    show_stored();
    read(stored_text_);
}

void ValueEdit::show_stored() {
    stored_text_ = stored_ ? notation_.shown(*stored_) : QString();
    if (text() != stored_text_) setText(stored_text_);
}

void ValueEdit::allow_empty(const QString& words) {
    may_be_empty_ = true;
    setPlaceholderText(words);
    read(text());
}

void ValueEdit::read(const QString& typed) {
    const QString text = typed.trimmed();
    problem_.clear();
    if (text.isEmpty()) {
        value_.reset();
        if (!may_be_empty_) problem_ = tr("To fill in");
        return;
    }
    if (text == stored_text_) {
        value_ = stored_;
    } else if (const auto value = notation_.typed(text)) {
        value_ = *value;
    } else {
        value_.reset();
        problem_ = problem_words(value.error());
        return;
    }
    const bool above = range_.open_least ? *value_ > range_.least : *value_ >= range_.least;
    if (!above || *value_ > range_.most)
        problem_ = tr("Out of range: %1").arg(range_words());
    else if (range_.whole && *value_ != std::floor(*value_))
        problem_ = tr("Use a whole number");
}

QString ValueEdit::range_words() const {
    const QString least = notation_.shown(range_.least);
    const QString most = notation_.shown(range_.most);
    return range_.open_least ? tr("over %1, to %2").arg(least, most) : tr("%1 to %2").arg(least, most);
}

QString ValueEdit::words_of(std::optional<double> value) const {
    return value ? notation_.shown(*value) : placeholderText();
}

QString ValueEdit::hint(const QString& more) const {
    const QString own = range_.most >= too_wide_to_say ? notation_.unit
                        : notation_.unit.isEmpty()     ? range_words()
                                                       : tr("%1, %2").arg(notation_.unit, range_words());
    if (more.isEmpty()) return own;
    return own.isEmpty() ? more : tr("%1. %2").arg(own, more);
}

} // namespace drawercast::app
