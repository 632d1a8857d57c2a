// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/printing.h"

namespace drawercast::print {

Printing printing_at(const QDateTime& now) {
    return {QStringLiteral("Drawercast " DRAWERCAST_VERSION),
            now.toString(QStringLiteral("yyyy-MM-dd HH:mm"))};
}

} // namespace drawercast::print
