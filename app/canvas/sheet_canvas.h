// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/canvas_port.h"
#include "canvas/live_marks.h"
#include "canvas/select_tool.h"
#include "sheets/ink.h"
#include "sheets/sheet.h"
#include "theme/palette.h"

#include <QPixmap>
#include <QWidget>

#include <optional>

namespace drawercast::app {

class Document;
class Preferences;
class Selection;

/// A sheet on the screen: the drawer plan, to arrange on, or the pattern board, to look at. What stands still
/// is kept as a picture; a drag repaints only where something changed.
class SheetCanvas final : public QWidget, public CanvasPort {
    Q_OBJECT
  public:
    enum class Shown { drawer_plan, pattern_board };

    SheetCanvas(Document& document, Selection& selection, const Preferences& preferences,
                QWidget* parent = nullptr);

    void set_theme(const theme::Theme& theme);
    void show_sheet(Shown shown);
    Shown shown() const { return shown_; }

    void fit();                  ///< the whole sheet into the view
    void zoom_by(double factor); ///< about the view's middle
    void zoom_to(const shape::Box& box);
    double reduction() const; ///< 1 : so much, by the screen's own size

    // ---- CanvasPort ----
    const job::Job& job() const override;
    const plan::DrawerPlan* drawer_plan() const override;
    const job::Drawer* drawer() const override;
    void preview(std::optional<job::Job> job) override;
    void commit(const QString& what, job::Job job) override;
    const std::vector<std::string>& chosen() const override;
    void choose(std::vector<std::string> subjects) override;
    const ViewMap& view() const override { return view_; }
    void pan(QPointF by_px) override;
    bool snapping() const override;
    double grid_mm() const override;
    void show_guides(const layout::Snap& snap) override;
    void show_band(const std::optional<shape::Box>& band) override;
    void say(const QString& text) override { emit said(text); }

  signals:
    void view_changed();
    void pointer_at(QPointF mm);
    void pointer_left();
    void said(const QString& text);
    void context_menu_wanted(QPoint global);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    bool event(QEvent* event) override;

  private:
    struct Drawn;  ///< marks of the sheet, its area and room
    struct Board { ///< worked out once for a job: zooming and panning must not wait for it
        job::Job job;
        std::string drawer;
        std::optional<casting::PatternBoard> answer;
    };

    void on_shown_changed();
    void on_selection_changed();
    void set_view(const ViewMap& view);
    void redraw();        ///< everything, picture included
    void redraw_moving(); ///< the moving pockets and the checks
    Drawn drawn() const;
    const std::optional<casting::PatternBoard>& board(const plan::DrawerPlan& plan) const;
    void draw_still_picture();
    bool moves(const std::string& subject) const;
    void paint_live(QPainter& painter) const; ///< blue pencil
    LiveScene scene(const plan::DrawerPlan& plan) const;
    void paint_grid(QPainter& painter) const;
    void nudge(shape::Vec by);
    void choose_next(int step);
    std::optional<job::Job> with_dropped(const QByteArray& object, QPointF px) const;
    SelectTool::Keys keys(Qt::KeyboardModifiers modifiers) const;

    Document& document_;
    Selection& selection_;
    const Preferences& preferences_;
    theme::Theme theme_;
    Shown shown_ = Shown::drawer_plan;
    ViewMap view_;
    bool fitted_ = true; ///< until the maker zooms or pans, the sheet follows the window's size
    SelectTool tool_;
    std::optional<QPointF> panning_from_;
    bool space_held_ = false;
    std::vector<std::string> moving_; ///< left out of the picture, drawn over it
    QPixmap picture_;
    sheets::Inks over_;
    QRectF over_reach_;
    layout::Snap guides_;
    std::optional<shape::Box> band_;
    std::string hovered_;
    std::string shown_drawer_;
    mutable std::optional<Board> board_;
};

} // namespace drawercast::app
