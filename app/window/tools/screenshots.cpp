// SPDX-License-Identifier: GPL-3.0-or-later

// Writes pictures of the window and the guide as PNG files, from the program itself and the job given.
// Needs no display.
#include "guide/guide_text.h"
#include "guide/guide_window.h"
#include "panes/mold_pane.h"
#include "window/appearance.h"
#include "window/guide_acts.h"
#include "window/job_acts.h"
#include "window/main_window.h"
#include "window/sheet_area.h"

#include <QApplication>
#include <QDir>
#include <QTemporaryDir>

#include <cstdio>

namespace {

using namespace drawercast::app;

constexpr QSize window_px{1240, 740};
constexpr QSize guide_px{980, 700};

class Camera {
  public:
    Camera(MainWindow& window, const QString& folder) : window_(window), folder_(folder) {}

    bool take(const QString& name, QWidget& of) {
        QApplication::processEvents();
        const QImage image = of.grab().toImage().convertToFormat(QImage::Format_RGB888);
        const QString file = QStringLiteral("%1/%2.png").arg(folder_, name);
        if (image.save(file, "PNG", 0)) return true;
        std::fprintf(stderr, "%s can't be written\n", qPrintable(file));
        return false;
    }
    bool take_sheet(const QString& name, SheetId sheet) {
        window_.sheets().show_sheet(sheet);
        QApplication::processEvents();
        window_.sheets().canvas().fit();
        return take(name, window_);
    }
    void wear(const drawercast::theme::Theme& theme) {
        drawercast::app::wear(theme, 1);
        window_.set_theme(theme);
        QApplication::processEvents();
    }

  private:
    MainWindow& window_;
    QString folder_;
};

bool take_all(MainWindow& window, const QString& folder) {
    Camera camera(window, folder);
    camera.wear(drawercast::theme::light_theme());
    window.resize(window_px);
    window.show();
    window.document().building().wait();
    bool taken = camera.take_sheet(QStringLiteral("plan"), SheetId::drawer_plan);
    taken = camera.take_sheet(QStringLiteral("board"), SheetId::pattern_board) && taken;
    taken = camera.take_sheet(QStringLiteral("build-up"), SheetId::build_up) && taken;
    auto& guide = *window.findChild<GuideActs*>();
    guide.open(QStringLiteral("measure-object"));
    guide.window()->resize(guide_px);
    taken = camera.take(QStringLiteral("guide"), *guide.window()) && taken;
    camera.wear(drawercast::theme::dark_theme());
    taken = camera.take_sheet(QStringLiteral("plate"), SheetId::pressure_plate) && taken;
    return camera.take_sheet(QStringLiteral("air"), SheetId::air_map) && taken;
}

} // namespace

int main(int count, char** arguments) {
    if (count != 3) {
        std::fputs("usage: drawercast_screenshots JOB FOLDER\n", stderr);
        return 64;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(count, arguments);
    const QTemporaryDir own; // neither settings nor unsaved work of whoever runs it
    Preferences preferences(own.filePath(QStringLiteral("settings")));
    MainWindow window(preferences, own.filePath(QStringLiteral("unsaved")));
    window.job_acts().open(QFile::decodeName(arguments[1]));
    const QString folder = QFile::decodeName(arguments[2]);
    if (window.document().job().drawers.empty() || !QDir().mkpath(folder)) {
        std::fputs("the job can't be read, or the folder not made\n", stderr);
        return 2;
    }
    return take_all(window, folder) ? 0 : 3;
}
