// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/desk.h"

#include <QObject>
#include <QPointer>

namespace drawercast::app::photo {
class PhotoDialog;
}

namespace drawercast::app {

class Actions;

/// Measuring objects from a photo: the dialog, and its outlines into the object list as one step of undo.
class PhotoActs final : public QObject {
    Q_OBJECT
  public:
    PhotoActs(const Desk& desk, Actions& actions, QWidget* window);

    void open(const QString& path = {});       ///< with that photo; empty: it is chosen in the dialog
    photo::PhotoDialog* dialog() const;        ///< null: not open
    static bool is_photo(const QString& path); ///< by its ending

  signals:
    void said(const QString& sentence);

  private:
    void take();

    Desk desk_;
    QWidget* window_;
    QPointer<photo::PhotoDialog> dialog_;
};

} // namespace drawercast::app
