// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/clip_acts.h"

#include "job/excerpt.h"
#include "job/read.h"
#include "job/write.h"

#include "document/document.h"
#include "document/selection.h"
#include "window/actions.h"
#include "window/asking.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr double aside_mm = 10; // of a copy from the one it would lie on
constexpr int most_steps = 40;

/// Whether a pocket stands just there already.
bool taken(const job::Drawer& drawer, shape::Vec at) {
    return std::any_of(drawer.pockets.begin(), drawer.pockets.end(),
                       [&](const job::Pocket& pocket) { return shape::length(pocket.pose.at - at) < 0.5; });
}

/// The first offset, a step to the front right at a time, at which no copy hides a pocket.
shape::Vec offset_for(const job::Job& part, const job::Drawer& drawer) {
    shape::Vec by{0, 0};
    for (int step = 0; step < most_steps; ++step, by = by + shape::Vec{aside_mm, -aside_mm}) {
        bool hides = false;
        for (const auto& from : part.drawers)
            for (const auto& pocket : from->pockets) hides = hides || taken(drawer, pocket.pose.at + by);
        if (!hides) break;
    }
    return by;
}

} // namespace

std::optional<job::Job> part_on_clipboard(const QMimeData& data) {
    const QByteArray bytes =
        data.hasFormat(ClipActs::mime_type) ? data.data(ClipActs::mime_type) : data.text().toUtf8();
    if (!bytes.trimmed().startsWith('{')) return std::nullopt;
    auto job = job::read_job(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (!job) return std::nullopt;
    return std::move(*job);
}

ClipActs::ClipActs(const Desk& desk, Actions& actions, QObject* parent)
    : QObject(parent), desk_(desk), actions_(actions) {
    actions.on("edit.copy", [this] { copy(); });
    actions.on("edit.cut", [this] { cut(); });
    actions.on("edit.paste", [this] { paste(); });
}

/// The chosen pockets; where none is, the chosen object.
bool ClipActs::copy() {
    const auto& selection = desk_.selection;
    const auto objects = selection.pockets().empty() ? std::vector<std::string>{selection.object()}
                                                     : std::vector<std::string>{};
    const auto part = job::excerpt(desk_.document.job(), selection.pockets(), objects);
    if (part.objects.empty()) {
        emit said(tr("Nothing is chosen that could be copied."));
        return false;
    }
    const auto text = QByteArray::fromStdString(job::write_job(part));
    auto* data = new QMimeData; // the clipboard's from now on
    data->setData(mime_type, text);
    data->setText(QString::fromUtf8(text));
    QGuiApplication::clipboard()->setMimeData(data);
    emit said(
        selection.pockets().empty()
            ? tr("The object is on the clipboard, for this job or another.")
            : tr("On the clipboard, for this job or another, pockets: %1.").arg(selection.pockets().size()));
    return true;
}

/// Locked ones stay.
void ClipActs::cut() {
    if (desk_.selection.pockets().empty() || !copy()) return;
    const auto which = job::unlocked(desk_.document.job(), desk_.selection.pockets());
    if (which.empty()) return emit said(tr("Locked: they were copied, and stay."));
    desk_.selection.choose_pockets({});
    desk_.document.commit(tr("Cut"), job::removed(desk_.document.job(), which));
}

void ClipActs::paste() {
    const auto* data = QGuiApplication::clipboard()->mimeData();
    if (data == nullptr) return;
    if (const auto part = part_on_clipboard(*data)) return paste_part(*part);
    if (data->text().contains(QLatin1Char('\t')) || data->text().contains(QLatin1Char(';')))
        return actions_["objects.paste_list"]
            ->trigger(); // from a spreadsheet: its own form shows what is what
    emit said(tr("The clipboard holds no pockets, no object and no list."));
}

void ClipActs::paste_part(const job::Job& part) {
    const auto* drawer = job::find_drawer(desk_.document.job(), desk_.selection.drawer());
    const auto by = drawer == nullptr ? shape::Vec{0, 0} : offset_for(part, *drawer);
    auto merged = job::merged(desk_.document.job(), part, desk_.selection.drawer(), by);
    if (merged.job == desk_.document.job()) return emit said(tr("There is no drawer to paste into."));
    desk_.document.commit(tr("Paste"), std::move(merged.job));
    if (!merged.pockets.empty())
        desk_.selection.choose_pockets(merged.pockets);
    else if (!merged.objects.empty())
        desk_.selection.choose_object(merged.objects.back());
    emit said(merged.pockets.empty()
                  ? tr("Objects added: %1.").arg(merged.objects.size())
                  : tr("Pockets pasted: %1. Drag them to their place.").arg(merged.pockets.size()));
}

} // namespace drawercast::app
