// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/arrange_acts.h"

#include "document/document.h"
#include "document/selection.h"
#include "window/actions.h"
#include "window/arrange_dialog.h"

namespace drawercast::app {

namespace {

constexpr arrange::Budget patience{60'000'000, 1}; ///< a minute or two: whoever waits may stop it

} // namespace

ArrangeActs::ArrangeActs(const Desk& desk, Actions& actions, QWidget* window)
    : QObject(window), desk_(desk), window_(window) {
    actions.on("arrange.unplaced",
               [this] { in_drawer(tr("Arrange what is not placed"), arrange::Moving::none); });
    actions.on("arrange.unlocked",
               [this] { in_drawer(tr("Arrange all that is not locked"), arrange::Moving::unlocked); });
    actions.on("arrange.drawers", [this] { over_drawers(); });
}

ArrangeDialog* ArrangeActs::dialog() const { return dialog_; }

void ArrangeActs::in_drawer(const QString& what, arrange::Moving moving) {
    arrange(what, [job = desk_.document.job(), drawer = desk_.selection.drawer(),
                   moving](const Watch& watch, const arrange::Tell& tell) {
        return arrange::arranged(job, drawer, moving, patience, watch, tell);
    });
}

void ArrangeActs::over_drawers() {
    arrange(tr("Arrange over all drawers"),
            [job = desk_.document.job()](const Watch& watch, const arrange::Tell& tell) {
                return arrange::arranged(job, arrange::Moving::none, patience, watch, tell);
            });
}

void ArrangeActs::arrange(const QString& what, Arranging::Task task) {
    if (dialog_) return;
    dialog_ = new ArrangeDialog(std::move(task), window_);
    Document& document = desk_.document;
    connect(dialog_, &ArrangeDialog::better, this,
            [&document](const arrange::Arranged& found) { document.preview(found.job); });
    connect(dialog_, &ArrangeDialog::kept, this, [this, what](const arrange::Arranged& found) {
        desk_.document.preview(std::nullopt);
        desk_.document.commit(what, found.job);
        emit said(arranged_words(found));
    });
    connect(dialog_, &ArrangeDialog::dropped, this, [this] {
        desk_.document.preview(std::nullopt);
        emit said(tr("Everything is as it was."));
    });
    dialog_->begin();
}

} // namespace drawercast::app
