// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/block.h"

#include "base/number.h"
#include "stock/saw.h"
#include "stock/screws.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace drawercast::stock {

namespace {

constexpr double pi = std::numbers::pi;
constexpr double least_riser_mm = 3; // lower ones are taken up by the tube's seat

std::vector<casting::BodyMeeting> meetings_of(const std::vector<BodyIn>& asked) {
    std::vector<casting::BodyGiven> given;
    for (const auto& body : asked)
        given.push_back({body.outline, body.height_mm, body.radius_mm.has_value()});
    return casting::meetings_of(given);
}

/// One block in the making.
class BlockMaking {
  public:
    BlockMaking(const BlockIn& in, const BlockShop& shop) : in_(in), shop_(shop) {
        out_.drawer = in.drawer, out_.subject = in.subject, out_.name = in.name, out_.number = in.number;
    }

    BlockByStock take() {
        const auto met = meetings_of(in_.bodies);
        for (std::size_t i = 0; i < met.size(); ++i) {
            const int of = static_cast<int>(i);
            if (met[i].rest != Rest::butts) add(of, 0, met[i], panel_of(in_.bodies[i].outline));
            int piece = 0;
            for (const auto& left : met[i].left) add(of, piece++, met[i], panel_of(left.outer));
        }
        return std::move(out_);
    }

  private:
    Panel wood_panel(const Panel& sealed) const {
        const auto cut = [&](double mm) {
            return sawn_mm(std::max(1.0, mm - 2 * shop_.film_mm), shop_.saw_step_mm);
        };
        return {cut(sealed.length_mm), cut(sealed.width_mm)};
    }

    void add(int of, int piece, const casting::BodyMeeting& met, const Panel& panel) {
        const BodyIn& asked = in_.bodies[static_cast<std::size_t>(of)];
        Body body;
        body.label = std::to_string(in_.number);
        const auto letter = static_cast<int>(out_.bodies.size());
        body.label +=
            letter < 26 ? std::string(1, static_cast<char>('a' + letter)) : "-" + std::to_string(letter);
        body.of = of, body.piece = piece, body.rest = met.rest, body.other = met.other;
        body.panel = wood_panel(panel);
        const double below = met.rest == Rest::on_body ? met.below_mm : 0;
        if (asked.radius_mm)
            make_lying(asked, body);
        else if (asked.outline.core.size() == 1 && met.rest != Rest::butts)
            make_round(asked, asked.height_mm - below, body);
        else
            make_stack(asked.height_mm - below, asked, body);
        body.top_mm = grained(below + body.height_mm);
        if (met.rest != Rest::on_body) {
            out_.feet_mm += foot_of(asked, met, panel);
            hold(asked, body);
        }
        add_surface(body);
        out_.bodies.push_back(std::move(body));
    }

    static double foot_of(const BodyIn& asked, const casting::BodyMeeting& met, const Panel& panel) {
        if (met.rest == Rest::on_board) return shape::perimeter(asked.outline);
        return 2 * panel.length_mm + panel.width_mm; // one side stands against the other body
    }

    void make_stack(double height_mm, const BodyIn& asked, Body& body) {
        const bool sharp = asked.outline.round_mm == 0 && asked.outline.core.size() == 4 &&
                           is_rectangle(asked.outline) && body.rest != Rest::butts;
        body.make = Make::stack;
        lay(asked, height_mm, Role::block, body.panel, sharp ? Finish::rectangle : Finish::traced, body);
        body.height_mm = body.stack.height_mm;
    }

    static bool is_rectangle(const shape::Contour& contour) {
        const Panel panel = panel_of(contour);
        return std::abs(shape::area(contour) - panel.length_mm * panel.width_mm) <
               1e-6 * shape::area(contour);
    }

    /// Boards for `height_mm`, one part each.
    void lay(const BodyIn& asked, double height_mm, Role role, const Panel& panel, Finish finish,
             Body& body) {
        body.stack = asked.through ? stack_down_to(grained(height_mm), shop_.boards)
                                   : stack_to(height_mm, shop_.boards, shop_.saw_step_mm);
        for (const std::size_t board : body.stack.stack.boards) {
            body.layers.push_back(shop_.boards[board].name);
            add_part(body.label, role, shop_.boards[board], panel, finish);
        }
        const auto joints = static_cast<double>(body.layers.size()) - 1;
        out_.glue_mm2 += joints * panel.length_mm * panel.width_mm;
    }

    void add_part(const std::string& body, Role role, const job::Board& board, const Panel& panel,
                  Finish finish) {
        const auto count = std::count_if(out_.parts.begin(), out_.parts.end(), [&](const Part& part) {
            return part.label.rfind(in_.drawer + " " + body + ".", 0) == 0;
        });
        out_.parts.push_back({in_.drawer + " " + body + "." + std::to_string(count + 1), in_.drawer,
                              in_.number, role, board.name, panel.length_mm, panel.width_mm,
                              board.thickness_mm, finish});
    }

    void make_round(const BodyIn& asked, double height_mm, Body& body) {
        body.tube = tube_for(body.panel.length_mm, shop_.tubes);
        if (!body.tube) {
            const double blank = sawn_up_mm(body.panel.length_mm, shop_.saw_step_mm);
            body.panel = {blank, blank};
            lay(asked, height_mm, Role::block, body.panel, Finish::disc, body);
            body.make = Make::discs, body.height_mm = body.stack.height_mm;
            return;
        }
        body.make = Make::tube;
        body.height_mm = asked.through ? grained(height_mm) : sawn_mm(height_mm, shop_.saw_step_mm);
        body.tube_mm = body.height_mm;
        body.ends = body.height_mm > 2 * thinnest().thickness_mm ? 2 : 1;
        add_tube_and_ends(Role::tube, Role::disc, body);
    }

    void make_lying(const BodyIn& asked, Body& body) {
        const double wood_radius = *asked.radius_mm - shop_.film_mm;
        const double length = body.panel.length_mm, width = body.panel.width_mm;
        body.tube = asked.axis_mm >= 0 ? tube_for(2 * wood_radius, shop_.tubes) : std::nullopt;
        if (!body.tube) { // a stack planed round, or less than half a round
            lay(asked, asked.height_mm, Role::block, {length, width}, Finish::traced, body);
            body.make = Make::shaped, body.height_mm = body.stack.height_mm;
            return;
        }
        body.make = Make::half_tube;
        body.tube_mm = length;
        body.ends = 2;
        if (asked.axis_mm >= least_riser_mm)
            lay(asked, asked.axis_mm, Role::riser, {length, width}, Finish::rectangle, body);
        body.height_mm = grained(body.stack.height_mm + body.tube->tube.outside_mm / 2 + body.tube->wrap_mm);
        add_tube_and_ends(Role::half_tube, Role::end, body);
    }

    void add_tube_and_ends(Role tube_role, Role end_role, const Body& body) {
        out_.tubes.push_back({in_.drawer + " " + body.label, in_.drawer, in_.number, tube_role,
                              body.tube->tube.name, body.tube_mm});
        const double hollow = body.tube->tube.outside_mm - 2 * body.tube->tube.wall_mm;
        const double across = tube_role == Role::half_tube ? hollow / 2 : hollow;
        const Panel blank{sawn_up_mm(hollow, shop_.saw_step_mm), sawn_up_mm(across, shop_.saw_step_mm)};
        for (int i = 0; i < body.ends; ++i)
            add_part(body.label, end_role, thinnest(), blank,
                     tube_role == Role::half_tube ? Finish::traced : Finish::disc);
    }

    const job::Board& thinnest() const {
        return *std::min_element(
            shop_.boards.begin(), shop_.boards.end(),
            [](const job::Board& a, const job::Board& b) { return a.thickness_mm < b.thickness_mm; });
    }

    void add_surface(const Body& body) {
        const double length = body.panel.length_mm, width = body.panel.width_mm;
        const double around =
            body.make == Make::tube || body.make == Make::discs ? pi * length : 2 * (length + width);
        const double sides = around * body.height_mm;
        out_.surface_mm2 += sides + length * width;
        if (body.make != Make::tube && body.make != Make::half_tube) out_.end_grain_mm2 += sides;
    }

    /// How thick the wood is that a screw through the base gets into.
    double foot_wood_mm(const Body& body) const {
        if (body.make == Make::half_tube) return body.stack.height_mm;
        return body.make == Make::tube ? thinnest().thickness_mm : body.height_mm;
    }

    void hold(const BodyIn& asked, Body& body) {
        const auto piece = static_cast<std::size_t>(body.piece);
        body.held = piece < asked.held.size() ? asked.held[piece] : Held{};
        const double base = shop_.base.thickness_mm, wood = foot_wood_mm(body);
        if (body.held.screws > 0) body.screw_mm = screw_length_mm(base, wood, block_grip_mm);
        if (!body.screw_mm) body.held.pins += std::exchange(body.held.screws, 0);
        if (body.held.pins > 0) body.pin_mm = pin_length_mm(base, wood);
        if (!body.pin_mm) body.held.pins = 0;
    }

    const BlockIn& in_;
    const BlockShop& shop_;
    BlockByStock out_;
};

} // namespace

BlockByStock block_by_stock(const BlockIn& in, const BlockShop& shop) { return BlockMaking(in, shop).take(); }

} // namespace drawercast::stock
