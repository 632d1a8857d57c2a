// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/air_glimpse.h"
#include "canvas/arrange_tool.h"
#include "canvas/canvas_layers.h"
#include "canvas/canvas_port.h"
#include "canvas/live_marks.h"
#include "canvas/measure_tool.h"
#include "canvas/object_drop.h"
#include "canvas/sheet_contents.h"
#include "canvas/turn_tool.h"
#include "canvas/vent_tool.h"
#include "theme/palette.h"

#include <QWidget>

#include <optional>

namespace drawercast::app {

class Document;
class Preferences;
class Selection;

/// A sheet on the screen: the view of it and its layers. What it shows is in SheetContents, what pointer and
/// keys do on it in the tool of the sheet; the canvas hands them what happens.
class SheetCanvas final : public QWidget, public CanvasPort {
    Q_OBJECT
  public:
    SheetCanvas(Document& document, Selection& selection, const Preferences& preferences,
                QWidget* parent = nullptr);

    void set_theme(const theme::Theme& theme);
    void show_sheet(SheetId sheet);
    SheetId sheet() const { return contents_.sheet(); }
    /// Where the mold fills last, followed while a pocket is moved.
    AirGlimpse& air_glimpse() { return glimpse_; }
    bool shows_old() const { return contents_.old(); }
    bool empty() const { return !still_drawn_; } ///< there was nothing to draw: words say why
    /// What stands in a drawer without pockets: a heading, then a line each.
    void set_invitation(const QStringList& lines);

    void fit();                  ///< the whole sheet into the view
    void zoom_by(double factor); ///< about the view's middle
    void zoom_to(const shape::Box& box);
    double reduction() const; ///< 1 : so much, by the screen's own size

    /// From where the build-up is looked at, and how far it is apart.
    const buildup::Look& look() const { return turn_.look(); }
    void set_look(const buildup::Look& look) { turn_.set_look(look); }

    bool arranging() const {
        return contents_.spec().tool == SheetTool::arrange;
    }                            ///< the drawer plan is shown
    void set_measuring(bool on); ///< distances are taken instead of pockets moved
    bool measuring() const { return measuring_; }
    const std::optional<Measured>& measured_distance() const { return ruler_.measured(); }
    std::optional<std::size_t> vent_chosen() const; ///< its number among air()'s; nothing on other sheets
    /// Where the pointer is on the sheet, or was when a menu opened; nothing while it is elsewhere.
    std::optional<shape::Vec> pointer_mm() const { return pointer_mm_; }

    // ---- CanvasPort ----
    const job::Job& job() const override;
    const job::Job& shown() const override;
    const plan::DrawerPlan* drawer_plan() const override { return contents_.drawer_plan(); }
    const job::Drawer* drawer() const override { return contents_.drawer(); }
    void preview(std::optional<job::Job> job, const std::vector<std::string>& moving = {}) override;
    void commit(const QString& what, job::Job job) override;
    void commit_nudge(const QString& what, job::Job job, const QString& key) override;
    const std::vector<std::string>& chosen() const override;
    void choose(std::vector<std::string> subjects) override;
    std::optional<std::size_t> chosen_notch() const override;
    void choose_notch(const std::string& subject, std::size_t notch) override;
    const layout::Check* check_at(QPointF px) const override;
    void choose_check(layout::Check check) override;
    const plan::DrawerPlan* built_plan() const override { return contents_.built_plan(); }
    std::shared_ptr<const air::Answer> air() const override { return contents_.air(); }
    std::optional<shape::Vec> chosen_vent() const override;
    void choose_vent(std::optional<shape::Vec> at) override;
    const ViewMap& view() const override { return view_; }
    QSizeF view_size() const override { return size(); }
    void pan(QPointF by_px) override;
    bool snapping() const override;
    double grid_mm() const override;
    void show_guides(const layout::Snap& snap) override { aids_.guides = snap; }
    void show_band(const std::optional<shape::Box>& band) override;
    void show_note(const std::optional<LiveNote>& note) override { aids_.note = note; }
    void redraw_live() override;
    void say(const QString& text) override { emit said(text); }
    void ask_for(Form form) override { emit form_wanted(form); }

  signals:
    void look_changed();
    void view_changed();
    void pointer_at(QPointF mm);
    void pointer_left();
    void said(const QString& text);
    void context_menu_wanted(QPoint global, drawercast::app::MenuOf of);
    void measuring_changed(bool on);
    void form_wanted(drawercast::app::CanvasPort::Form form);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    bool event(QEvent* event) override;

  private:
    CanvasTool& sheet_tool(); ///< of the sheet shown: the keys' and the menus'
    CanvasTool& tool();       ///< the pointer's
    void point(QPointF px);
    void show_cursor();
    void open_menu(QPointF px);
    void escape();

    void on_shown_changed();
    void on_selection_changed();
    void on_replaced();
    void drop_tools();
    void end_moving();
    void describe();
    void tell_chosen();
    void set_progress(double done);

    void set_view(const ViewMap& view);
    void zoom_about(QPointF px, double factor);
    void refit(); ///< as redraw(), but the whole sheet in view if that was so before
    ViewMap fitted_to(Drawn sheet) const;
    SheetContents::Look sheet_look() const;

    void redraw();
    void redraw_over(); ///< moving pockets, checks, blue pencil
    QStringList missing() const;
    sheets::Inks still_ink(sheets::Taken& taken);
    sheets::Inks plan_ink(const plan::DrawerPlan& plan, const job::Drawer& drawer) const;
    bool moves(const std::string& subject) const;
    void update_frame();

    Document& document_;
    Selection& selection_;
    const Preferences& preferences_;
    theme::Theme theme_;
    QStringList invitation_;
    SheetContents contents_;
    std::string shown_drawer_;
    ViewMap view_;
    bool fitted_ = true; ///< until the maker zooms or pans, the sheet follows the window's size

    CanvasTool look_on_; ///< for sheets where nothing can be done
    ArrangeTool arrange_;
    VentTool vents_;
    TurnTool turn_;
    MeasureTool ruler_;
    ObjectDrop drop_;
    bool measuring_ = false;
    std::optional<shape::Vec> pointer_mm_;
    std::optional<QPointF> panning_from_;
    Qt::MouseButton panning_with_ = Qt::NoButton;
    bool space_held_ = false;

    std::vector<std::string> moving_;  ///< left out of the picture, drawn over it
    std::vector<sheets::Path> ghosts_; ///< where they were, mm
    AirGlimpse glimpse_;               ///< while something moves
    LiveAids aids_;
    CanvasLayers layers_;
    bool zones_ = false; ///< lettered while a check is chosen
    bool still_drawn_ = true;
    bool stale_ = false;  ///< to be drawn once it is shown
    double progress_ = 0; ///< of the slow answer, 0 … 1
};

} // namespace drawercast::app
