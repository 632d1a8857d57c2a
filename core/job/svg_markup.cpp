// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/svg_markup.h"

#include "base/ascii.h"
#include "base/number.h"
#include "base/text_spot.h"

#include <algorithm>

namespace drawercast::job {

namespace {

constexpr std::size_t deepest = 100;
constexpr std::size_t most_attributes = 200;

bool name_letter(char c) {
    return is_letter(c) || is_digit(c) || c == '_' || c == '-' || c == '.' || c == ':' ||
           static_cast<unsigned char>(c) >= 0x80;
}

std::string local(std::string_view name) {
    const auto colon = name.rfind(':');
    return std::string(colon == std::string_view::npos ? name : name.substr(colon + 1));
}

/// The five named characters of XML; a numbered one is no part of a number or an id and becomes a blank.
std::optional<char> character(std::string_view reference) {
    if (reference == "amp") return '&';
    if (reference == "lt") return '<';
    if (reference == "gt") return '>';
    if (reference == "quot") return '"';
    if (reference == "apos") return '\'';
    if (reference.size() > 1 && reference[0] == '#') return ' ';
    return std::nullopt;
}

} // namespace

std::string_view SvgTag::value(std::string_view attribute) const {
    const auto found = attributes.find(attribute);
    return found == attributes.end() ? std::string_view() : std::string_view(found->second);
}

Problem SvgMarkup::problem(const Phrase& what, const Phrase& fix) const {
    return {"svg-markup", line_and_column(text_, at_), what, fix};
}

void SvgMarkup::skip_blanks() {
    while (at_ < text_.size() && is_blank(text_[at_])) ++at_;
}

std::string SvgMarkup::name() {
    const auto from = at_;
    while (at_ < text_.size() && name_letter(text_[at_])) ++at_;
    return std::string(text_.substr(from, at_ - from));
}

/// Past a comment and the like; to the end of the text where it does not close.
bool SvgMarkup::skipped(std::string_view opening, std::string_view closing) {
    if (text_.substr(at_, opening.size()) != opening) return false;
    const auto end = text_.find(closing, at_ + opening.size());
    at_ = end == std::string_view::npos ? text_.size() : end + closing.size();
    return true;
}

Expected<std::optional<SvgTag>> SvgMarkup::next() {
    while (true) {
        const auto bracket = text_.find('<', at_);
        if (bracket == std::string_view::npos) {
            at_ = text_.size();
            if (!any_)
                return problem(phrase("there is no drawing in it"),
                               phrase("Choose a file in the SVG format"));
            if (!open_.empty())
                return problem(phrase("the file ends too early"), phrase("Save the drawing once more"));
            return std::optional<SvgTag>();
        }
        at_ = bracket;
        if (skipped("<!--", "-->") || skipped("<![CDATA[", "]]>") || skipped("<?", "?>")) continue;
        if (text_.substr(at_, 2) == "<!") {
            const auto end = text_.find('>', at_);
            const auto inner = text_.find('[', at_);
            if (inner != std::string_view::npos && (end == std::string_view::npos || inner < end))
                return problem(phrase("the file declares entities of its own"),
                               phrase("Save it as an SVG with nothing in it but outlines, without a "
                                      "declaration in brackets"));
            at_ = end == std::string_view::npos ? text_.size() : end + 1;
            continue;
        }
        return tag();
    }
}

Expected<std::string> SvgMarkup::attribute_value() {
    skip_blanks();
    if (at_ >= text_.size() || text_[at_] != '=')
        return problem(phrase("an attribute has no value"), phrase("Save the drawing once more"));
    ++at_;
    skip_blanks();
    if (at_ >= text_.size() || (text_[at_] != '"' && text_[at_] != '\''))
        return problem(phrase("an attribute’s value is not in quotes"), phrase("Save the drawing once more"));
    const char quote = text_[at_++];
    std::string value;
    for (; at_ < text_.size() && text_[at_] != quote; ++at_) {
        const char c = text_[at_];
        if (c == '<')
            return problem(phrase("an attribute’s value does not end"), phrase("Save the drawing once more"));
        if (c != '&') {
            value += c;
            continue;
        }
        constexpr std::size_t longest = 12;
        const auto end = text_.find(';', at_);
        if (end == std::string_view::npos || end - at_ > longest)
            return problem(phrase("an & names no character"), phrase("Write &amp;"));
        const auto one = character(text_.substr(at_ + 1, end - at_ - 1));
        if (!one)
            return problem(phrase("the file uses an entity that XML does not have"),
                           phrase("Save it as an SVG with nothing in it but outlines"));
        value += *one;
        at_ = end;
    }
    if (at_ >= text_.size())
        return problem(phrase("the file ends within a tag"), phrase("Save the drawing once more"));
    ++at_;
    return value;
}

Expected<std::optional<SvgTag>> SvgMarkup::tag() {
    SvgTag tag;
    tag.at = at_++;
    tag.end = at_ < text_.size() && text_[at_] == '/';
    tag.start = !tag.end;
    if (tag.end) ++at_;
    const std::string whole = name();
    if (whole.empty()) return problem(phrase("a < begins no tag"), phrase("Write &lt;"));
    tag.name = local(whole);
    while (true) {
        skip_blanks();
        if (at_ >= text_.size())
            return problem(phrase("the file ends within a tag"), phrase("Save the drawing once more"));
        if (text_[at_] == '>') break;
        if (text_[at_] == '/' && tag.start) {
            tag.end = true;
            ++at_;
            if (at_ >= text_.size() || text_[at_] != '>')
                return problem(phrase("a tag does not end"), phrase("Save the drawing once more"));
            break;
        }
        const std::string key = name();
        if (key.empty() || !tag.start)
            return problem(phrase("this is no attribute"), phrase("Save the drawing once more"));
        const auto value = attribute_value();
        if (!value) return value.error();
        if (!tag.attributes.emplace(key, *value).second)
            return problem(phrase("an attribute is given twice"), phrase("Save the drawing once more"));
        if (tag.attributes.size() > most_attributes)
            return problem(phrase("a tag has more than 200 attributes"),
                           phrase("Save it as an SVG with nothing in it but outlines"));
    }
    ++at_;
    any_ = true;
    if (tag.start && !tag.end) open_.push_back(whole);
    if (open_.size() > deepest)
        return problem(phrase("elements are more than 100 deep in each other"),
                       phrase("Ungroup the drawing"));
    if (!tag.start) {
        if (open_.empty() || open_.back() != whole)
            return problem(phrase("an element ends that was not begun"),
                           phrase("Save the drawing once more"));
        open_.pop_back();
    }
    return std::optional<SvgTag>(std::move(tag));
}

} // namespace drawercast::job
