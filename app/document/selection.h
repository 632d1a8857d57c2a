// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/check.h"

#include <QObject>

#include <optional>
#include <string>
#include <vector>

namespace drawercast::app {

/// What the maker has chosen: the drawer on the sheet, pockets in it (the last one is the reference others
/// align to), an object in the list, and a check. Every pane and the canvas show the same one.
class Selection : public QObject {
    Q_OBJECT
  public:
    using QObject::QObject;

    const std::string& drawer() const { return drawer_; } ///< id; empty: no drawer
    const std::vector<std::string>& pockets() const {
        return pockets_;
    }                                                     ///< subjects "i1#1", in the order chosen
    const std::string& object() const { return object_; } ///< id; empty: none
    const std::optional<layout::Check>& check() const { return check_; }
    const std::optional<std::size_t>& notch() const { return notch_; } ///< of the one pocket chosen

    void choose_drawer(const std::string& id);                        ///< clears the pockets and the check
    void choose_pockets(std::vector<std::string> subjects);           ///< and the object of the last one
    void choose_notch(const std::string& subject, std::size_t index); ///< and its pocket, alone
    void choose_object(const std::string& id);                        ///< leaves the pockets
    const std::optional<shape::Vec>& vent() const { return vent_; }   ///< where it is, drawer mm
    void choose_vent(std::optional<shape::Vec> at);                   ///< leaves the pockets
    void choose_check(std::optional<layout::Check> check);            ///< chooses its pockets too
    void tell() { emit changed(); } ///< says anew what is chosen, for those who came later

  signals:
    void changed();

  private:
    std::string drawer_;
    std::vector<std::string> pockets_;
    std::string object_;
    std::optional<layout::Check> check_;
    std::optional<std::size_t> notch_;
    std::optional<shape::Vec> vent_;
};

} // namespace drawercast::app
