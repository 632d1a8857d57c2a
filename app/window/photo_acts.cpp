// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/photo_acts.h"

#include "capture/measure.h"
#include "job/edit.h"

#include "document/document.h"
#include "document/selection.h"
#include "photo/photo_dialog.h"
#include "window/actions.h"
#include "window/asking.h"

#include <QFileInfo>

namespace drawercast::app {

PhotoActs::PhotoActs(const Desk& desk, Actions& actions, QWidget* window)
    : QObject(window), desk_(desk), window_(window) {
    actions.on("objects.photo", [this] { open(); });
    if (!capture::available())
        actions["objects.photo"]->setText(tr("Measure from a p&hoto (not in this build)…"));
}

photo::PhotoDialog* PhotoActs::dialog() const { return dialog_; }

bool PhotoActs::is_photo(const QString& path) {
    const QString ending = QFileInfo(path).suffix().toLower();
    return ending == QLatin1String("jpg") || ending == QLatin1String("jpeg") ||
           ending == QLatin1String("png");
}

void PhotoActs::open(const QString& path) {
    if (!capture::available())
        return desk_.asking.warn(tr("Photos can’t be measured"), {capture::flattened({}, {}).error()});
    if (!dialog_) {
        dialog_ =
            new photo::PhotoDialog(form_context(desk_.document.job(), desk_.selection.drawer()), window_);
        dialog_->setAttribute(Qt::WA_DeleteOnClose);
        connect(dialog_, &QDialog::accepted, this, &PhotoActs::take);
        dialog_->open();
    }
    if (!path.isEmpty()) dialog_->load(path);
}

void PhotoActs::take() {
    const auto objects = dialog_->objects();
    if (objects.empty()) return;
    auto job = job::with_objects(desk_.document.job(), objects);
    const std::string last = job.objects.back()->id;
    desk_.document.commit(tr("Objects from a photo"), std::move(job));
    desk_.selection.choose_object(last);
    emit said(
        tr("Objects measured: %1. Drag them onto the drawer, or press Ctrl+Enter.").arg(objects.size()));
}

} // namespace drawercast::app
