// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/selection.h"

#include <utility>

namespace drawercast::app {

namespace {
std::string object_of(const std::string& subject) { return subject.substr(0, subject.find('#')); }
} // namespace

void Selection::choose_drawer(const std::string& id) {
    if (id == drawer_) return;
    drawer_ = id;
    pockets_.clear();
    check_.reset();
    notch_.reset();
    vent_.reset();
    emit changed();
}

void Selection::choose_pockets(std::vector<std::string> subjects) {
    if (subjects == pockets_ && !check_ && !notch_) return;
    pockets_ = std::move(subjects);
    if (!pockets_.empty()) object_ = object_of(pockets_.back());
    check_.reset();
    notch_.reset();
    emit changed();
}

void Selection::choose_notch(const std::string& subject, std::size_t index) {
    if (pockets_ == std::vector{subject} && notch_ == index && !check_) return;
    pockets_ = {subject};
    object_ = object_of(subject);
    check_.reset();
    notch_ = index;
    emit changed();
}

void Selection::choose_vent(std::optional<shape::Vec> at) {
    if (at == vent_) return;
    vent_ = at;
    emit changed();
}

void Selection::choose_object(const std::string& id) {
    if (id == object_) return;
    object_ = id;
    emit changed();
}

void Selection::choose_check(std::optional<layout::Check> check) {
    check_ = std::move(check);
    notch_.reset();
    if (check_) {
        pockets_.clear();
        for (const auto& subject : check_->subjects)
            if (subject.find('#') != std::string::npos) pockets_.push_back(subject);
        if (!pockets_.empty()) object_ = object_of(pockets_.back());
    }
    emit changed();
}

} // namespace drawercast::app
