// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/drawer.h"
#include "job/fields.h"
#include "job/object.h"

#include <string>
#include <vector>

namespace drawercast::job {

/// What the parts of a job call each other by: ids that must be unique, and pockets that must know their
/// object. Gathered while reading, checked at the end. What a look left as is names may be gone.
class References {
  public:
    void object(const Object& object, JsonValue at);
    void drawer(const Drawer& drawer, JsonValue at);
    void check(Reading& reading) const;

  private:
    struct Name {
        std::string name;
        JsonValue at;
    };
    struct Use {
        std::string object;
        int n = 1;
        JsonValue at;
    };
    static void check_names(Reading& reading, const std::vector<Name>& names, const Phrase& what);

    std::vector<Name> objects_;
    std::vector<Name> drawers_;
    std::vector<Use> pockets_;
};

} // namespace drawercast::job
