// SPDX-License-Identifier: GPL-3.0-or-later
// How near the strips found come to the best ones published: pack_strips SECONDS [SEED] FILE… prints one row
// a set. Seconds are of the processor, not of the wall, so that a busy machine tells the same. The sets are
// in tests/data/packing, each with its source.
#include "core/arrange/strip.h"

#include <algorithm>
#include <cctype>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

namespace {

using namespace drawercast;

struct Set {
    double height = 0;
    double record = 0;
    std::vector<arrange::Figure> figures;
};

arrange::Figure figure_of(std::istringstream& words) {
    arrange::Figure figure;
    figure.turns_deg.clear();
    for (std::string word; words >> word && word != "/";) figure.turns_deg.push_back(std::stod(word));
    shape::Polygon polygon;
    for (double x = 0, y = 0; words >> x >> y;) polygon.corners.push_back({{x, y}});
    figure.parts.push_back({*shape::contour_of(polygon), 1});
    return figure;
}

Set read(const char* path) {
    Set set;
    std::ifstream file(path);
    for (std::string line; std::getline(file, line);) {
        std::istringstream words(line);
        std::string key;
        words >> key;
        if (key == "height") words >> set.height;
        if (key == "record") words >> set.record;
        if (key != "item") continue;
        int count = 0;
        words >> count;
        const arrange::Figure figure = figure_of(words);
        set.figures.insert(set.figures.end(), static_cast<std::size_t>(count), figure);
    }
    return set;
}

double processor_seconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

/// How many evaluations a second this machine makes of this set, once what it remembers of pairs is filled:
/// the search plans its phases by them.
double evaluations_a_second(const Set& set, double height) {
    constexpr double fill_s = 1;
    constexpr double look_s = 2;
    constexpr std::uint64_t plenty = 1'000'000'000;
    const double began = processor_seconds();
    double filled = 0;
    double filled_at = 0;
    const auto strip = arrange::shortest_strip(set.figures, height, {plenty, 1}, [&](double done) {
        const double now = processor_seconds() - began;
        if (now < fill_s) {
            filled = done * plenty;
            filled_at = now;
        }
        return now >= look_s;
    });
    return (static_cast<double>(strip.evaluations) - filled) / (processor_seconds() - began - filled_at);
}

} // namespace

int main(int count, char** arguments) {
    const bool seeded = count > 3 && std::isdigit(static_cast<unsigned char>(arguments[2][0])) != 0;
    if (count < 3) {
        std::fputs("pack_strips SECONDS [SEED] FILE…\n", stderr);
        return 64;
    }
    const double seconds = std::atof(arguments[1]);
    const auto seed = static_cast<std::uint64_t>(seeded ? std::atoll(arguments[2]) : 1);
    // A hair more height than stated, since figures that touch are too near: 1e-4 of it.
    constexpr double hair = 1e-4;
    std::printf("%-18s %5s %10s %10s %10s %7s\n", "set", "s", "evaluated", "length", "record", "ratio");
    for (int i = seeded ? 3 : 2; i < count; ++i) {
        const Set set = read(arguments[i]);
        const double height = set.height * (1 + hair);
        const arrange::Budget budget{static_cast<std::uint64_t>(seconds * evaluations_a_second(set, height)),
                                     seed};
        const double began = processor_seconds();
        const auto strip = arrange::shortest_strip(
            set.figures, height, budget, [&](double) { return processor_seconds() - began >= seconds; });
        std::printf("%-18s %5.1f %10.3g %10.3f %10.3f %7.4f\n",
                    std::filesystem::path(arguments[i]).stem().c_str(), processor_seconds() - began,
                    static_cast<double>(budget.evaluations), strip.length, set.record,
                    set.record / strip.length);
        std::fflush(stdout);
    }
    return 0;
}
