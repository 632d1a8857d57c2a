// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/canvas_access.h"

#include "base/contains.h"
#include "job/edit.h"
#include "plan/sentences.h"

#include "canvas/sheet_canvas.h"
#include "language/say.h"
#include "language/spoken.h"
#include "sheets/zones.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QPointer>
#include <QWindow>

#include <map>

namespace drawercast::app {

namespace {

/// One pocket; it lives as long as the canvas's own interface, and is invalid once the pocket is gone.
class PocketAccess final : public QAccessibleInterface {
  public:
    PocketAccess(SheetCanvas& canvas, std::string subject) : canvas_(&canvas), subject_(std::move(subject)) {}

    bool isValid() const override { return pocket() != nullptr; }
    QObject* object() const override { return nullptr; }
    QWindow* window() const override { return canvas_ ? canvas_->window()->windowHandle() : nullptr; }
    QAccessibleInterface* parent() const override {
        return canvas_ ? QAccessible::queryAccessibleInterface(canvas_) : nullptr;
    }
    QAccessibleInterface* child(int) const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    void setText(QAccessible::Text, const QString&) override {}
    QAccessible::Role role() const override { return QAccessible::ListItem; }

    QString text(QAccessible::Text what) const override {
        const auto* plan = canvas_ ? canvas_->drawer_plan() : nullptr;
        if (what != QAccessible::Name || plan == nullptr) return {};
        return spoken_pocket(canvas_->shown(), *plan, subject_);
    }
    QRect rect() const override {
        const auto* one = pocket();
        if (one == nullptr) return {};
        const QRect px = canvas_->view().to_px(one->box).toAlignedRect();
        return {canvas_->mapToGlobal(px.topLeft()), px.size()};
    }
    QAccessible::State state() const override {
        QAccessible::State state;
        state.invalid = pocket() == nullptr;
        if (state.invalid) return state;
        const auto& chosen = canvas_->chosen();
        state.selectable = state.multiSelectable = state.focusable = true;
        state.selected = contains(chosen, subject_);
        state.focused = canvas_->hasFocus() && !chosen.empty() && chosen.back() == subject_;
        const auto found = job::find_pocket(canvas_->job(), subject_);
        state.readOnly = found.pocket != nullptr && found.pocket->locked;
        state.offscreen = !canvas_->rect().intersects(canvas_->view().to_px(pocket()->box).toAlignedRect());
        return state;
    }

  private:
    const layout::PlacedPocket* pocket() const {
        const auto* plan = canvas_ ? canvas_->drawer_plan() : nullptr;
        return plan != nullptr ? find_pocket(*plan, subject_) : nullptr;
    }

    QPointer<SheetCanvas> canvas_;
    std::string subject_;
};

class CanvasAccess final : public QAccessibleWidget {
  public:
    explicit CanvasAccess(SheetCanvas* canvas) : QAccessibleWidget(canvas, QAccessible::List) {}
    ~CanvasAccess() override {
        for (const auto& [subject, id] : ids_) QAccessible::deleteAccessibleInterface(id);
    }

    int childCount() const override { return static_cast<int>(subjects().size()); }
    QAccessibleInterface* child(int index) const override {
        const auto all = subjects();
        if (index < 0 || index >= static_cast<int>(all.size())) return nullptr;
        const auto& subject = all[static_cast<std::size_t>(index)];
        const auto [known, fresh] = ids_.try_emplace(subject);
        if (fresh) // theirs from here on
            known->second = QAccessible::registerAccessibleInterface(new PocketAccess(canvas(), subject));
        return QAccessible::accessibleInterface(known->second);
    }
    int indexOfChild(const QAccessibleInterface* one) const override {
        for (int i = 0; i < childCount(); ++i)
            if (child(i) == one) return i;
        return -1;
    }
    QAccessibleInterface* childAt(int x, int y) const override {
        for (int i = childCount() - 1; i >= 0; --i)
            if (child(i)->rect().contains(x, y)) return child(i);
        return nullptr;
    }
    QAccessibleInterface* focusChild() const override {
        for (int i = 0; i < childCount(); ++i)
            if (child(i)->state().focused) return child(i);
        return nullptr;
    }

  private:
    SheetCanvas& canvas() const { return *static_cast<SheetCanvas*>(widget()); }
    std::vector<std::string> subjects() const {
        std::vector<std::string> all;
        const auto* plan = canvas().arranging() ? canvas().drawer_plan() : nullptr;
        if (plan != nullptr)
            for (const auto& pocket : plan->pockets) all.push_back(pocket->subject);
        return all;
    }

    mutable std::map<std::string, QAccessible::Id> ids_;
};

QAccessibleInterface* interface_of(const QString& kind, QObject* object) {
    Q_UNUSED(kind);
    auto* canvas = qobject_cast<SheetCanvas*>(object);
    return canvas == nullptr ? nullptr : new CanvasAccess(canvas);
}

} // namespace

QString spoken_pocket(const job::Job& job, const plan::DrawerPlan& plan, const std::string& subject) {
    const auto* pocket = find_pocket(plan, subject);
    const auto found = job::find_pocket(job, subject);
    if (pocket == nullptr || found.pocket == nullptr || !plan.insert) return {};
    using language::tr;
    const auto text = [](const std::string& utf8) { return QString::fromStdString(utf8); };
    const auto units = job.display_units;
    const auto middle = shape::Point<shape::InDrawer>::of(pocket->box.center());
    const QString words =
        tr("%1, %2 deep, zone %3")
            .arg(text(plan::subject_name(subject, job)),
                 language::say_length(pocket->form->greatest_depth_mm, units),
                 text(sheets::zone_of(middle, shape::bounds(plan.insert->drawer.contour), units)));
    return found.pocket->locked ? tr("%1, locked").arg(words) : words;
}

void tell_readers_of_pockets() {
    static const bool once = [] {
        QAccessible::installFactory(interface_of);
        return true;
    }();
    Q_UNUSED(once);
}

} // namespace drawercast::app
