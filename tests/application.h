// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>
#include <QStandardPaths>

namespace drawercast::test {

/// The one application object of a test program, without a display. Never destroyed: what Qt keeps of its own
/// is gone by the time statics are.
inline QApplication& application() {
    static int count = 1;
    static char name[] = "test";
    static char* arguments[] = {name, nullptr};
    static const bool without_display = qputenv("QT_QPA_PLATFORM", "offscreen");
    static auto* instance = new QApplication(count, arguments);
    Q_UNUSED(without_display);
    QStandardPaths::setTestModeEnabled(true);
    return *instance;
}

} // namespace drawercast::test
