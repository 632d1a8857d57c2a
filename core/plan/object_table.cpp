// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/object_table.h"

#include <utility>

namespace drawercast::plan {

void ObjectTable::update(const std::vector<job::Shared<job::Object>>& objects, job::Firmness firmness) {
    if (firmness_ == firmness && objects_ == objects) return; // pointer by pointer: quick
    std::map<std::string, std::shared_ptr<const ObjectEntry>> entries;
    for (const auto& object : objects) {
        const auto fit = layout::fit_of(*object, firmness);
        auto entry = find(object->id);
        if (!entry || !(entry->object == object) || !(entry->fit == fit))
            entry = std::make_shared<const ObjectEntry>(ObjectEntry{
                object, fit, std::make_shared<const layout::ObjectFacts>(layout::facts_of(*object))});
        entries.emplace(object->id, std::move(entry));
    }
    entries_ = std::move(entries);
    objects_ = objects;
    firmness_ = firmness;
    ++version_;
}

std::shared_ptr<const ObjectEntry> ObjectTable::find(const std::string& id) const {
    const auto found = entries_.find(id);
    return found == entries_.end() ? nullptr : found->second;
}

} // namespace drawercast::plan
