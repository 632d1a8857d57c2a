// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/foams_beside.h"

#include <QDialog>

#include <optional>
#include <vector>

class QGridLayout;

namespace drawercast::app {

/// Foams side by side: what each would make of the job, and a button to take it.
class FoamsDialog final : public QDialog {
    Q_OBJECT
  public:
    FoamsDialog(std::vector<plan::FoamBeside> foams, const job::Job& job, QWidget* parent = nullptr);

    std::optional<job::Foam> taken() const; ///< nothing: the job keeps its own

  private:
    void add_row(QGridLayout& grid, const QString& caption, const QStringList& words);
    void add_buttons(QGridLayout& grid);

    std::vector<plan::FoamBeside> foams_;
    std::optional<std::size_t> taken_;
};

} // namespace drawercast::app
