// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/program.h"

#include "window/appearance.h"
#include "window/main_window.h"
#include "window/menu_key.h"
#include "window/sheet_area.h"

#include <QApplication>
#include <QTimer>

namespace drawercast::app {

Program::Program(Preferences& preferences, const QString& unsaved_folder, Asking* asking)
    : preferences_(preferences), unsaved_folder_(unsaved_folder), asking_(asking),
      desktop_(QApplication::palette()), looks_(preferences.appearance(), preferences.text_scale()),
      worn_(chosen_theme(preferences, desktop_)), language_(preferences.language()),
      spoken_(std::make_unique<language::Spoken>(language_)) {
    QApplication::instance()->installEventFilter(new MenuKey(this));
    wear(worn_, looks_.second);
    window_ = std::make_unique<MainWindow>(preferences_, unsaved_folder_, asking_);
    window_->set_theme(worn_);
    connect(&preferences_, &Preferences::changed, this, &Program::follow);
}

Program::~Program() = default;

void Program::follow() {
    const Looks now(preferences_.appearance(), preferences_.text_scale());
    if (now != looks_) {
        looks_ = now;
        worn_ = chosen_theme(preferences_, desktop_);
        wear(worn_, looks_.second);
        window_->set_theme(worn_);
    }
    // not here: the window asked for it and is still in the middle of that
    if (preferences_.language() != language_) QTimer::singleShot(0, this, &Program::speak);
}

/// The old window goes first: what it has claimed and watches on disk is the new one’s then.
void Program::speak() {
    if (preferences_.language() == language_) return;
    language_ = preferences_.language();
    const bool quits = QApplication::quitOnLastWindowClosed();
    QApplication::setQuitOnLastWindowClosed(false); // for a moment there is none
    const bool shown = window_->isVisible();
    const auto sheet = window_->sheets().shown();
    auto open = window_->hand_over();
    window_.reset();
    spoken_.reset();
    spoken_ = std::make_unique<language::Spoken>(language_);
    window_ = std::make_unique<MainWindow>(preferences_, std::move(open), unsaved_folder_, asking_);
    window_->set_theme(worn_);
    window_->sheets().show_sheet(sheet);
    if (shown) window_->show();
    QApplication::setQuitOnLastWindowClosed(quits);
}

} // namespace drawercast::app
