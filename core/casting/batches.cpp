// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/batches.h"

#include <algorithm>

namespace drawercast::casting {
namespace {

Batches split(const BatchesIn& in, int count) {
    const double each_ml = in.liquid_ml / count;
    Batches out;
    out.count = count;
    out.bucket_left_ml = in.bucket_left_ml.value_or(std::max(least_left_ml, share_left * each_ml));
    out.pour_s = in.pour_s.value_or(each_ml / (1000 * in.pour_l_s));
    return out;
}

} // namespace

double room_of(double container_ml, double stir_room, std::optional<double> mixer_ml) {
    const double room = container_ml / (1 + stir_room);
    return mixer_ml ? std::min(room, *mixer_ml) : room;
}

Expected<Batches> batches_of(const BatchesIn& in) {
    // A pour of fixed length is no shorter in a smaller batch, and a closed window opens for none.
    const bool can_be_in_time = in.pour_window_s > 0 && (!in.pour_s || *in.pour_s <= in.pour_window_s);
    const double room = room_of(in.container_ml, in.stir_room, in.mixer_ml);
    for (int count = 1; count <= most_batches; ++count) {
        Batches out = split(in, count);
        if (in.liquid_ml / count + out.bucket_left_ml > room) continue;
        if (can_be_in_time && out.pour_s > in.pour_window_s) continue;
        out.in_time = can_be_in_time;
        return out;
    }
    return Problem{"container-small", "/shop",
                   phrase("the foam does not fit the mixing container in any number of batches"),
                   phrase("use a larger container or mixer")};
}

} // namespace drawercast::casting
