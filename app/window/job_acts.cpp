// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/job_acts.h"

#include "job/store.h"

#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "guide/demo.h"
#include "language/in_words.h"
#include "window/actions.h"
#include "window/asking.h"
#include "window/file_words.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>

namespace drawercast::app {

namespace {

const QString job_ending = QStringLiteral("drawercast.json");

} // namespace

JobActs::JobActs(const Desk& desk, Autosave& autosave, Actions& actions, const QString& claims_folder,
                 QObject* parent)
    : QObject(parent), desk_(desk), autosave_(autosave), claim_(claims_folder) {
    connect(&desk_.document, &Document::state_changed, this, [this] { claim_.take(desk_.document.path()); });
    actions.on("job.new", [this] { make_new(); });
    actions.on("job.open", [this] {
        if (const auto path = desk_.asking.file_to_open()) open(*path);
    });
    actions.on("job.save", [this] { save(); });
    actions.on("job.save_as", [this] { save_as(); });
    actions.on("job.demo", [this] { open_demo(); });
    actions.on("job.demo_standard", [this] { open_demo(QStringLiteral("standard-objects")); });
    actions.on("job.quit", [this] { emit quit_wanted(); });
}

void JobActs::make_new() {
    if (!may_leave()) return;
    const auto size = desk_.asking.drawer_size(form_context(desk_.document.job()));
    if (!size) return;
    auto job = job::new_job(*size);
    job::Drawer drawer = *job.drawers.front();
    drawer.name = tr("Drawer %1").arg(1).toStdString();
    job = job::with_drawer(std::move(job), std::move(drawer));
    job.display_units = desk_.document.job().display_units;
    desk_.document.replace(std::move(job), {}, true); // nothing of the maker's own in it yet
    emit made_new();
}

bool JobActs::open(const QString& path) {
    if (!may_leave()) return false;
    if (claim_.taken_by_another(path)) return open_copy_of(path);
    const auto problems = desk_.document.open(path);
    if (!problems.empty()) {
        desk_.asking.warn(tr("“%1” can’t be opened").arg(QFileInfo(path).fileName()), problems);
        return false;
    }
    desk_.preferences.add_recent(path);
    return true;
}

/// Two windows saving one file would each undo what the other saved.
bool JobActs::open_copy_of(const QString& path) {
    const QString name = QFileInfo(path).fileName();
    if (!desk_.asking.yes(tr("Open already"),
                          tr("“%1” is open in another window of this program. Open a copy of what is saved? "
                             "Saving the copy asks for a name.")
                              .arg(name)))
        return false;
    auto job = job::load_job(path.toStdString());
    if (!job) {
        desk_.asking.warn(tr("“%1” can’t be opened").arg(name), job.error());
        return false;
    }
    desk_.document.replace(std::move(*job), {}, true);
    emit said(tr("A copy of “%1”, without a name yet.").arg(name));
    return true;
}

void JobActs::open_demo(const QString& name) {
    if (!may_leave()) return;
    auto job = guide::read_demo(name);
    if (!job) return desk_.asking.warn(tr("The demo job can’t be read"), job.error());
    desk_.document.replace(std::move(*job), {}, true);
}

bool JobActs::may_leave() {
    desk_.document.preview(std::nullopt);
    if (!desk_.document.unsaved()) return true;
    switch (desk_.asking.about_unsaved(desk_.document.display_name())) {
    case Asking::Unsaved::save:
        return save();
    case Asking::Unsaved::discard: // what is kept of it goes with the job itself: it may stay after all
        return true;
    case Asking::Unsaved::cancel:
        break;
    }
    return false;
}

bool JobActs::save() { return desk_.document.path().isEmpty() ? save_as() : save_to(desk_.document.path()); }

bool JobActs::save_as() {
    const QString suggested = desk_.document.path().isEmpty()
                                  ? file_words(desk_.document.display_name()) + '.' + job_ending
                                  : desk_.document.path();
    const auto path = desk_.asking.file_to_save(tr("Save the job"), suggested,
                                                tr("Drawercast jobs (*.drawercast.json)"), job_ending);
    if (!path) return false;
    if (claim_.taken_by_another(*path) &&
        !desk_.asking.yes(tr("Open already"),
                          tr("“%1” is open in another window of this program. Write over it all the same?")
                              .arg(QFileInfo(*path).fileName())))
        return false;
    return save_to(*path);
}

bool JobActs::save_to(const QString& path) {
    const auto problem = desk_.document.save(path);
    if (problem && problem->code != "backup") {
        desk_.asking.warn(tr("The job was not saved"), {*problem});
        return false;
    }
    desk_.preferences.add_recent(path);
    emit said(problem ? tr("Saved; the version before could not be kept: %1").arg(problem_line(*problem))
                      : tr("Saved as “%1”.").arg(QFileInfo(path).fileName()));
    return true;
}

void JobActs::offer_leftovers() {
    for (const auto& leftover : autosave_.leftovers()) {
        const QString name =
            leftover.job.title.empty() ? tr("Untitled job") : QString::fromStdString(leftover.job.title);
        const QString from = leftover.original_path.isEmpty()
                                 ? tr("It was never saved.")
                                 : tr("It belongs to “%1”.").arg(leftover.original_path);
        if (desk_.asking.yes(
                tr("Work that was not saved"),
                tr("“%1” was open when the program ended. %2\nTake it up again?").arg(name, from)))
            return take_up(leftover); // the others are offered at the next start
        if (desk_.asking.yes(tr("Throw it away?"),
                             tr("Throw the unsaved work on “%1” away for good?").arg(name)))
            Autosave::drop(leftover);
    }
}

/// As a step of undo from what its file says, where that can still be read. Kept anew under this run before
/// the old file goes, so that there is no moment without it.
void JobActs::take_up(const Leftover& leftover) {
    auto& document = desk_.document;
    auto job = leftover.job;
    if (!leftover.original_path.isEmpty() && claim_.taken_by_another(leftover.original_path)) {
        document.replace(std::move(job), {}, false);
        emit said(tr("“%1” is open in another window of this program: this is a copy without a name yet.")
                      .arg(QFileInfo(leftover.original_path).fileName()));
    } else if (!leftover.original_path.isEmpty() && document.open(leftover.original_path).empty()) {
        if (document.job().log.size() > job.log.size())
            job.log = document.job().log; // each mark is saved at once
        document.commit(tr("Work that was not saved"), std::move(job));
    } else
        document.replace(std::move(job), leftover.original_path, false);
    autosave_.write_now();
    autosave_.wait();
    if (!autosave_.file().isEmpty() || !document.unsaved()) Autosave::drop(leftover);
}

} // namespace drawercast::app
