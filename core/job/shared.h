// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <utility>

namespace drawercast::job {

/// A value held once and shared by its copies until one of them changes it: jobs stay values, and two hundred
/// undo steps stay small. Equal pointers answer == at once, which is what makes "what changed?" cheap.
template <class T>
class Shared {
  public:
    Shared() : value_(std::make_shared<const T>()) {}
    Shared(T value) : value_(std::make_shared<const T>(std::move(value))) {} // NOLINT: a T is a Shared<T>
    const T& operator*() const { return *value_; }
    const T* operator->() const { return value_.get(); }
    /// Replaces the value by what `change(T&)` makes of a copy.
    template <class Change>
    void edit(Change change) {
        T copy = *value_;
        change(copy);
        value_ = std::make_shared<const T>(std::move(copy));
    }
    bool same_instance(const Shared& other) const { return value_ == other.value_; }
    friend bool operator==(const Shared& a, const Shared& b) {
        return a.value_ == b.value_ || *a.value_ == *b.value_;
    }

  private:
    std::shared_ptr<const T> value_;
};

} // namespace drawercast::job
