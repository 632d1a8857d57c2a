// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/job.h"
#include "job/json_tree.h"
#include "shape/vec.h"

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace drawercast::job {

/// One reading of one text: where its problems are gathered.
class Reading {
  public:
    static constexpr std::size_t most_problems = 100;

    explicit Reading(std::string_view text) : text_(text) {}
    void report(std::string code, const std::string& pointer, std::size_t offset, std::string what,
                std::string fix);
    std::string_view text() const { return text_; }
    Problems take() { return std::move(problems_); }
    bool clean() const { return problems_.empty(); }

  private:
    std::string_view text_;
    Problems problems_;
};

/// A value with its path: "/objects/3/count" for people, "/objects/*/count" for the table of ranges.
struct Spot {
    const JsonNode* node = nullptr;
    std::string pointer;
    std::string pattern;
    Spot at(std::string_view key, const JsonNode& child) const;
    Spot item(std::size_t index, const JsonNode& child) const;
};

/// Reads an object's members one by one into a struct; what is left over is unknown to this version and kept.
/// A member that is absent leaves the target as it is: that is the default.
class Fields {
  public:
    /// Reports where the value is no object; then nothing is found in it.
    Fields(Reading& reading, Spot spot);

    bool has(std::string_view key) const;
    void number(std::string_view key, double& value);
    void length(std::string_view key, double& value); ///< grained
    void whole(std::string_view key, int& value);
    void text(std::string_view key, std::string& value);
    void flag(std::string_view key, bool& value);
    void numbers(std::string_view key, std::vector<double>& values);
    void pair(std::string_view key, double& first, double& second); ///< two lengths with the range of `key`
    void point(std::string_view key, shape::Vec& value);
    void texts(std::string_view key, std::vector<std::string>& values);
    void kept(std::string_view key, std::string& raw_list); ///< a list this version carries along

    /// null (and, where given, the word "auto") stands for nothing.
    void maybe_number(std::string_view key, std::optional<double>& value, std::string_view word = {});
    void maybe_length(std::string_view key, std::optional<double>& value, std::string_view word = {});
    void maybe_whole(std::string_view key, std::optional<int>& value);
    void maybe_text(std::string_view key, std::optional<std::string>& value, std::string_view word = {});

    /// One of the words; `value` becomes the one at the same place.
    template <class Enum>
    void word(std::string_view key, Enum& value,
              const std::vector<std::pair<std::string_view, Enum>>& words) {
        const JsonNode* node = take(key);
        if (node == nullptr) return;
        for (const auto& [text, meaning] : words)
            if (node->kind == JsonNode::Kind::string && node->text == text) {
                value = meaning;
                return;
            }
        std::string known;
        for (const auto& [text, meaning] : words)
            known += (known.empty() ? "\"" : ", \"") + std::string(text) + "\"";
        wrong(key, *node, "is none of the words known here", "Use one of " + known);
    }

    /// The member to be read by `read(Spot)`, where there is one.
    template <class Read>
    void part(std::string_view key, Read read) {
        if (const JsonNode* node = take(key)) read(spot_.at(key, *node));
    }
    /// Each item of a list.
    template <class Read>
    void list(std::string_view key, std::size_t most, Read read) {
        const JsonNode* node = take_list(key, most);
        if (node == nullptr) return;
        const Spot list = spot_.at(key, *node);
        for (std::size_t i = 0; i < node->items.size(); ++i) read(list.item(i, node->items[i]));
    }

    void require(std::string_view key); ///< reports where it is missing
    void wrong(std::string_view key, const JsonNode& node, std::string what, std::string fix);
    Unknowns rest() const; ///< members nobody asked for
    const Spot& spot() const { return spot_; }
    Reading& reading() { return reading_; }

  private:
    const JsonNode* take(std::string_view key);
    const JsonNode* take_list(std::string_view key, std::size_t most);

    Reading& reading_;
    Spot spot_;
    std::set<std::string, std::less<>> asked_;
};

/// The number of a node within the range of the pattern; nothing, and a report, where it is none.
std::optional<double> read_number(Reading& reading, const Spot& spot);
/// [x, y], coordinates anywhere within a workshop (±100 m).
std::optional<shape::Vec> read_point(Reading& reading, const Spot& spot);

} // namespace drawercast::job
