// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/explain/mold_figures.h"
#include "panes/explain_host.h"

#include <QWidget>

#include <array>
#include <map>
#include <string>

class QAction;
class QVBoxLayout;

namespace drawercast::app {

class PlotView;
class Document;
class FigureButton;
class Head;
class Selection;

/// What the mold must be: plate, vents, and whether it can be closed in time. Each figure explains itself. It
/// shows the last answer there is; hatched, and said so, while that is of an older job. Folded to its heads
/// while one lays out.
class MoldPane final : public QWidget {
    Q_OBJECT
  public:
    MoldPane(Document& document, const Selection& selection, QWidget* parent = nullptr);

    /// All parts open, this one first, or none.
    void open_for(std::optional<MoldPart> part);
    bool opened(MoldPart part) const;
    const std::vector<MoldFigure>& figures() const { return figures_; }
    bool shows_old() const { return old_; }
    void explain(const QString& id);
    QString explained() const;

  signals:
    void action_wanted(const QString& action); ///< from an explanation: where a term is changed
    void guide_wanted(const QString& id);      ///< more about that figure

  protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    class Hatch;
    struct Part {
        QString name;
        QString remark;
        Head* head = nullptr;
        QAction* fold = nullptr;
        QWidget* body = nullptr;
        QVBoxLayout* rows = nullptr;
        PlotView* chart = nullptr;
        Hatch* hatch = nullptr;
        bool wanted = false;    ///< open
        bool chart_old = false; ///< it is not of the last answer; made when next open
    };
    /// All that refresh() shows: while it stays the same, so does the pane.
    struct Shows {
        int built_number = -1;
        std::string drawer;
        job::DisplayUnits units = job::DisplayUnits::mm;
        bool current = false;
        bool busy = false;

        bool same_answer(const Shows& other) const {
            return built_number == other.built_number && drawer == other.drawer && units == other.units;
        }
        bool operator==(const Shows&) const = default;
    };
    void add_part(MoldPart part);
    static void name_fold(const Part& part);
    void refresh();
    void refresh_part(MoldPart which, const std::optional<explain::Answer>& answer);
    void renew_chart(MoldPart which);
    void fold(MoldPart which, bool open);
    FigureButton& button(const MoldFigure& figure);
    std::vector<FoamFigure> plain() const;
    const plan::DrawerPlan* built() const;
    job::Job built_job() const; ///< in the units that are shown

    Document& document_;
    const Selection& selection_;
    Shows shows_;
    std::vector<MoldFigure> figures_;
    bool old_ = false;
    std::array<Part, 3> parts_;
    std::map<QString, FigureButton*> buttons_;
    QVBoxLayout* column_;
    ExplainHost explain_{*this, buttons_};
};

} // namespace drawercast::app
