// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/explain/deciding.h"

#include "casting/band.h"
#include "casting/batches.h"
#include "plan/say.h"

#include <algorithm>
#include <vector>

namespace drawercast::app::explain {

namespace {

class Limits {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::explain::Limits)

  public:
    explicit Limits(const Answer& answer) : answer_(answer) {}

    std::vector<Deciding> all() const {
        std::vector<Deciding> limits;
        if (answer_.drawer.band) {
            const auto& band = *answer_.drawer.band;
            limits.push_back({Deciding::What::low_end, casting::flow_index / band.low.fill,
                              tr("Filling decides: ×%1 if low, needs ×%2.")
                                  .arg(two(band.low.fill), two(casting::flow_index))});
            limits.push_back({Deciding::What::high_end, band.high.fill / casting::hard_fill,
                              tr("Hardness decides: ×%1 if high, at most ×%2.")
                                  .arg(two(band.high.fill), two(casting::hard_fill))});
        }
        limits.push_back({Deciding::What::pour, pour_share(answer_),
                          tr("The pour decides: it takes most of the pot life.")});
        const auto& shop = answer_.shop();
        const double room = casting::room_of(shop.container_ml, shop.stir_room, shop.mixer_ml),
                     used = answer_.dose().mixed_ml / answer_.dose().batches;
        limits.push_back({Deciding::What::room, used / room,
                          tr("The container decides: %1 in each, it takes %2.")
                              .arg(answer_.said_ml(used).text(), answer_.said_ml(room).text())});
        return limits;
    }

  private:
    static QString two(double value) { return fixed_result(value, 2).figure(); }

    const Answer& answer_;
};

} // namespace

double pour_share(const Answer& answer) {
    const auto& times = *answer.drawer.times;
    return (times.pot_life_s - times.pour_margin_s) / times.pot_life_s;
}

Deciding deciding(const Answer& answer) {
    const auto limits = Limits(answer).all();
    return *std::max_element(limits.begin(), limits.end(),
                             [](const Deciding& a, const Deciding& b) { return a.share < b.share; });
}

} // namespace drawercast::app::explain
