// SPDX-License-Identifier: GPL-3.0-or-later
#include "runsheet/steps.h"

#include <algorithm>
#include <cmath>

namespace drawercast::runsheet {

namespace {

// Minutes of one pair of hands, our guesses.
constexpr double cut_block = 5;
constexpr double cut_box = 60; ///< base, walls, plate and stiffeners of one mold
constexpr double fit_box = 30;
constexpr double drill_hole = 1.5;
constexpr double fix_block = 6; ///< two screws from below and its clay fillet
constexpr double coat = 12;     ///< and per square meter of face:
constexpr double coat_m2 = 30;
constexpr double sealer_dry = 60;
constexpr double sealer_night = 12 * 60; ///< the last coat
constexpr double release_dry = 20;
constexpr double rehearse = 15;
constexpr double pour_first = 25; ///< setting out, premixing, mixing, pouring, closing, cleaning tools
constexpr double pour_batch = 4;  ///< each further one
constexpr double open_mold = 30;
constexpr double crushing = 10;
constexpr double lay_flat = 5;
constexpr double fit_insert = 15;

class Steps {
  public:
    Steps(const ShopWork& shop, bool several)
        : hands_(std::max(1, shop.people)), shop_(shop), several_(several) {}

    void cut(const std::vector<DrawerWork>& drawers) {
        Task task{"cut", phrase("Cut blocks, boxes and plates; label each"), {}, 0, 0, {}, false, false, {},
                  {}};
        for (const DrawerWork& drawer : drawers) task.hands_min += cut_box + cut_block * drawer.blocks;
        task.hands_min /= hands_;
        tasks_.push_back(std::move(task));
    }

    void prepare(const DrawerWork& d) {
        const double coating = coat + coat_m2 * d.insert_m2;
        const int holes = 2 * d.blocks + d.closures + d.vents;
        add(d, "dry-fit", phrase("Dry-fit, drill every hole, mark, take apart, dust off"),
            fit_box + drill_hole * holes, 0, {"cut"});
        add(d, "fix", phrase("Fix the blocks from below and lay the clay fillets"), fix_block * d.blocks, 0,
            {"dry-fit"})
            .materials = d.materials.fix;
        add(d, "seal-1", phrase("First coat of sealer, two more on end grain"), coating, sealer_dry, {"fix"})
            .materials = d.materials.first_coat;
        add(d, "seal-2", phrase("Second coat of sealer"), coating, sealer_dry, {"seal-1"}).materials =
            d.materials.coat;
        add(d, "seal-3", phrase("Third coat of sealer; leave it overnight"), coating, sealer_night,
            {"seal-2"})
            .materials = d.materials.coat;
        release(d, "release-1", phrase("First coat of release"), coating / 2, "seal-3");
        release(d, "release-2", phrase("Second coat of release"), coating / 2, "release-1");
        add(d, "rehearse", phrase("Dry run with a stopwatch, water poured into a tub"), rehearse, 0,
            {"release-1"});
    }

    void cast(const DrawerWork& d) {
        const double cure =
            std::max(shop_.temperature_c < cool_shop_c ? cool_cure_min : cure_min, d.demold_min);
        Task& pour =
            add(d, "pour", phrase("Pour the foam, stirred and mixed; plate on, close, peg the vents"),
                (pour_first + pour_batch * (d.batches - 1)) * hands_, cure, {"release-2", "rehearse"});
        if (!d.walls_after.empty()) pour.after.push_back(d.walls_after + "/open");
        pour.in_one_go = true;
        pour.gates = pour_gates(shop_);
        pour.materials = d.materials.pour;
        pour.each_cast = true;
        add(d, "open", phrase("Cut the plugs flush, open, peel the insert out"), open_mold, 0, {"pour"})
            .each_cast = true;
        if (d.crush)
            add(d, "crush", phrase("Crush the insert all over while it is fresh"), crushing, 0, {"open"})
                .each_cast = true;
        add(d, "flat", phrase("Wipe it off and lay it flat"), lay_flat, flat_min,
            {d.crush ? "crush" : "open"})
            .each_cast = true;
        add(d, "fit", phrase("Fit it and air it before electronics go in"), fit_insert, airing_min, {"flat"})
            .each_cast = true;
    }

    std::vector<Task> take() { return std::move(tasks_); }

  private:
    void release(const DrawerWork& d, const std::string& id, Phrase what, double hands_min,
                 const std::string& after) {
        Task& task = add(d, id, std::move(what), hands_min, release_dry, {after});
        task.materials = d.materials.release;
        task.each_cast = true;
    }

    Task& add(const DrawerWork& d, const std::string& id, Phrase what, double hands_min, double wait_min,
              const std::vector<std::string>& after) {
        Task task{d.id + "/" + id,
                  std::move(what),
                  several_ ? d.name : std::string(),
                  hands_min / hands_,
                  wait_min,
                  {},
                  false,
                  false,
                  {},
                  {}};
        for (const auto& before : after) task.after.push_back(before == "cut" ? before : d.id + "/" + before);
        tasks_.push_back(std::move(task));
        return tasks_.back();
    }

    double hands_;
    ShopWork shop_;
    bool several_;
    std::vector<Task> tasks_;
};

} // namespace

std::vector<Phrase> pour_gates(const ShopWork& shop) {
    const bool us_units = shop.us_units;
    const auto shown = [&](double celsius) {
        return figure(std::to_string(std::lround(us_units ? 32 + 1.8 * celsius : celsius)));
    };
    const Phrase least = shown(shop.temperature_c - parts_within_c),
                 most = shown(shop.temperature_c + parts_within_c);
    return {phrase("wood at 10 % moisture or less"),
            us_units ? phrase("mold level to 1/16 in across it") : phrase("mold level to 2 mm across it"),
            us_units ? phrase("parts at %1 to %2 °F: all seconds are for that", least, most)
                     : phrase("parts at %1 to %2 °C: all seconds are for that", least, most),
            us_units ? phrase("mold at 68 °F at least") : phrase("mold at 20 °C at least"),
            phrase("release dry"),
            phrase("test cup poured and entered"),
            phrase("gloves, goggles, breathing protection; air moving")};
}

std::vector<Task> tasks_for(const std::vector<DrawerWork>& drawers, const ShopWork& shop) {
    if (drawers.empty()) return {};
    Steps steps(shop, drawers.size() > 1);
    steps.cut(drawers);
    for (const DrawerWork& drawer : drawers) steps.prepare(drawer);
    for (const DrawerWork& drawer : drawers) steps.cast(drawer);
    return steps.take();
}

} // namespace drawercast::runsheet
