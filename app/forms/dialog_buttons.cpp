// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/dialog_buttons.h"

#include <QDialog>

namespace drawercast::app {

QDialogButtonBox* dialog_buttons(QDialog& dialog, QDialogButtonBox::StandardButtons which, QWidget* parent) {
    auto* buttons = new QDialogButtonBox(which, parent);
    QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    return buttons;
}

} // namespace drawercast::app
