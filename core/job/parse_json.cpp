// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/text_spot.h"
#include "job/json_tree.h"

#include <boost/json/basic_parser_impl.hpp>

#include <algorithm>
#include <utility>

namespace drawercast::job {

namespace bj = boost::json;

/// Builds the tree from the parser's events. The parser says what comes, in the text's order; where it
/// stands is found by walking the same text in step: everything before an event is known to be valid, so
/// only blanks, colons and commas lie between two tokens.
class JsonTreeBuilder {
  public:
    static constexpr std::size_t max_object_size = static_cast<std::size_t>(-1);
    static constexpr std::size_t max_array_size = static_cast<std::size_t>(-1);
    static constexpr std::size_t max_key_size = static_cast<std::size_t>(-1);
    static constexpr std::size_t max_string_size = static_cast<std::size_t>(-1);

    void start(std::string_view text) {
        tree.source_ = text;
        const auto marks = std::count_if(text.begin(), text.end(), [](char c) {
            return c == ',' || c == ':' || c == '[' || c == '{';
        }); // each stands before at most one value or key, so the nodes never have to move
        tree.nodes_.reserve(std::min(static_cast<std::size_t>(marks) + 1, most_json_values));
    }

    JsonTree tree;
    bool too_many = false;

    bool on_document_begin(bj::error_code&) { return true; }
    bool on_document_end(bj::error_code&) { return true; }
    bool on_comment_part(bj::string_view, bj::error_code&) { return true; }
    bool on_comment(bj::string_view, bj::error_code&) { return true; }

    bool on_object_begin(bj::error_code& ec) { return open(JsonKind::object, ec); }
    bool on_array_begin(bj::error_code& ec) { return open(JsonKind::array, ec); }
    bool on_object_end(std::size_t members, bj::error_code&) {
        find_repeated_keys(open_.back(), members);
        return close(members);
    }
    bool on_array_end(std::size_t items, bj::error_code&) { return close(items); }

    bool on_key_part(bj::string_view s, std::size_t, bj::error_code&) { return keep(s); }
    bool on_key(bj::string_view s, std::size_t, bj::error_code& ec) { return keep(s) && put_string(ec); }
    bool on_string_part(bj::string_view s, std::size_t, bj::error_code&) { return keep(s); }
    bool on_string(bj::string_view s, std::size_t, bj::error_code& ec) { return keep(s) && put_string(ec); }

    bool on_number_part(bj::string_view, bj::error_code&) { return true; }
    bool on_int64(std::int64_t, bj::string_view, bj::error_code& ec) { return put_number(ec); }
    bool on_uint64(std::uint64_t, bj::string_view, bj::error_code& ec) { return put_number(ec); }
    bool on_double(double, bj::string_view, bj::error_code& ec) { return put_number(ec); }
    bool on_bool(bool value, bj::error_code& ec) { return put(JsonKind::boolean, value ? 4 : 5, ec); }
    bool on_null(bj::error_code& ec) { return put(JsonKind::null, 4, ec); }

  private:
    std::size_t token() {
        at_ = tree.source_.find_first_not_of(" \t\r\n:,", at_);
        return at_;
    }

    bool put(JsonKind kind, std::size_t length, bj::error_code& ec) {
        if (tree.nodes_.size() >= most_json_values) {
            too_many = true;
            ec = bj::error::exception;
            return false;
        }
        JsonTree::Node node;
        node.kind = kind;
        node.begin = static_cast<std::uint32_t>(token());
        at_ += length;
        node.end = static_cast<std::uint32_t>(at_);
        tree.nodes_.push_back(node);
        tree.nodes_.back().next = static_cast<std::uint32_t>(tree.nodes_.size());
        return true;
    }

    bool put_number(bj::error_code& ec) {
        const std::size_t begin = token();
        const std::size_t end = tree.source_.find_first_not_of("+-.0123456789eE", begin);
        return put(JsonKind::number, std::min(end, tree.source_.size()) - begin, ec);
    }

    bool keep(bj::string_view part) {
        characters_.append(part.data(), part.size());
        return true;
    }

    bool put_string(bj::error_code& ec) {
        const std::size_t begin = token();
        std::size_t end = begin + 1;
        bool as_written = true;
        while (tree.source_[end] != '"') {
            const bool escape = tree.source_[end] == '\\';
            if (escape) as_written = false;
            end += escape ? 2 : 1;
        }
        if (!put(JsonKind::string, end + 1 - begin, ec)) return false;
        if (!as_written) {
            tree.unescaped_.push_back(characters_);
            tree.nodes_.back().extra = static_cast<std::uint32_t>(tree.unescaped_.size());
        }
        characters_.clear();
        return true;
    }

    bool open(JsonKind kind, bj::error_code& ec) {
        if (!put(kind, 1, ec)) return false;
        open_.push_back(static_cast<std::uint32_t>(tree.nodes_.size() - 1));
        return true;
    }

    bool close(std::size_t children) {
        token();
        ++at_;
        auto& node = tree.nodes_[open_.back()];
        node.end = static_cast<std::uint32_t>(at_);
        node.next = static_cast<std::uint32_t>(tree.nodes_.size());
        node.extra = static_cast<std::uint32_t>(children);
        open_.pop_back();
        return true;
    }

    void find_repeated_keys(std::uint32_t object, std::size_t members) {
        constexpr std::size_t most_told = 100;
        using Key = std::pair<std::string_view, std::uint32_t>;
        std::vector<Key> keys;
        keys.reserve(members);
        tree.nodes_[object].next = static_cast<std::uint32_t>(tree.nodes_.size());
        for (std::uint32_t key = object + 1; key < tree.nodes_.size(); key = tree.nodes_[key + 1].next)
            keys.emplace_back(JsonValue(tree, key).text(), key);
        std::sort(keys.begin(), keys.end());
        std::vector<std::uint32_t> again;
        for (std::size_t i = 1; i < keys.size(); ++i)
            if (keys[i].first == keys[i - 1].first) again.push_back(keys[i].second);
        std::sort(again.begin(), again.end());
        const std::size_t room = most_told - tree.repeated_.size();
        if (again.size() > room) again.resize(room);
        tree.repeated_.insert(tree.repeated_.end(), again.begin(), again.end());
    }

    std::size_t at_ = 0; ///< how far the text has been walked
    std::vector<std::uint32_t> open_;
    std::string characters_; ///< of the string that is being read, unescaped
};

namespace {

Problem unreadable(std::string_view text, std::size_t at, const char* code, Phrase what) {
    return {code, line_and_column(text, at), std::move(what),
            phrase("Mend the text there, or open the backup")};
}

Problem reason(std::string_view text, std::size_t at, const bj::error_code& ec) {
    if (ec == bj::error::too_deep)
        return unreadable(text, at, "json-deep",
                          phrase("nested deeper than %1 levels", figure(std::to_string(most_json_depth))));
    if (ec == bj::error::incomplete) return unreadable(text, at, "json", phrase("the text ends too soon"));
    if (ec == bj::error::extra_data)
        return unreadable(text, at, "json", phrase("something follows after the end of the job"));
    return unreadable(text, at, "json", phrase("not JSON: %1", verbatim(ec.message())));
}

} // namespace

Expected<JsonTree> parse_json(std::string_view text) {
    if (text.size() > most_json_bytes)
        return Problem{"json-size",
                       {},
                       phrase("larger than %1 MB", figure(std::to_string(most_json_bytes / 1024 / 1024))),
                       phrase("A job is far smaller: check that this is the right file")};
    bj::parse_options options;
    options.max_depth = most_json_depth;
    bj::basic_parser<JsonTreeBuilder> parser(options);
    JsonTreeBuilder& builder = parser.handler();
    builder.start(text);
    bj::error_code ec;
    const std::size_t used = parser.write_some(false, text.data(), text.size(), ec);
    if (builder.too_many)
        return unreadable(text, used, "json-values", phrase("holds more values than any job"));
    if (!ec && used < text.size()) ec = bj::error::extra_data;
    if (ec) return reason(text, used, ec);
    return std::move(builder.tree);
}

} // namespace drawercast::job
