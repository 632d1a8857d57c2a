// SPDX-License-Identifier: GPL-3.0-or-later
// Objects dragged from the list onto the drawer: from the moment they are over it they move as pockets do.
#include "job/edit.h"
#include "layout/checks.h"

#include "canvas/sheet_canvas.h"
#include "document/document.h"
#include "document/selection.h"
#include "panes/objects_model.h"

#include <QDragEnterEvent>
#include <QMimeData>

namespace drawercast::app {

std::optional<SheetCanvas::Drop> SheetCanvas::begin_drop(const QByteArray& object, QPointF px) {
    const auto* target = drawer();
    if (target == nullptr) return std::nullopt;
    const std::string drawer_id = target->id;
    const auto at = view_.to_mm(px);
    std::string made;
    job::Job job = job::placed(document_.job(), drawer_id, object.toStdString(), {at, 0}, &made);
    if (made.empty()) return std::nullopt;
    preview(job, {made}); // so that there is a plan of it
    if (drawer_plan() == nullptr || drawer() == nullptr) return std::nullopt;
    const auto limits = layout::limits_of(job, *drawer(), drawer_plan()->insert);
    return Drop{made, DragGesture({std::move(job), drawer_id, {made}, at}, *drawer_plan(), limits), {}};
}

void SheetCanvas::dragEnterEvent(QDragEnterEvent* event) {
    if (!event->mimeData()->hasFormat(ObjectsModel::mime_type) || !arranging()) return;
    tool_.cancel();
    drop_ = begin_drop(event->mimeData()->data(ObjectsModel::mime_type), event->position());
    if (drop_) event->acceptProposedAction();
}

void SheetCanvas::dragMoveEvent(QDragMoveEvent* event) {
    if (!drop_) return;
    event->acceptProposedAction();
    const bool snaps = snapping() && !keys(event->modifiers()).no_snap;
    const double radius_mm = snaps ? SelectTool::snap_px / view_.px_per_mm() : 0;
    auto step = drop_->gesture.at(view_.to_mm(event->position()), {grid_mm(), radius_mm});
    show_guides(step.snap);
    drop_->last = step.job;
    preview(std::move(step.job), {drop_->subject});
    const auto mm = view_.to_mm(event->position());
    emit pointer_at({mm.x, mm.y});
}

void SheetCanvas::dragLeaveEvent(QDragLeaveEvent*) {
    drop_.reset();
    show_guides({});
    preview(std::nullopt);
}

void SheetCanvas::dropEvent(QDropEvent* event) {
    if (!drop_) return;
    auto drop = std::exchange(drop_, std::nullopt);
    show_guides({});
    commit(tr("Place"), drop->last ? std::move(*drop->last) : document_.shown()); // as shown
    selection_.choose_pockets({drop->subject});
    setFocus();
    event->acceptProposedAction();
}

} // namespace drawercast::app
