// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/json_tree.h"

#include <boost/json/basic_parser_impl.hpp>

#include <algorithm>
#include <optional>
#include <utility>

namespace drawercast::job {

namespace {

namespace bj = boost::json;

/// Takes the parser's events and builds the tree. `token` is where the piece being fed begins and ends:
/// pieces are cut at token borders, so that is the place of what an event tells.
class Builder {
  public:
    static constexpr std::size_t max_object_size = static_cast<std::size_t>(-1);
    static constexpr std::size_t max_array_size = static_cast<std::size_t>(-1);
    static constexpr std::size_t max_key_size = static_cast<std::size_t>(-1);
    static constexpr std::size_t max_string_size = static_cast<std::size_t>(-1);

    std::size_t token_begin = 0;
    std::size_t token_end = 0;
    std::size_t number_begin = 0;
    std::size_t number_end = 0;
    std::optional<std::pair<std::string, std::size_t>> trouble; ///< what, and at which byte
    JsonNode root;

    bool on_document_begin(bj::error_code&) { return true; }
    bool on_document_end(bj::error_code&) { return true; }
    bool on_object_begin(bj::error_code& ec) { return open(JsonNode::Kind::object, ec); }
    bool on_object_end(std::size_t, bj::error_code& ec) { return unique_keys(ec) && close(); }
    bool on_array_begin(bj::error_code& ec) { return open(JsonNode::Kind::array, ec); }
    bool on_array_end(std::size_t, bj::error_code&) { return close(); }

    bool on_key_part(bj::string_view s, std::size_t, bj::error_code&) { return add(key_, s); }
    bool on_key(bj::string_view s, std::size_t, bj::error_code&) {
        add(key_, s);
        key_begin_.back() = token_begin;
        return true;
    }
    bool on_string_part(bj::string_view s, std::size_t, bj::error_code&) { return add(text_, s); }
    bool on_string(bj::string_view s, std::size_t, bj::error_code& ec) {
        add(text_, s);
        JsonNode node = fresh(JsonNode::Kind::string);
        node.text = std::exchange(text_, {});
        return put(std::move(node), ec);
    }
    bool on_number_part(bj::string_view s, bj::error_code&) { return add(text_, s); }
    bool on_int64(std::int64_t, bj::string_view s, bj::error_code& ec) { return number(s, ec); }
    bool on_uint64(std::uint64_t, bj::string_view s, bj::error_code& ec) { return number(s, ec); }
    bool on_double(double, bj::string_view s, bj::error_code& ec) { return number(s, ec); }
    bool on_bool(bool value, bj::error_code& ec) {
        JsonNode node = fresh(JsonNode::Kind::boolean);
        node.truth = value;
        return put(std::move(node), ec);
    }
    bool on_null(bj::error_code& ec) { return put(fresh(JsonNode::Kind::null), ec); }
    bool on_comment_part(bj::string_view, bj::error_code&) { return true; }
    bool on_comment(bj::string_view, bj::error_code&) { return true; }

  private:
    static bool add(std::string& to, bj::string_view s) {
        to.append(s.data(), s.size());
        return true;
    }
    JsonNode fresh(JsonNode::Kind kind) const {
        JsonNode node;
        node.kind = kind;
        node.begin = token_begin;
        node.end = token_end;
        return node;
    }
    bool fail(std::string what, std::size_t where, bj::error_code& ec) {
        trouble.emplace(std::move(what), where);
        ec = bj::error::exception;
        return false;
    }
    JsonNode* place() {
        if (open_.empty()) return &root;
        JsonNode& parent = *open_.back();
        if (parent.kind == JsonNode::Kind::array) return &parent.items.emplace_back();
        parent.members.push_back({std::exchange(key_, {}), {}});
        keys_at_.back().push_back(key_begin_.back());
        return &parent.members.back().value;
    }
    bool counted(bj::error_code& ec) {
        if (++values_ <= most_json_values) return true;
        return fail("holds more values than any job", token_begin, ec);
    }
    bool put(JsonNode node, bj::error_code& ec) {
        if (!counted(ec)) return false;
        *place() = std::move(node);
        return true;
    }
    bool number(bj::string_view s, bj::error_code& ec) {
        add(text_, s);
        JsonNode node = fresh(JsonNode::Kind::number);
        node.begin = number_begin;
        node.end = number_end;
        node.text = std::exchange(text_, {});
        return put(std::move(node), ec);
    }
    bool open(JsonNode::Kind kind, bj::error_code& ec) {
        if (!counted(ec)) return false;
        JsonNode* node = place();
        *node = fresh(kind);
        open_.push_back(node); // its parent is not added to again before it is closed, so the address holds
        key_begin_.push_back(0);
        keys_at_.emplace_back();
        return true;
    }
    bool close() {
        open_.back()->end = token_end;
        open_.pop_back();
        key_begin_.pop_back();
        keys_at_.pop_back();
        return true;
    }
    bool unique_keys(bj::error_code& ec) {
        const auto& members = open_.back()->members;
        std::vector<std::size_t> order(members.size());
        for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return std::pair(std::string_view(members[a].key), a) <
                   std::pair(std::string_view(members[b].key), b);
        });
        for (std::size_t i = 1; i < order.size(); ++i)
            if (members[order[i - 1]].key == members[order[i]].key)
                return fail("the key \"" + members[order[i]].key + "\" stands twice in one object",
                            keys_at_.back()[order[i]], ec);
        return true;
    }

    std::vector<JsonNode*> open_;
    std::vector<std::size_t> key_begin_;
    std::vector<std::vector<std::size_t>> keys_at_;
    std::string key_;
    std::string text_;
    std::size_t values_ = 0;
};

bool blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }
bool structural(char c) { return c == '{' || c == '}' || c == '[' || c == ']' || c == ':' || c == ','; }

/// The end of the token, or of the run of blanks, that begins at `from`.
std::size_t token_end(std::string_view text, std::size_t from) {
    const char first = text[from];
    std::size_t i = from + 1;
    if (structural(first)) return i;
    if (blank(first)) {
        while (i < text.size() && blank(text[i])) ++i;
        return i;
    }
    if (first == '"') {
        while (i < text.size() && text[i] != '"') i += text[i] == '\\' ? 2u : 1u;
        return std::min(i + 1, text.size());
    }
    while (i < text.size() && !blank(text[i]) && !structural(text[i]) && text[i] != '"') ++i;
    return i;
}

Problem unreadable(std::string_view text, std::size_t at, std::string what) {
    return {"json", place_text(text, at), std::move(what), "Mend the text there, or open the backup"};
}

std::string reason(const bj::error_code& ec) {
    if (ec == bj::error::too_deep) return "nested deeper than " + std::to_string(most_json_depth) + " levels";
    if (ec == bj::error::incomplete) return "the text ends too soon";
    if (ec == bj::error::extra_data) return "something follows after the end of the job";
    return "not JSON: " + ec.message();
}

} // namespace

const JsonNode* JsonNode::find(std::string_view key) const {
    for (const auto& member : members)
        if (member.key == key) return &member.value;
    return nullptr;
}

std::string place_text(std::string_view text, std::size_t offset) {
    offset = std::min(offset, text.size());
    const auto before = text.substr(0, offset);
    const auto line = std::count(before.begin(), before.end(), '\n') + 1;
    const auto start = before.rfind('\n');
    const std::size_t column = offset - (start == std::string_view::npos ? 0 : start + 1) + 1;
    return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

Expected<JsonNode> parse_json(std::string_view text) {
    if (text.size() > most_json_bytes)
        return Problem{"json-size",
                       {},
                       "larger than " + std::to_string(most_json_bytes / 1024 / 1024) + " MB",
                       "A job is far smaller: check that this is the right file"};
    bj::parse_options options;
    options.max_depth = most_json_depth;
    bj::basic_parser<Builder> parser(options);
    Builder& builder = parser.handler();
    bj::error_code ec;
    std::size_t at = 0;
    while (at < text.size() && !ec) {
        const std::size_t end = token_end(text, at);
        builder.token_begin = at;
        builder.token_end = end;
        if (text[at] == '-' || (text[at] >= '0' && text[at] <= '9')) {
            builder.number_begin = at;
            builder.number_end = end;
        }
        const std::size_t used = parser.write_some(true, text.data() + at, end - at, ec);
        if (!ec && used < end - at) ec = bj::error::extra_data;
        if (ec && !builder.trouble) return unreadable(text, at + used, reason(ec));
        at = end;
    }
    if (!ec) {
        builder.token_begin = builder.token_end = text.size();
        parser.write_some(false, "", 0, ec);
    }
    if (builder.trouble) return unreadable(text, builder.trouble->second, builder.trouble->first);
    if (ec) return unreadable(text, at, reason(ec));
    return std::move(builder.root);
}

} // namespace drawercast::job
