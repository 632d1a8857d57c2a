// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/autosave.h"
#include "document/document.h"
#include "document/selection.h"

namespace drawercast::app {

/// The job a window works on, with its undo, what is chosen in it and what keeps its unsaved work: what stays
/// while the window around it is made anew.
struct OpenJob {
    explicit OpenJob(const QString& unsaved_folder) : autosave(document, unsaved_folder) {}

    Document document;
    Selection selection;
    Autosave autosave;
};

} // namespace drawercast::app
