// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measure.h"

#include "photo/brush.h"

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <memory>
#include <string>

namespace drawercast::app::photo {

using Flat = std::shared_ptr<const capture::FlatPicture>;

/// Measures beside the window, one task after the other. A newer task or stop() makes the older ones' answers
/// unheard of; a task under way ends by itself, in a second or two.
class Worker final : public QObject {
    Q_OBJECT
  public:
    explicit Worker(QObject* parent = nullptr);
    ~Worker() override; ///< waits for the task under way

    void lay_flat(std::shared_ptr<const std::string> file, const capture::Shot& shot);
    void look(Flat flat, const std::vector<Stroke>& strokes);
    void stop() { ++newest_; }

  signals:
    void flat(const drawercast::app::photo::Flat& picture);
    void looked(const drawercast::capture::Traced& found);
    void refused(const drawercast::Problem& problem);

  private:
    template <class Task>
    void start(Task task);

    std::atomic<int> newest_ = 0;
    QThreadPool pool_;
};

} // namespace drawercast::app::photo
