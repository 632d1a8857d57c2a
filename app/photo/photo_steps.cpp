// SPDX-License-Identifier: GPL-3.0-or-later
#include "photo/photo_steps.h"

namespace drawercast::app::photo {

void Steps::push(State state, const QString& typing) {
    states_.resize(at_ + 1);
    if (!typing.isEmpty() && typing == typing_) {
        states_.back() = std::move(state);
        return;
    }
    typing_ = typing;
    states_.push_back(std::move(state));
    ++at_;
}

void Steps::undo() {
    typing_.clear();
    if (can_undo()) --at_;
}

void Steps::redo() {
    typing_.clear();
    if (can_redo()) ++at_;
}

} // namespace drawercast::app::photo
