// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read.h"
#include "job/write.h"

namespace drawercast::job {

ExpectedAll<std::string> checked_text(const Job& job) {
    std::string text = write_job(job);
    const auto again = read_job(text);
    if (!again) return again.error();
    if (!(*again == job))
        return Problems{{"unsavable", "", phrase("the job would not open as it is now"),
                         phrase("Undo the last change; this is a fault of the program")}};
    return text;
}

} // namespace drawercast::job
