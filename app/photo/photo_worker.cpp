// SPDX-License-Identifier: GPL-3.0-or-later
#include "photo/photo_worker.h"

#include "capture/right_ground.h"

#include "document/beside.h"

#include <QMetaObject>

#include <functional>

namespace drawercast::app::photo {

Worker::Worker(QObject* parent) : QObject(parent) { pool_.setMaxThreadCount(1); }

Worker::~Worker() {
    stop();
    pool_.clear();
    pool_.waitForDone();
}

/// `task` gives what is to be said on the window's thread, if it is still wanted there.
template <class Task>
void Worker::start(Task task) {
    const int mine = ++newest_;
    pool_.clear(); // what has not begun is wanted no longer
    work_beside_window(pool_, *this, [this, mine, task = std::move(task)] {
        if (mine != newest_) return;
        std::function<void()> tell = task();
        QMetaObject::invokeMethod(
            this,
            [this, mine, tell = std::move(tell)] {
                if (mine == newest_) tell();
            },
            Qt::QueuedConnection);
    });
}

void Worker::lay_flat(std::shared_ptr<const std::string> file, const capture::Shot& shot) {
    start([this, file = std::move(file), shot]() -> std::function<void()> {
        auto laid = capture::flattened_as_said(*file, shot);
        if (!laid) return [this, problem = laid.error()] { emit refused(problem); };
        Flat picture = std::make_shared<const capture::FlatPicture>(std::move(*laid));
        return [this, picture] { emit flat(picture); };
    });
}

/// As the photo shows them: the height of each is taken out afterwards.
void Worker::look(Flat flat, const std::vector<Stroke>& strokes) {
    start([this, flat = std::move(flat), strokes]() -> std::function<void()> {
        auto found = capture::traced_objects(*flat, {}, brush_of(strokes, *flat));
        if (!found) return [this, problem = found.error()] { emit refused(problem); };
        return [this, found = std::move(*found)] { emit looked(found); };
    });
}

} // namespace drawercast::app::photo
