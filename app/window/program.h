// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/preferences.h"
#include "language/spoken.h"
#include "theme/palette.h"

#include <QObject>
#include <QPalette>

#include <memory>
#include <utility>

namespace drawercast::app {

class Asking;
class MainWindow;

/// The window in the looks and the language the maker likes. Other looks are put on; for another language the
/// window is made anew around the same open job, as words of widgets stay what they were made with.
class Program final : public QObject {
    Q_OBJECT
  public:
    /// As MainWindow’s; not shown yet.
    Program(Preferences& preferences, const QString& unsaved_folder, Asking* asking = nullptr);
    ~Program() override;

    MainWindow& window() { return *window_; } ///< another one after the language has changed

  private:
    using Looks = std::pair<Preferences::Appearance, double>;

    void follow();
    void speak();

    Preferences& preferences_;
    QString unsaved_folder_;
    Asking* asking_;
    QPalette desktop_;
    Looks looks_;
    theme::Theme worn_;
    language::Language language_;
    std::unique_ptr<language::Spoken> spoken_;
    std::unique_ptr<MainWindow> window_;
};

} // namespace drawercast::app
