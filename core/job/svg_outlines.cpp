// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/svg_outlines.h"

#include "base/contains.h"
#include "base/number.h"
#include "base/text_spot.h"
#include "job/svg_markup.h"
#include "job/svg_path.h"

#include <algorithm>
#include <array>

namespace drawercast::job {

namespace {

using shape::Vec;

constexpr std::size_t most_bytes = 8'000'000;
constexpr std::size_t most_outlines = 300;
Phrase plain() { return phrase("Save it as an SVG with nothing in it but outlines"); }

bool among(std::string_view name, std::initializer_list<std::string_view> names) {
    return contains(names, name);
}

/// The map from the drawing's units to mm with y up, by the root's width, height and viewBox.
Expected<SvgMap> root_map(const SvgTag& root, SvgOutlines& found) {
    const auto width = svg_length_mm(root.value("width"));
    const auto height = svg_length_mm(root.value("height"));
    constexpr double px = 25.4 / 96;
    const auto view = root.value("viewBox");
    found.sized = width || height;
    if (view.empty()) return SvgMap{px, 0, 0, -px, 0, 0};
    std::array<double, 4> box{};
    std::size_t at = 0;
    for (double& value : box) {
        const auto number = svg_number(view, at);
        if (!number)
            return Problem{"svg-size", "", phrase("the viewBox does not hold four numbers"), plain()};
        value = *number;
    }
    if (!(box[2] > 0) || !(box[3] > 0))
        return Problem{"svg-size", "", phrase("the viewBox has no size"), plain()};
    const double across = width ? *width / box[2] : height ? *height / box[3] : px;
    const double up = height ? *height / box[3] : across;
    if (!(across > 0) || !(up > 0))
        return Problem{"svg-size", "", phrase("width or height is not more than 0"), plain()};
    if (root.value("preserveAspectRatio").substr(0, 4) == "none") return SvgMap{across, 0, 0, -up, 0, 0};
    const double scale = std::min(across, up);
    return SvgMap{scale, 0, 0, -scale, 0, 0};
}

/// Reads the numbers of an element; a fault is kept, the first of them.
class Attributes {
  public:
    explicit Attributes(const SvgTag& tag) : tag_(tag) {}

    double number(std::string_view name, double usual = 0) {
        const auto text = tag_.value(name);
        if (text.empty()) return usual;
        std::size_t at = 0;
        const auto value = svg_number(text, at);
        const auto unit = text.substr(std::min(at, text.size()));
        if (value && (unit.empty() || unit == "px")) return *value;
        const auto mm = svg_length_mm(text);
        if (mm) return *mm * 96 / 25.4; // a unit within the drawing means CSS's inch, whatever its scale
        if (fault_.empty()) fault_ = phrase("“%1” is no number", verbatim(std::string(name)));
        return usual;
    }
    const Phrase& fault() const { return fault_; }

  private:
    const SvgTag& tag_;
    Phrase fault_;
};

void draw_rectangle(Attributes& of, const SvgTag& tag, SvgPen& pen) {
    const double x = of.number("x"), y = of.number("y"), w = of.number("width"), h = of.number("height");
    const bool has_rx = !tag.value("rx").empty(), has_ry = !tag.value("ry").empty();
    double rx = of.number("rx"), ry = of.number("ry");
    if (!has_rx) rx = ry;
    if (!has_ry) ry = rx;
    rx = std::clamp(rx, 0.0, std::max(0.0, w / 2));
    ry = std::clamp(ry, 0.0, std::max(0.0, h / 2));
    const bool round = rx > 0 && ry > 0;
    if (!round) rx = ry = 0;
    const auto corner = [&](Vec to) {
        if (round) pen.arc({rx, ry}, to);
    };
    pen.move({x + rx, y});
    pen.line({x + w - rx, y});
    corner({x + w, y + ry});
    pen.line({x + w, y + h - ry});
    corner({x + w - rx, y + h});
    pen.line({x + rx, y + h});
    corner({x, y + h - ry});
    pen.line({x, y + ry});
    corner({x + rx, y});
    pen.close();
}

void draw_ellipse(Vec center, double rx, double ry, SvgPen& pen) {
    const Vec side{rx, 0}, up{0, ry};
    pen.move(center + side);
    for (const Vec to : {center + up, center - side, center - up, center + side}) pen.arc({rx, ry}, to);
    pen.close();
}

bool draw_points(std::string_view points, SvgPen& pen) {
    std::size_t at = 0;
    bool first = true;
    while (const auto x = svg_number(points, at)) {
        const auto y = svg_number(points, at);
        if (!y) return false;
        first ? pen.move({*x, *y}) : pen.line({*x, *y});
        first = false;
        if (pen.too_many()) return false;
    }
    const bool all = points.find_first_not_of(" \t\r\n,", at) == std::string_view::npos;
    pen.close();
    return all;
}

class Reader {
  public:
    explicit Reader(std::string_view text) : text_(text), markup_(text) {}

    Expected<SvgOutlines> read() {
        while (true) {
            const auto tag = markup_.next();
            if (!tag) return tag.error();
            if (!*tag) break;
            if (auto fault = take(**tag)) return std::move(*fault);
        }
        if (found_.outlines.empty())
            return Problem{"svg-empty", "", phrase("the drawing has no closed outline"),
                           phrase("Turn letters and strokes into paths, and save it as an SVG with nothing "
                                  "in it but outlines")};
        if (!found_.sized)
            found_.notes.insert(found_.notes.begin(),
                                phrase("The drawing does not say its size: 96 units were taken as one inch"));
        for (const auto& name : left_out_) found_.notes.push_back(phrase("Left out: <%1>", verbatim(name)));
        std::stable_sort(found_.outlines.begin(), found_.outlines.end(),
                         [](const auto& a, const auto& b) { return box(a) > box(b); });
        return std::move(found_);
    }

  private:
    static double box(const SvgOutline& outline) {
        shape::Box all;
        for (const auto& corner : outline.polygon.corners) all.add(corner.at);
        return all.width() * all.height();
    }

    Problem problem(const SvgTag& tag, const char* code, Phrase what) const {
        return {code, line_and_column(text_, tag.at), phrase("<%1>: %2", verbatim(tag.name), std::move(what)),
                plain()};
    }

    std::optional<Problem> take(const SvgTag& tag) {
        if (maps_.empty()) {
            if (tag.name != "svg") return problem(tag, "svg-markup", phrase("a drawing begins with <svg>"));
            const auto map = root_map(tag, found_);
            if (!map) return problem(tag, "svg-size", map.error().what);
            if (!tag.end) maps_.push_back(*map);
            return std::nullopt;
        }
        if (!tag.start) {
            if (hidden_ > 0) --hidden_;
            if (maps_.size() > 1) maps_.pop_back();
            return std::nullopt;
        }
        const bool holds_none =
            among(tag.name, {"defs", "clipPath", "mask", "symbol", "marker", "pattern", "metadata"});
        if (tag.name == "svg") return problem(tag, "svg-markup", phrase("a drawing within the drawing"));
        const auto own = svg_transform(tag.value("transform"));
        if (!own) return problem(tag, "svg-transform", phrase("the transform cannot be read"));
        const SvgMap map = maps_.back().after(*own);
        if (!tag.end) {
            maps_.push_back(map);
            if (hidden_ > 0 || holds_none) ++hidden_;
        }
        if (hidden_ > 0) return std::nullopt;
        if (among(tag.name, {"use", "text", "image", "line", "foreignObject"}) && !among_left_out(tag.name))
            left_out_.push_back(tag.name);
        return draw(tag, map);
    }

    bool among_left_out(const std::string& name) const { return contains(left_out_, name); }

    std::optional<Problem> draw(const SvgTag& tag, const SvgMap& map) {
        SvgPen pen(map);
        Attributes of(tag);
        if (tag.name == "path") {
            if (const auto drawn = svg_path(tag.value("d"), pen); !drawn)
                return problem(tag, "svg-path",
                               phrase("%1, %2", drawn.error().what, drawn.error().where.spot));
        } else if (tag.name == "rect") {
            draw_rectangle(of, tag, pen);
        } else if (tag.name == "circle") {
            draw_ellipse({of.number("cx"), of.number("cy")}, of.number("r"), of.number("r"), pen);
        } else if (tag.name == "ellipse") {
            draw_ellipse({of.number("cx"), of.number("cy")}, of.number("rx"), of.number("ry"), pen);
        } else if (among(tag.name, {"polygon", "polyline"})) {
            if (!draw_points(tag.value("points"), pen))
                return problem(tag, "svg-number", phrase("its points cannot be read, or are over 5000"));
        } else {
            return std::nullopt;
        }
        if (!of.fault().empty()) return problem(tag, "svg-number", of.fault());
        return keep(tag, pen);
    }

    std::optional<Problem> keep(const SvgTag& tag, SvgPen& pen) {
        for (auto& polygon : pen.take()) {
            const auto contour = shape::contour_of(polygon);
            if (!contour && contour.error().code == "outline-size")
                return problem(tag, "svg-size", contour.error().what);
            const Vec middle = contour ? shape::bounds(*contour).center() : Vec{};
            for (auto& corner : polygon.corners) corner.at = grained_at(corner.at - middle);
            const auto id = tag.value("id");
            found_.outlines.push_back({id.empty() ? tag.name : std::string(id),
                                       line_and_column(text_, tag.at), std::move(polygon),
                                       grained_at(middle)});
            if (found_.outlines.size() > most_outlines)
                return problem(tag, "svg-many", phrase("the drawing has more than 300 outlines"));
        }
        return std::nullopt;
    }

    std::string_view text_;
    SvgMarkup markup_;
    SvgOutlines found_;
    std::vector<SvgMap> maps_;
    std::vector<std::string> left_out_;
    int hidden_ = 0; ///< elements open within one that only describes
};

} // namespace

Expected<SvgOutlines> svg_outlines(std::string_view text) {
    if (text.size() > most_bytes)
        return Problem{"svg-size", "", phrase("the file is over 8 MB"),
                       phrase("Save only the outline, without pictures")};
    return Reader(text).read();
}

} // namespace drawercast::job
