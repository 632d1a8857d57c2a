// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialogButtonBox>

class QDialog;

namespace drawercast::app {

/// The buttons that end a dialog: OK accepts it, Cancel and Close reject it. Made in `parent`, which decides
/// when the Tab key comes to them; none: in what they are laid out in.
QDialogButtonBox* dialog_buttons(QDialog& dialog, QDialogButtonBox::StandardButtons which, QWidget* parent);

} // namespace drawercast::app
