// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/behind.h"

#include <QCoreApplication>

#include <algorithm>
#ifdef __linux__
#include <sys/resource.h>
#endif

namespace drawercast::app {

void work_behind_window([[maybe_unused]] Behind how) {
#ifdef __linux__
    constexpr int most = 19;
    const int behind = how == Behind::answer ? 10 : most; // 10: a tenth of the share (our guess)
    const auto first_thread = static_cast<id_t>(QCoreApplication::applicationPid());
    const int window = getpriority(PRIO_PROCESS, first_thread);
    setpriority(PRIO_PROCESS, 0, std::min(window + behind, most)); // 0: of this thread alone
#endif
}

} // namespace drawercast::app
