// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/sheet_table.h"
#include "theme/splitter.h"

class QScrollArea;
class QVBoxLayout;

namespace drawercast::app {

class Actions;
class ChecksPane;
class Document;
class FoamPane;
class MoldPane;
class Selection;

/// The checks, and below them the answers on foam and mold. What is higher than the window scrolls; of this
/// pane the answers alone, the checks keep three rows at least.
class RightPane final : public theme::Splitter {
    Q_OBJECT
  public:
    RightPane(Document& document, Selection& selection, Actions& actions, QWidget* parent);

    ChecksPane& checks() { return *checks_; }
    void arrange_for(SheetId sheet); ///< what it is about comes first, and is open

  signals:
    void action_wanted(const QString& id);
    void guide_wanted(const QString& paragraph);

  private:
    ChecksPane* checks_;
    FoamPane* foam_;
    MoldPane* mold_;
    QVBoxLayout* column_;
    QScrollArea* answers_;
};

} // namespace drawercast::app
