// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/references.h"

#include <algorithm>
#include <set>
#include <utility>

namespace drawercast::job {

void References::object(const Object& object, JsonValue at) { objects_.push_back({object.id, at}); }

void References::drawer(const Drawer& drawer, JsonValue at) {
    drawers_.push_back({drawer.id, at});
    std::size_t i = 0; // pockets are read in the list's order, none left out
    if (const auto list = at.find("pockets"))
        list->each_item([&](JsonValue item) {
            if (i < drawer.pockets.size())
                pockets_.push_back({drawer.pockets[i].object, drawer.pockets[i].n, item});
            ++i;
        });
}

void References::check_names(Reading& reading, const std::vector<Name>& names, const Phrase& what) {
    std::set<std::string_view> known;
    for (const auto& [name, at] : names) {
        if (name.empty() && !at.find("id")) continue; // already told to be missing
        if (name.empty() || name.find('#') != std::string::npos)
            reading.report("id", at, phrase("\"%1\" cannot be an id", verbatim(name)),
                           phrase("Use a word without #"));
        else if (!known.insert(name).second)
            reading.report("id-twice", at, phrase("%1 \"%2\" is there twice", what, verbatim(name)),
                           phrase("Give one of the two another id"));
    }
}

void References::check(Reading& reading) const {
    check_names(reading, objects_, phrase("the object id"));
    check_names(reading, drawers_, phrase("the drawer id"));
    // An object that could not be read may be the one that a pocket names.
    if (objects_.empty() && !reading.clean()) return;
    if (std::any_of(objects_.begin(), objects_.end(), [](const Name& o) { return o.name.empty(); })) return;
    std::set<std::string_view> known;
    for (const auto& object : objects_) known.insert(object.name);
    std::set<std::pair<std::string_view, int>> placed;
    for (const auto& [object, n, at] : pockets_) {
        if (object.empty()) continue;
        if (known.count(object) == 0)
            reading.report("object-unknown", at, phrase("there is no object \"%1\"", verbatim(object)),
                           phrase("Add the object, or take the pocket out"));
        else if (!placed.insert({object, n}).second)
            reading.report("pocket-twice", at,
                           phrase("%1#%2 stands twice", verbatim(object), figure(std::to_string(n))),
                           phrase("Give one of the two another \"n\""));
    }
}

} // namespace drawercast::job
