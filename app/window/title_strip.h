// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "canvas/sheet_table.h"

#include <QWidget>

#include <optional>
#include <vector>

class QMenu;
class QToolButton;

namespace drawercast::app {

/// The title block under a sheet: its name, which way it is seen, and the sheet's settings as buttons. Cells
/// give way where room is scarce; name, way seen and scale never do.
class TitleStrip final : public QWidget {
    Q_OBJECT
  public:
    explicit TitleStrip(QWidget* parent = nullptr);

    struct Shown {
        QString sheet;
        Seen seen = Seen::drawer;
        QString scale; ///< of these four an empty one has no cell
        QString grid;
        QString snap;
        QString unit;
        QString job;
        bool changed = false; ///< since its templates were printed: said whatever else gives way
        QString drawer;
        job::DisplayUnits units = job::DisplayUnits::mm;
        double ladder_mm = 0; ///< depth at the legend's end; 0: no legend
        bool operator==(const Shown&) const = default;
    };
    void show(const Shown& shown);

    enum Cell { scale_cell, grid_cell, snap_cell, unit_cell, cell_count };
    void set_menu(Cell cell, QMenu* menu); ///< owned by the caller
    bool says_changed() const { return shown_.changed && job_; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    struct Place { ///< of a cell, px
        int left = 0;
        int width = 0;
    };
    void lay_out();
    void set_words();
    QString job_caption() const;
    QString job_words() const;
    QFont small() const;
    QFont bold() const;
    QFont drafting() const;
    void paint_cell(QPainter& painter, const Place& place, const QString& caption,
                    const QString& words) const;
    void paint_legend(QPainter& painter, const Place& place) const;

    Shown shown_;
    QStringList names_; ///< of the buttons
    std::vector<QToolButton*> buttons_;
    Place name_, seen_;
    std::vector<std::optional<Place>> cells_;
    std::optional<Place> legend_, job_, drawer_;
};

} // namespace drawercast::app
