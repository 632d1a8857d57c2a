// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/beside.h"

#include <QMetaObject>
#include <QObject>
#include <QThreadPool>

#include <exception>
#include <utility>

namespace drawercast::app {

void work_beside_window(QThreadPool& pool, QObject& owner, std::function<void()> work) {
    pool.start([&owner, work = std::move(work)] {
        try {
            work();
        } catch (...) {
            QMetaObject::invokeMethod(
                &owner, [fault = std::current_exception()] { std::rethrow_exception(fault); },
                Qt::QueuedConnection);
        }
    });
}

} // namespace drawercast::app
