// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/arrange_acts.h"

#include "job/edit.h"
#include "job/shown_name.h"
#include "plan/slots.h"

#include "document/document.h"
#include "document/selection.h"
#include "window/actions.h"
#include "window/arrange_dialog.h"
#include "window/asking.h"

#include <memory>

namespace drawercast::app {

namespace {

constexpr arrange::Budget patience{60'000'000, 1}; ///< less than a minute: whoever waits may stop it

} // namespace

ArrangeActs::ArrangeActs(const Desk& desk, Actions& actions, QWidget* window)
    : QObject(window), desk_(desk), window_(window) {
    actions.on("arrange.unplaced", [this] { in_drawer(tr("Place the rest"), arrange::Moving::none); });
    actions.on("arrange.unlocked",
               [this] { in_drawer(tr("Rearrange what is not locked"), arrange::Moving::unlocked); });
    actions.on("arrange.drawers", [this] { over_drawers(); });
    actions.on("arrange.which", [this] { which_drawer(); });
}

ArrangeDialog* ArrangeActs::dialog() const { return dialog_; }

void ArrangeActs::in_drawer(const QString& what, arrange::Moving moving) {
    const job::Job job = desk_.document.job();
    const std::string drawer = desk_.selection.drawer();
    const QString need = need_words(arrange::need_of(job, {drawer}));
    arrange(
        [job, drawer, moving](const Watch& watch, const arrange::Tell& tell) {
            return arrange::arranged(job, drawer, moving, patience, watch, tell);
        },
        need, keep(what, need));
}

void ArrangeActs::over_drawers() {
    const job::Job job = desk_.document.job();
    const QString need = need_words(arrange::need_of(job));
    arrange(
        [job](const Watch& watch, const arrange::Tell& tell) {
            return arrange::arranged(job, arrange::Moving::none, patience, watch, tell);
        },
        need, keep(tr("Place the rest over all drawers"), need));
}

/// Each drawer is tried by itself; the maker chooses among what came of it.
void ArrangeActs::which_drawer() {
    const auto tried = std::make_shared<std::vector<arrange::Trial>>();
    const job::Job job = desk_.document.job();
    arrange(
        [job, tried](const Watch& watch, const arrange::Tell&) {
            *tried = arrange::each_drawer(job, patience, watch);
            return arrange::Arranged{job, 0, 0, arrange::not_placed_yet(job)};
        },
        need_words(arrange::need_of(job)),
        [this, tried](const arrange::Arranged&) {
            QStringList rows;
            for (const arrange::Trial& trial : *tried) {
                const job::Drawer& drawer = *job::find_drawer(trial.arranged.job, trial.drawer);
                const QString name = QString::fromStdString(job::shown_name(drawer));
                rows << (trial.arranged.left == 0 ? tr("%1 takes all %2").arg(name).arg(trial.arranged.placed)
                                                  : tr("%1 takes %2 of %3")
                                                        .arg(name)
                                                        .arg(trial.arranged.placed)
                                                        .arg(trial.arranged.placed + trial.arranged.left));
            }
            const auto row = desk_.asking.choice(tr("Which drawer would do"), tr("Arrange in"), rows);
            if (!row) return;
            const arrange::Trial& trial = tried->at(static_cast<std::size_t>(*row));
            desk_.document.commit(tr("Place the rest"), trial.arranged.job);
            desk_.selection.choose_drawer(trial.drawer);
            emit said(arranged_words(trial.arranged));
        });
}

ArrangeActs::Answered ArrangeActs::keep(const QString& what, const QString& need) {
    return [this, what, need](const arrange::Arranged& found) {
        desk_.document.commit(what, found.job);
        QString words = arranged_words(found);
        words += u' ' + (found.left > 0 ? need : tr("Arrange, Tidy makes the walls equal."));
        if (const int count = plan::narrow_slots(found.job, desk_.document.plan()); count > 0)
            words += u' ' + slot_words(count);
        emit said(words);
    };
}

void ArrangeActs::arrange(Arranging::Task task, const QString& need, Answered answered) {
    if (dialog_) return;
    dialog_ = new ArrangeDialog(std::move(task), need, window_);
    Document& document = desk_.document;
    connect(dialog_, &ArrangeDialog::better, this,
            [&document](const arrange::Arranged& found) { document.preview(found.job); });
    connect(dialog_, &ArrangeDialog::kept, this, [this, answered](const arrange::Arranged& found) {
        desk_.document.preview(std::nullopt);
        answered(found);
    });
    // The guide stays open beside it: another job, or a change made from there, is not to be overwritten.
    connect(&document, &Document::replaced, dialog_, &ArrangeDialog::give_up);
    connect(&document, &Document::committed, dialog_, &ArrangeDialog::give_up);
    connect(dialog_, &ArrangeDialog::dropped, this, [this] {
        desk_.document.preview(std::nullopt);
        emit said(tr("Everything is as it was."));
    });
    dialog_->begin();
}

} // namespace drawercast::app
