// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/pocket_stage.h"

#include "base/demand.h"
#include "casting/checks.h"

#include <algorithm>
#include <utility>

namespace drawercast::plan {

bool PocketStage::still_holds(const Entry& entry, const job::Pocket& pocket,
                              const ObjectTable& objects) const {
    if (!(entry.pocket == pocket)) return false;
    return objects.version() == objects_version_ || objects.find(pocket.object) == entry.object;
}

Expected<std::shared_ptr<const layout::PocketForm>>
PocketStage::form_of(const job::Pocket& pocket, const std::shared_ptr<const ObjectEntry>& object) {
    for (const auto& entry : forms_)
        if (entry.object == object && entry.notches == pocket.notches) return entry.form;
    auto form = layout::pocket_form(*object->object, pocket.notches, object->fit, insert_mm_);
    if (!form) return form.error();
    forms_.push_back({object, pocket.notches, std::make_shared<const layout::PocketForm>(std::move(*form))});
    return forms_.back().form;
}

PocketStage::Entry PocketStage::make(const job::Pocket& pocket,
                                     const std::shared_ptr<const ObjectEntry>& object) {
    DRAWERCAST_DEMAND(object != nullptr, "a pocket's object is in the job");
    const auto form = form_of(pocket, object);
    Entry entry{pocket, object, {nullptr, object->facts}, std::nullopt};
    if (form) {
        entry.standing.pocket = std::make_shared<const layout::PlacedPocket>(layout::place(pocket, *form));
        if (const auto& dunked_ml = object->object->volume_ml)
            entry.check = casting::volume_check(**form, insert_mm_, *dunked_ml);
        if (entry.check) entry.check->subjects = {job::subject_of(pocket)};
    } else {
        entry.check = layout::check_of(form.error(), {job::subject_of(pocket)});
    }
    return entry;
}

void PocketStage::drop_unused_forms() {
    // A form that only this table holds on to stands nowhere any more.
    std::erase_if(forms_, [](const FormEntry& entry) { return entry.form.use_count() == 1; });
}

void PocketStage::update(const std::vector<job::Pocket>& pockets, const ObjectTable& objects,
                         double insert_mm) {
    if (insert_mm != insert_mm_) { // through levels are as deep as the insert is thick
        entries_.clear();
        forms_.clear();
        insert_mm_ = insert_mm;
    }
    const bool same_count = entries_.size() == pockets.size();
    std::vector<Entry> old;
    if (!same_count) old = std::exchange(entries_, {});
    entries_.reserve(pockets.size());
    std::size_t from = 0; // where in `old` the next kept pocket is looked for: order is mostly kept
    for (std::size_t i = 0; i < pockets.size(); ++i) {
        const auto& pocket = pockets[i];
        if (same_count) {
            if (!still_holds(entries_[i], pocket, objects))
                entries_[i] = make(pocket, objects.find(pocket.object));
            continue;
        }
        const auto kept =
            std::find_if(old.begin() + static_cast<std::ptrdiff_t>(from), old.end(),
                         [&](const Entry& entry) { return still_holds(entry, pocket, objects); });
        if (kept == old.end()) {
            entries_.push_back(make(pocket, objects.find(pocket.object)));
        } else {
            from = static_cast<std::size_t>(kept - old.begin()) + 1;
            entries_.push_back(std::move(*kept));
        }
    }
    old.clear();
    objects_version_ = objects.version();
    standing_.clear();
    bodies_.clear();
    checks_.clear();
    for (const auto& entry : entries_) {
        if (entry.standing.pocket) {
            standing_.push_back(entry.standing);
            bodies_.push_back({entry.standing.pocket, entry.object->object->volume_ml});
        }
        if (entry.check) checks_.push_back(*entry.check);
    }
    drop_unused_forms();
}

} // namespace drawercast::plan
