// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/desk.h"

#include <QObject>

#include <memory>

namespace drawercast::app {

class Actions;
namespace guide {
class GuideWindow;
}

/// What opens the guide: the Help menu, and "More in the guide" beside a check or a figure. Its window is
/// made when it is first wanted, and goes with the job's.
class GuideActs final : public QObject {
    Q_OBJECT
  public:
    GuideActs(const Desk& desk, Actions& actions, QObject* parent = nullptr);
    ~GuideActs() override;

    void open(const QString& id); ///< a check code, figure or chapter; empty: where it was left
    void close();
    guide::GuideWindow* window() { return window_.get(); } ///< null: not opened yet

  private:
    guide::GuideWindow& made();

    Desk desk_;
    Actions& actions_;
    std::unique_ptr<guide::GuideWindow> window_;
};

} // namespace drawercast::app
