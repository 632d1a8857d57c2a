// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/icons.h"
#include "theme/style.h"

#include <QWidget>

namespace drawercast::theme {

namespace {

/// Our drawing for what Qt's own dialogs show in colors; empty where they keep theirs.
QString name_of(QStyle::StandardPixmap which) {
    switch (which) {
    case QStyle::SP_MessageBoxInformation:
        return QStringLiteral("summary");
    case QStyle::SP_MessageBoxQuestion:
        return QStringLiteral("explain");
    case QStyle::SP_MessageBoxWarning:
    case QStyle::SP_MessageBoxCritical:
        return QStringLiteral("check");
    case QStyle::SP_LineEditClearButton:
        return QStringLiteral("clear");
    case QStyle::SP_ArrowLeft:
    case QStyle::SP_ArrowBack:
        return QStringLiteral("back");
    case QStyle::SP_ArrowRight:
    case QStyle::SP_ArrowForward:
        return QStringLiteral("forward");
    case QStyle::SP_FileDialogToParent:
        return QStringLiteral("up");
    case QStyle::SP_FileDialogNewFolder:
        return QStringLiteral("folder-new");
    case QStyle::SP_FileDialogListView:
        return QStringLiteral("tiles");
    case QStyle::SP_FileDialogDetailedView:
        return QStringLiteral("rows");
    case QStyle::SP_DirIcon:
    case QStyle::SP_DirOpenIcon:
    case QStyle::SP_DirClosedIcon:
    case QStyle::SP_DirLinkIcon:
    case QStyle::SP_DirHomeIcon:
        return QStringLiteral("folder");
    case QStyle::SP_FileIcon:
    case QStyle::SP_FileLinkIcon:
        return QStringLiteral("file");
    case QStyle::SP_ComputerIcon:
    case QStyle::SP_DesktopIcon:
    case QStyle::SP_DriveHDIcon:
    case QStyle::SP_DriveNetIcon:
        return QStringLiteral("computer");
    default:
        return {};
    }
}

} // namespace

QIcon Style::standardIcon(StandardPixmap which, const QStyleOption* option, const QWidget* widget) const {
    const QString name = name_of(which);
    return name.isEmpty() ? QProxyStyle::standardIcon(which, option, widget) : icon(name);
}

QPixmap Style::standardPixmap(StandardPixmap which, const QStyleOption* option, const QWidget* widget) const {
    const QString name = name_of(which);
    if (name.isEmpty()) return QProxyStyle::standardPixmap(which, option, widget);
    const bool in_message = which == SP_MessageBoxInformation || which == SP_MessageBoxQuestion ||
                            which == SP_MessageBoxWarning || which == SP_MessageBoxCritical;
    const int side = pixelMetric(in_message ? PM_MessageBoxIconSize : PM_SmallIconSize, option, widget);
    return icon(name).pixmap(QSize(side, side), widget ? widget->devicePixelRatio() : 1.0);
}

} // namespace drawercast::theme
