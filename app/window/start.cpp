// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/start.h"

#include "document/head_start.h"
#include "theme/icons.h"
#include "window/job_acts.h"
#include "window/main_window.h"
#include "window/program.h"

#include <QApplication>
#include <QTimer>

namespace drawercast::app {

bool asks_for_window(const std::vector<std::string>& arguments) {
    if (arguments.empty()) return true;
    const std::string& first = arguments.front();
    return arguments.size() == 1 && first.rfind('-', 0) != 0 &&
           first.find_first_of("./") != std::string::npos;
}

bool has_display() {
#ifdef Q_OS_LINUX
    return qEnvironmentVariableIsSet("QT_QPA_PLATFORM") || !qEnvironmentVariableIsEmpty("DISPLAY") ||
           !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY");
#else
    return true;
#endif
}

int run_window(int& count, char** values, const std::vector<std::string>& arguments) {
    std::future<plan::Planner> planner;
    if (!arguments.empty()) planner = head_start(arguments.front());
    QApplication::setHighDpiScaleFactorRoundingPolicy(Qt::HighDpiScaleFactorRoundingPolicy::PassThrough);
    QApplication application(count, values);
    QApplication::setOrganizationName(QStringLiteral("drawercast")); // where settings are kept
    QApplication::setApplicationName(QStringLiteral("drawercast"));
    QApplication::setApplicationDisplayName(QStringLiteral("Drawercast"));
    QApplication::setWindowIcon(theme::program_icon());
    Preferences preferences;
    Program program(preferences, Autosave::usual_folder());
    program.window().show();
    QTimer::singleShot(0, &program, [&] {
        auto& acts = program.window().job_acts();
        if (planner.valid()) {
            program.window().document().plan_with(planner.get());
            acts.open(QString::fromStdString(arguments.front()));
        }
        acts.offer_leftovers();
    });
    return QApplication::exec();
}

} // namespace drawercast::app
