// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/air_glimpse.h"
#include "canvas/canvas_port.h"
#include "canvas/live_marks.h"
#include "canvas/measure_tool.h"
#include "canvas/select_tool.h"
#include "canvas/sheet_table.h"
#include "canvas/still_picture.h"
#include "canvas/vent_tool.h"
#include "sheets/inking.h"
#include "theme/palette.h"

#include <QTimer>
#include <QWidget>

#include <optional>

namespace drawercast::app {

class Document;
class Preferences;
class Selection;

/// A sheet on the screen: the drawer plan, to arrange on, or another one of the table, to look at. Three
/// layers, each of inks: what stands still is kept as a picture, over it what moves and the checks, over that
/// the blue pencil. Each is painted again only where its inks became others.
class SheetCanvas final : public QWidget, public CanvasPort {
    Q_OBJECT
  public:
    SheetCanvas(Document& document, Selection& selection, const Preferences& preferences,
                QWidget* parent = nullptr);

    enum class About { pocket, check, vent, sheet }; ///< what a menu is asked for

    void set_theme(const theme::Theme& theme);
    void show_sheet(SheetId shown);
    SheetId shown() const { return shown_; }
    /// Where the mold fills last, followed while a pocket is moved.
    AirGlimpse& air_glimpse() { return glimpse_; }
    /// What is drawn is of an older job; the answer for this one is being worked out.
    bool shows_old() const;
    bool empty() const { return !still_drawn_; } ///< there was nothing to draw: words say why
    /// What stands in a drawer without pockets: a heading, then a line each.
    void set_invitation(const QStringList& lines);

    void fit();                  ///< the whole sheet into the view
    void zoom_by(double factor); ///< about the view's middle
    void zoom_to(const shape::Box& box);
    double reduction() const; ///< 1 : so much, by the screen's own size
    /// The check whose plate or badge stands at a place of the view; null: none.
    const layout::Check* check_at(QPointF px) const;

    /// From where the build-up is looked at, and how far it is apart.
    const buildup::Look& look() const { return look_; }
    void set_look(buildup::Look look); ///< turned by steps of `turn_step_deg`, apart 0 … 1
    static constexpr double turn_step_deg = 15;

    bool arranging() const { return spec_of(shown_).arranged; } ///< the drawer plan is shown
    void set_measuring(bool on); ///< distances are taken instead of pockets moved
    bool measuring() const { return measuring_; }
    const std::optional<Measured>& measured_distance() const { return ruler_.measured(); }
    /// "Data logger, 45 mm deep, zone E5, locked"; empty: no such pocket.
    QString spoken(const std::string& subject) const;

    // ---- CanvasPort ----
    const job::Job& job() const override;
    const plan::DrawerPlan* drawer_plan() const override;
    const job::Drawer* drawer() const override;
    void preview(std::optional<job::Job> job, const std::vector<std::string>& moving = {}) override;
    void commit(const QString& what, job::Job job) override;
    const std::vector<std::string>& chosen() const override;
    void choose(std::vector<std::string> subjects) override;
    std::optional<std::size_t> chosen_notch() const override;
    void choose_notch(const std::string& subject, std::size_t notch) override;
    const plan::DrawerPlan* built_plan() const override;
    std::shared_ptr<const air::Answer> air() const override;
    std::optional<shape::Vec> chosen_vent() const override;
    void choose_vent(std::optional<shape::Vec> at) override;
    std::optional<std::size_t> vent_chosen() const { return venting() ? vent_tool_.chosen() : std::nullopt; }
    /// Where the pointer is on the sheet, or was when a menu opened; nothing while it is elsewhere.
    std::optional<shape::Vec> pointer_mm() const { return pointer_mm_; }
    const ViewMap& view() const override { return view_; }
    QSizeF view_size() const override { return size(); }
    void pan(QPointF by_px) override;
    bool snapping() const override;
    double grid_mm() const override;
    void show_guides(const layout::Snap& snap) override { guides_ = snap; }
    void show_band(const std::optional<shape::Box>& band) override;
    void show_note(const std::optional<LiveNote>& note) override { note_ = note; }
    void say(const QString& text) override { emit said(text); }

  signals:
    void look_changed();
    void view_changed();
    void pointer_at(QPointF mm);
    void pointer_left();
    void said(const QString& text);
    void context_menu_wanted(QPoint global, drawercast::app::SheetCanvas::About about);
    void measuring_changed(bool on);
    void object_form_wanted(const QString& object); ///< a pocket of it was double-clicked
    void vent_drill_wanted();                       ///< a vent was double-clicked
    void vent_wanted();                             ///< a bare place of the plate was
    void notch_form_wanted();                       ///< the chosen notch was

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
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
    struct Board { ///< worked out once for a job: zooming and panning must not wait for it
        job::Job job;
        std::string drawer;
        std::optional<casting::PatternBoard> answer;
    };
    struct Mold { ///< likewise what is seen of it from one side: lettered at each scale
        buildup::Look look;
        std::optional<sheets::SeenMold> seen;
    };
    struct Kept { ///< likewise the marks of a sheet that is only looked at, until what is shown changes
        SheetId sheet;
        double px_per_mm; ///< of a picture with names beside it
        std::optional<Drawn> drawn;
    };
    struct Drop { ///< an object over the sheet, not yet let go
        std::string subject;
        DragGesture gesture;
        std::optional<job::Job> last;
    };

    void on_shown_changed();
    void end_moving();
    void on_selection_changed();
    void on_replaced();
    void set_view(const ViewMap& view);
    void forget_drawn();
    bool turn_key(int key);
    bool press_turn(const QMouseEvent& event);
    void drag_turn(QPointF px);
    bool turning() const { return spec_of(shown_).turned; }
    void refit(); ///< as redraw(), but the whole sheet in view if that was so before
    void redraw();
    void redraw_over(); ///< moving pockets, checks, blue pencil
    void redraw_live(); ///< blue pencil alone
    void end_measuring();
    void right_press(const QMouseEvent& event);
    bool venting() const { return spec_of(shown_).vents; }
    bool press_vent(const QMouseEvent& event);
    void point_at_vent(QPointF px);
    void choose_next_vent(int step);
    std::optional<Drawn> drawn() const;
    std::optional<Drawn> draw(const job::Job& job, const plan::Plan& plan) const;
    const std::optional<casting::PatternBoard>& board(const job::Job& job,
                                                      const plan::DrawerPlan& plan) const;
    const std::optional<sheets::SeenMold>& mold(const job::Job& job, const plan::DrawerPlan& plan) const;
    ViewMap fitted_to(Drawn sheet) const;
    sheets::Inks words_ink(const QStringList& lines, QPointF middle) const;
    QStringList missing() const;
    void set_progress(double done);
    QRect ribbon() const;
    void paint_ribbon(QPainter& painter) const;
    sheets::Inks still_ink();
    sheets::Inks invitation_ink(const plan::DrawerPlan& plan) const;
    bool moves(const std::string& subject) const;
    std::optional<LiveScene> scene() const;
    const std::vector<std::string>& measured() const;
    void update_frame();
    void point_at(QPointF px);
    void say_chosen();
    void nudge(shape::Vec by);
    void nudge_notch(shape::Vec by);
    void choose_next(int step);
    std::optional<Drop> begin_drop(const QByteArray& object, QPointF px);
    SelectTool::Keys keys(Qt::KeyboardModifiers modifiers) const;

    Document& document_;
    Selection& selection_;
    const Preferences& preferences_;
    theme::Theme theme_;
    QStringList invitation_;
    SheetId shown_ = SheetId::drawer_plan;
    ViewMap view_;
    bool fitted_ = true; ///< until the maker zooms or pans, the sheet follows the window's size
    SelectTool tool_;
    VentTool vent_tool_;
    MeasureTool ruler_;
    bool measuring_ = false;
    std::optional<std::size_t> hovered_vent_;
    std::optional<shape::Vec> pointer_mm_;
    std::optional<Drop> drop_;
    std::optional<QPointF> panning_from_;
    bool space_held_ = false;

    std::vector<std::string> moving_;  ///< left out of the picture, drawn over it
    std::vector<sheets::Path> ghosts_; ///< where they were, mm
    AirGlimpse glimpse_;               ///< while something moves
    StillPicture picture_;
    sheets::Taken still_taken_; ///< by the picture
    sheets::Inks washes_;       ///< of what moves
    sheets::Inks over_;
    sheets::Taken taken_; ///< by both
    std::vector<sheets::SetPlate> plates_;
    sheets::Inks live_;

    layout::Snap guides_;
    std::optional<shape::Box> band_;
    std::optional<LiveNote> note_;
    std::string hovered_;
    std::vector<std::string> nudged_; ///< shown with their distances for a while
    QTimer nudged_for_;
    std::string shown_drawer_;
    bool zones_ = false; ///< lettered while a check is chosen
    mutable std::optional<Board> board_;
    mutable std::optional<Kept> kept_;
    mutable std::optional<Mold> mold_;
    buildup::Look look_;
    std::optional<QPointF> turning_from_;              ///< the mold hangs on the pointer
    mutable std::shared_ptr<const air::Answer> tried_; ///< air() where the answer is old
    bool still_drawn_ = true;
    double progress_ = 0; ///< of the slow answer, 0 … 1
};

} // namespace drawercast::app
