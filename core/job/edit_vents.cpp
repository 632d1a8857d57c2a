// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit_vents.h"

#include "base/number.h"

#include <utility>

namespace drawercast::job {

namespace {

template <class Change>
Job changed(Job job, const std::string& id, const Change& change) {
    for (auto& drawer : job.drawers) {
        if (drawer->id != id) continue;
        drawer.edit([&](Drawer& d) {
            Vents vents = d.vents.value_or(Vents());
            change(vents);
            d.vents = vents == Vents() ? std::nullopt : std::optional(std::move(vents));
        });
    }
    return job;
}

} // namespace

std::vector<KeptVent> kept_vents(const Drawer& drawer) {
    return drawer.vents ? drawer.vents->keep : std::vector<KeptVent>();
}

bool vents_automatic(const Drawer& drawer) { return !drawer.vents || drawer.vents->rest_auto; }

Job with_vent(Job job, const std::string& drawer, const KeptVent& vent, std::size_t* made) {
    return changed(std::move(job), drawer, [&](Vents& vents) {
        vents.keep.push_back(vent);
        vents.keep.back().at = grained_at(vent.at);
        if (made != nullptr) *made = vents.keep.size() - 1;
    });
}

Job with_vent_moved(Job job, const std::string& drawer, std::size_t index, shape::Vec at) {
    return changed(std::move(job), drawer, [&](Vents& vents) {
        if (index < vents.keep.size()) vents.keep[index].at = grained_at(at);
    });
}

Job with_vent_drilled(Job job, const std::string& drawer, std::size_t index, double diameter_mm) {
    return changed(std::move(job), drawer, [&](Vents& vents) {
        if (index < vents.keep.size()) vents.keep[index].diameter_mm = grained(diameter_mm);
    });
}

Job without_vent(Job job, const std::string& drawer, std::size_t index) {
    return changed(std::move(job), drawer, [&](Vents& vents) {
        if (index < vents.keep.size())
            vents.keep.erase(vents.keep.begin() + static_cast<std::ptrdiff_t>(index));
    });
}

Job with_vents(Job job, const std::string& drawer, const std::vector<KeptVent>& keep, bool rest_auto) {
    return changed(std::move(job), drawer, [&](Vents& vents) {
        vents.keep = keep;
        for (KeptVent& vent : vents.keep) vent.at = grained_at(vent.at);
        vents.rest_auto = rest_auto;
    });
}

} // namespace drawercast::job
