// SPDX-License-Identifier: GPL-3.0-or-later
// How near the strips found come to the best ones published: pack_strips SECONDS FILE… prints one row a set.
// The sets are in tests/data/packing, each with its source.
#include "arrange/strip.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
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

} // namespace

int main(int count, char** arguments) {
    if (count < 3) {
        std::fputs("pack_strips SECONDS FILE…\n", stderr);
        return 64;
    }
    const int seconds = std::atoi(arguments[1]);
    // A hair more height than stated, since figures that touch are too near: 1e-4 of it.
    constexpr double hair = 1e-4;
    std::printf("%-44s %4s %10s %10s %7s\n", "set", "s", "length", "record", "ratio");
    for (int i = 2; i < count; ++i) {
        const Set set = read(arguments[i]);
        const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(seconds);
        // Evaluations by the clock, so that the last fifth is spent on fine cuts on any machine.
        const auto began = std::chrono::steady_clock::now();
        const auto strip = arrange::shortest_strip(
            set.figures, set.height * (1 + hair), {static_cast<std::uint64_t>(seconds) * 400'000, 1},
            [&](double) { return std::chrono::steady_clock::now() >= end; });
        const double took = std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
        std::printf("%-44s %4.0f %10.3f %10.3f %7.4f\n", arguments[i], took, strip.length, set.record,
                    set.record / strip.length);
        std::fflush(stdout);
    }
    return 0;
}
