// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/output.h"
#include "subcommands/run.h"
#include "window/start.h"

#include <exception>
#include <string>
#include <vector>

int main(int count, char** values) {
    using namespace drawercast::subcommands;
    const std::vector<std::string> arguments(values + (count > 0 ? 1 : 0), values + count);
    try {
        if (drawercast::app::asks_for_window(arguments) && drawercast::app::has_display())
            return drawercast::app::run_window(count, values, arguments);
        return static_cast<int>(run(arguments));
    } catch (const std::exception& fault) {
        complain("a fault of this program: " + std::string(fault.what()));
        return static_cast<int>(Exit::fault);
    }
}
