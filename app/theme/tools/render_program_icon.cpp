// SPDX-License-Identifier: GPL-3.0-or-later

// Writes the program's icon as PNG files in the folders a desktop looks for: FOLDER/16x16/apps/drawercast.png
// … Needs no display.
#include "theme/icons.h"

#include <QDir>
#include <QFile>
#include <QImage>

#include <cstdio>

int main(int count, char** arguments) {
    if (count != 2) {
        std::fputs("usage: render_program_icon FOLDER\n", stderr);
        return 64;
    }
    for (const int pixels : {16, 32, 48, 256}) {
        const QString folder =
            QStringLiteral("%1/%2x%2/apps").arg(QFile::decodeName(arguments[1])).arg(pixels);
        const QString file = folder + QStringLiteral("/drawercast.png");
        if (!QDir().mkpath(folder) || !drawercast::theme::program_icon_image(pixels).save(file)) {
            std::fprintf(stderr, "%s can't be written\n", qPrintable(file));
            return 3;
        }
    }
    return 0;
}
