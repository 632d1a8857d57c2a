// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/json_tree.h"
#include "job/unknown.h"
#include "shape/vec.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace drawercast::job {

/// One reading of one tree: gathers its problems.
class Reading {
  public:
    static constexpr std::size_t most_problems = 100;

    void report(std::string code, const JsonValue& at, Phrase what, Phrase fix);
    /// No more are kept: what is left to do only costs time.
    bool full() const { return problems_.size() >= most_problems; }
    bool clean() const { return problems_.empty(); }
    Problems take() { return std::move(problems_); }

    static constexpr std::size_t most_unknown = 100;
    /// A member that nobody asked for. Where it stands is worked out for those told alone: few bytes can hold
    /// a great many.
    void pass_over(const JsonValue& at);
    const std::vector<JsonValue>& unknown() const { return unknown_; }
    std::size_t more_unknown() const { return more_unknown_; }

    /// Corners and chords of the outlines read so far: few bytes can ask for a great many.
    std::size_t outline_corners = 0;
    bool outlines_refused = false; ///< they were too many, which is told once

  private:
    Problems problems_;
    std::vector<JsonValue> unknown_;
    std::size_t more_unknown_ = 0;
};

/// Reads an object's members one by one into a struct; what is left over is unknown to this version and kept.
/// A member that is absent leaves the target as it is: that is the default.
class Fields {
  public:
    /// `scope` is the object's path in the table of ranges, "/drawers/*/pockets/*". Reports where the value
    /// is no object; then nothing is found in it.
    Fields(Reading& reading, JsonValue object, std::string_view scope);

    bool has(std::string_view key) const { return object_.find(key).has_value(); }
    void number(std::string_view key, double& value);
    void length(std::string_view key, double& value); ///< grained
    void whole(std::string_view key, int& value);
    void text(std::string_view key, std::string& value);
    void flag(std::string_view key, bool& value);
    void lengths(std::string_view key, std::vector<double>& values); ///< each with the range of `key`
    void pair(std::string_view key, double& first, double& second);  ///< two lengths with the range of `key`
    void point(std::string_view key, shape::Vec& value);             ///< grained
    void texts(std::string_view key, std::vector<std::string>& values);

    /// null (and, where given, the word "auto") stands for nothing.
    void maybe_number(std::string_view key, std::optional<double>& value, std::string_view word = {});
    void maybe_length(std::string_view key, std::optional<double>& value, std::string_view word = {});
    void maybe_whole(std::string_view key, std::optional<int>& value);
    void maybe_text(std::string_view key, std::optional<std::string>& value, std::string_view word = {});

    /// One of the words; `value` becomes the one at the same place.
    template <class Enum>
    void word(std::string_view key, Enum& value,
              const std::vector<std::pair<std::string_view, Enum>>& words) {
        const auto at = take(key);
        if (!at) return;
        std::string known;
        for (const auto& [text, meaning] : words) {
            if (at->text() == text) {
                value = meaning;
                return;
            }
            known += (known.empty() ? "\"" : ", \"") + std::string(text) + "\"";
        }
        reading_.report("value", *at, phrase("is none of the words known here"),
                        phrase("Use one of %1", verbatim(known)));
    }

    /// The member to be read by `read(JsonValue)`, where there is one.
    template <class Read>
    void part(std::string_view key, Read read) {
        if (const auto at = take(key)) read(*at);
    }
    /// The same where null or the word "auto" stands for nothing.
    template <class Read>
    void maybe_part(std::string_view key, Read read, std::string_view word = {}) {
        if (const auto at = take(key); at && !stands_for_nothing(*at, word)) read(*at);
    }
    /// Each item of a list, until the reading is full.
    template <class Read>
    void list(std::string_view key, std::size_t most, Read read) {
        const auto at = take_list(key, most);
        if (!at) return;
        at->each_item([&](JsonValue item) {
            if (!reading_.full()) read(item);
        });
    }

    void require(std::string_view key); ///< reports where it is missing
    void refuse(std::string_view key,
                const Phrase& why); ///< reports where it is there: it contradicts another
    Unknowns rest() const;          ///< members nobody asked for
    const JsonValue& object() const { return object_; }
    Reading& reading() { return reading_; }

  private:
    std::optional<JsonValue> take(std::string_view key);
    std::optional<JsonValue> take_list(std::string_view key, std::size_t most);
    std::optional<double> number_at(const JsonValue& at, std::string_view key);
    std::optional<double> length_at(const JsonValue& at, std::string_view key);
    static bool stands_for_nothing(const JsonValue& at, std::string_view word);

    Reading& reading_;
    JsonValue object_;
    std::string scope_;
    std::vector<std::string_view> asked_;
};

inline constexpr std::size_t most_text_characters = 100000;

/// A finite number within the range of `path`; nothing, and a report, where it is none.
std::optional<double> read_number(Reading& reading, const JsonValue& at, std::string_view path);
/// The same of a length: grained, and within the range as it is written and as it is kept, so that what can
/// be read once can be read again.
std::optional<double> read_length(Reading& reading, const JsonValue& at, std::string_view path);

} // namespace drawercast::job
