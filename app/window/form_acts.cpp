// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/form_acts.h"

#include "job/catalog.h"
#include "job/edit.h"
#include "plan/foams_beside.h"

#include "document/document.h"
#include "document/selection.h"
#include "forms/object_form.h"
#include "window/actions.h"
#include "window/asking.h"

namespace drawercast::app {

FormActs::FormActs(const Desk& desk, Actions& actions, QObject* parent) : QObject(parent), desk_(desk) {
    connect_objects(actions);
    connect_drawers(actions);
    connect_job(actions);
}

FormContext FormActs::context() const { return form_context(desk_.document.job(), desk_.selection.drawer()); }

void FormActs::connect_objects(Actions& actions) {
    actions.on("objects.add", [this] { add_object(); });
    actions.on("objects.change", [this] { change_object(); });
    actions.on("objects.paste_list", [this] { paste_list(); });
    actions.on("objects.standard",
               [this] { add_listed(desk_.asking.standard_objects(context()), tr("Add objects")); });
}

void FormActs::add_object() {
    const auto& job = desk_.document.job();
    auto object = desk_.asking.object(Asking::Purpose::add, blank_object(), context());
    if (!object) return;
    object->id = job::free_object_id(job);
    commit(desk_, tr("Add object"), job::with_object(job, *object));
    desk_.selection.choose_object(object->id);
    emit said(tr("“%1” is in the list: drag it onto the drawer, or press Ctrl+Enter. Ctrl+R places all.")
                  .arg(QString::fromStdString(object->name)));
}

void FormActs::change_object() {
    const auto& job = desk_.document.job();
    const auto* given = job::find_object(job, desk_.selection.object());
    if (given == nullptr) return;
    const auto object = desk_.asking.object(Asking::Purpose::change, *given, context());
    if (object) commit(desk_, tr("Change object"), job::with_object(job, *object));
}

void FormActs::paste_list() {
    desk_.asking.pasted_list(context(), [this](const std::vector<job::Object>& objects) {
        add_listed(objects, tr("Paste a list"));
    });
}

void FormActs::add_listed(const std::vector<job::Object>& objects, const QString& what) {
    if (objects.empty()) return;
    auto job = job::with_objects(desk_.document.job(), objects);
    const std::string last = job.objects.back()->id;
    commit(desk_, what, std::move(job));
    desk_.selection.choose_object(last);
    emit said(tr("Objects added: %1. Drag them onto the drawer, or press Ctrl+Enter. Ctrl+R places all.")
                  .arg(objects.size()));
}

void FormActs::connect_drawers(Actions& actions) {
    actions.on("drawers.add", [this] { add_drawer(); });
    actions.on("drawers.change", [this] { change_drawer(); });
    actions.on("drawers.delete", [this] { delete_drawer(); });
}

/// A new drawer starts as the shown one is, empty: cabinets have many of a size.
void FormActs::add_drawer() {
    const auto& job = desk_.document.job();
    const auto* shown = job::find_drawer(job, desk_.selection.drawer());
    job::Drawer blank = shown != nullptr ? *shown : *job::new_job({}).drawers.front();
    blank.id = job::free_drawer_id(job);
    blank.name = tr("Drawer %1").arg(job.drawers.size() + 1).toStdString();
    blank.pockets.clear();
    blank.obstructions.clear();
    blank.vents.reset();
    blank.pours.clear();
    const auto drawer = desk_.asking.drawer(Asking::Purpose::add, blank, form_context(job, blank.id));
    if (!drawer) return;
    commit(desk_, tr("Add drawer"), job::with_drawer(job, *drawer));
    desk_.selection.choose_drawer(drawer->id);
}

void FormActs::change_drawer() {
    const auto& job = desk_.document.job();
    const auto* given = job::find_drawer(job, desk_.selection.drawer());
    if (given == nullptr) return;
    const auto drawer = desk_.asking.drawer(Asking::Purpose::change, *given, form_context(job, given->id));
    if (drawer) commit(desk_, tr("Change drawer"), job::with_drawer(job, *drawer));
}

void FormActs::delete_drawer() {
    const auto& job = desk_.document.job();
    const auto* drawer = job::find_drawer(job, desk_.selection.drawer());
    if (drawer == nullptr) return;
    if (!drawer->pockets.empty() &&
        !desk_.asking.yes(tr("Delete the drawer?"),
                          tr("“%1” and its pockets (%2) go; the objects stay in the list. You can undo it.")
                              .arg(QString::fromStdString(drawer->name))
                              .arg(drawer->pockets.size())))
        return;
    const std::string id = drawer->id;
    desk_.selection.choose_pockets({});
    commit(desk_, tr("Delete drawer"), job::without_drawer(job, id));
}

void FormActs::connect_job(Actions& actions) {
    auto& document = desk_.document;
    actions.on("job.foam", [this, &document] {
        const auto foam = desk_.asking.foam(*document.job().foam, *document.job().shop, context());
        if (!foam) return;
        auto job = document.job();
        job.foam = *foam;
        commit(desk_, tr("Foam"), std::move(job));
    });
    actions.on("job.foams", [this, &document] {
        const auto foam = desk_.asking.foam_beside(plan::foams_beside(document.job(), job::builtin_foams()),
                                                   document.job());
        if (!foam) return;
        auto job = document.job();
        job.foam = *foam;
        commit(desk_, tr("Foam"), std::move(job));
    });
    actions.on("job.shop", [this, &document] {
        const auto shop = desk_.asking.shop(*document.job().shop, context());
        if (!shop) return;
        auto job = document.job();
        job.shop = *shop;
        commit(desk_, tr("Shop"), std::move(job));
    });
    actions.on("job.mold", [this, &document] {
        const auto mold = desk_.asking.mold(document.job().mold, *document.job().shop, context());
        if (!mold) return;
        auto job = document.job();
        job.mold = *mold;
        commit(desk_, tr("How the molds are built"), std::move(job));
    });
    actions.on("job.minimums", [this, &document] {
        const auto minimums = desk_.asking.minimums(document.job().minimums, context());
        if (!minimums) return;
        auto job = document.job();
        job.minimums = *minimums;
        commit(desk_, tr("Shop minimums"), std::move(job));
    });
    actions.on("job.title", [this, &document] {
        const auto title = desk_.asking.text(tr("Title of the job"), tr("It stands on every template:"),
                                             QString::fromStdString(document.job().title));
        if (!title) return;
        auto job = document.job();
        job.title = title->trimmed().toStdString();
        commit(desk_, tr("Title"), std::move(job));
    });
    actions.on("job.revision", [this, &document] {
        commit(desk_, tr("New revision"), job::next_revision(document.job()));
        emit said(tr("Revision %1: templates printed before say an older one.").arg(document.job().revision));
    });
}

} // namespace drawercast::app
