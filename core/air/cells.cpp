// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/cells.h"

#include "air/covered.h"
#include "air/joined.h"

#include <algorithm>
#include <tuple>

namespace drawercast::air {
namespace {

using shape::Vec;

constexpr double ring_sagitta_mm = 0.02;
constexpr int samples = 12;         // each way, in cells that several bodies share in part
constexpr double least_open = 0.02; // of a cell: less is wall
constexpr double whole = 1 - 1e-6;

/// What stands in a cell.
struct Stands {
    std::size_t cell = 0;
    double share = 0;
    int body = 0;
};

Values open_shares(const Floor& floor, const Mesh& mesh) {
    Values shares(mesh.size(), 0.0);
    if (floor.opening_mm2 > (1 - 1e-9) * floor.width_mm * floor.depth_mm) {
        for_each_cell(mesh, [&](std::size_t cell) { shares[cell] = 1; });
        return shares;
    }
    std::vector<shape::Ring> rings;
    for (const shape::Patch& patch : floor.opening.patches) {
        rings.push_back(patch.outer);
        rings.insert(rings.end(), patch.holes.begin(), patch.holes.end());
    }
    for (const Covered& covered : covered_by(rings, mesh)) shares[covered.cell] = covered.share;
    return shares;
}

std::vector<Stands> what_stands(const Floor& floor, const Mesh& mesh) {
    std::vector<Stands> all;
    for (std::size_t i = 0; i < floor.bodies.size(); ++i) {
        const shape::Ring ring = shape::traced(floor.bodies[i].outline, ring_sagitta_mm);
        for (const Covered& covered : covered_by({&ring, 1}, mesh))
            all.push_back({covered.cell, covered.share, static_cast<int>(i)});
    }
    std::sort(all.begin(), all.end(), [](const Stands& a, const Stands& b) {
        return std::tie(a.cell, a.body) < std::tie(b.cell, b.body);
    });
    return all;
}

class Builder {
  public:
    Builder(const Floor& floor, double pitch_mm) : floor_(floor) {
        cells_.mesh = Mesh(floor.width_mm, floor.depth_mm, pitch_mm);
        cells_.height_mm = floor.height_mm;
        const std::size_t size = cells_.mesh.size();
        cells_.area_mm2.assign(size, 0);
        cells_.room_mm3.assign(size, 0);
        cells_.gap_mm.assign(size, 0);
        cells_.body.assign(size, -1);
        cells_.channel.assign(size, 0);
        cells_.first_part.assign(size + 1, 0);
    }

    Cells build() {
        const Values open = open_shares(floor_, cells_.mesh);
        const std::vector<Stands> stands = what_stands(floor_, cells_.mesh);
        std::size_t next = 0;
        for (std::size_t cell = 0; cell < cells_.mesh.size(); ++cell) {
            cells_.first_part[cell] = cells_.parts.size();
            std::size_t end = next;
            while (end < stands.size() && stands[end].cell == cell) ++end;
            const std::span<const Stands> here(stands.data() + next, end - next);
            next = end;
            if (open[cell] >= least_open) fill(cell, open[cell], here);
        }
        cells_.first_part[cells_.mesh.size()] = cells_.parts.size();
        return std::move(cells_);
    }

  private:
    const Body& body(const Stands& stands) const {
        return floor_.bodies[static_cast<std::size_t>(stands.body)];
    }
    double gap(const Body& body, Vec p) const {
        return body.through ? 0 : std::max(0.0, floor_.height_mm - height_at(body, p));
    }

    void fill(std::size_t cell, double open, std::span<const Stands> here) {
        if (here.empty()) {
            add_part(cell, open, floor_.height_mm);
        } else {
            const auto partly =
                std::count_if(here.begin(), here.end(), [](const Stands& s) { return s.share < whole; });
            const bool plain = partly <= 1 && std::none_of(here.begin(), here.end(), [&](const Stands& s) {
                                   return body(s).ridge.has_value();
                               });
            plain ? fill_plain(cell, open, here) : fill_by_samples(cell, open, here);
        }
        if (cells_.area_mm2[cell] < least_open * cells_.mesh.cell_mm2()) return make_wall(cell);
        look_at_center(cell, here);
    }

    /// At most one body ends in the cell.
    void fill_plain(std::size_t cell, double open, std::span<const Stands> here) {
        double under = floor_.height_mm;
        const Stands* partly = nullptr;
        for (const Stands& stands : here) {
            if (stands.share < whole)
                partly = &stands;
            else
                under = std::min(under, gap(body(stands), {}));
        }
        const double share = partly ? std::min(partly->share, open) : 0;
        if (partly) add_part(cell, share, std::min(under, gap(body(*partly), {})));
        add_part(cell, open - share, under);
    }

    void fill_by_samples(std::size_t cell, double open, std::span<const Stands> here) {
        const Mesh& mesh = cells_.mesh;
        const Vec corner = mesh.center(cell) - Vec{mesh.dx(), mesh.dy()} * 0.5;
        std::vector<double> gaps;
        for (int i = 0; i < samples * samples; ++i) {
            const int row = i / samples;
            const int column = i % samples;
            const Vec p =
                corner + Vec{(column + 0.5) * mesh.dx() / samples, (row + 0.5) * mesh.dy() / samples};
            gaps.push_back(gap_at(p, here));
        }
        std::sort(gaps.begin(), gaps.end());
        const double each = open / (samples * samples);
        for (std::size_t from = 0; from < gaps.size();) { // what differs little counts as one
            std::size_t to = from;
            double sum = 0;
            while (to < gaps.size() && gaps[to] <= gaps[from] + 0.25) sum += gaps[to++];
            add_part(cell, each * static_cast<double>(to - from), sum / static_cast<double>(to - from));
            from = to;
        }
    }

    double gap_at(Vec p, std::span<const Stands> here) const {
        double least = floor_.height_mm;
        for (const Stands& stands : here)
            if (shape::contains(body(stands).outline, p)) least = std::min(least, gap(body(stands), p));
        return least;
    }

    void add_part(std::size_t cell, double share, double gap_mm) {
        if (share <= 0 || gap_mm <= 0) return;
        const double area = share * cells_.mesh.cell_mm2();
        cells_.parts.push_back({area, gap_mm});
        cells_.area_mm2[cell] += area;
        cells_.room_mm3[cell] += area * gap_mm;
    }

    void make_wall(std::size_t cell) {
        cells_.parts.resize(cells_.first_part[cell]);
        cells_.area_mm2[cell] = cells_.room_mm3[cell] = 0;
    }

    /// A center under a through block still lets foam by in the part of its cell that is open.
    void look_at_center(std::size_t cell, std::span<const Stands> here) {
        const Vec center = cells_.mesh.center(cell);
        double least = floor_.height_mm;
        for (const Stands& stands : here) {
            const Body& b = body(stands);
            if (b.through || (stands.share < whole && !shape::contains(b.outline, center))) continue;
            const double mm = gap(b, center);
            if (mm < least) least = mm, cells_.body[cell] = stands.body;
        }
        cells_.gap_mm[cell] = std::max(least, 1e-3);
        cells_.channel[cell] = cells_.body[cell] < 0;
    }

    const Floor& floor_;
    Cells cells_;
};

} // namespace

Cells cells_of(const Floor& floor, double pitch_mm) { return Builder(floor, pitch_mm).build(); }

Pieces pieces_of(const Cells& cells) {
    Joined joined = joined_cells(cells.mesh, [&](std::size_t cell) { return cells.open(cell); });
    return {std::move(joined.piece), joined.count};
}

} // namespace drawercast::air
