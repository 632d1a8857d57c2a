// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>

class QDialog;

namespace drawercast::app {

/// As large as wanted while the screen allows it. Where what is wanted, or the least size of its layout, is
/// larger than the screen, the dialog's contents, all but a row of buttons of its own, go into a view that
/// scrolls. Called once, at the end of a dialog's constructor.
void fit_screen(QDialog& dialog, QSize wanted);

/// The same on a screen of that size.
void fit_screen(QDialog& dialog, QSize wanted, QSize screen);

} // namespace drawercast::app
