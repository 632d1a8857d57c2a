// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/demand.h"

#include <stdexcept>
#include <string>

namespace drawercast {

void demand_failed(const char* what, const char* file, int line) {
    std::string name(file);
    name.erase(0, name.find_last_of('/') + 1); // the folder it was built in is nobody's business
    throw std::logic_error("Drawercast found a fault of its own: " + std::string(what) + " (" + name + ":" +
                           std::to_string(line) + ")");
}

} // namespace drawercast
