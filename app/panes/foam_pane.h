// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/explain/foam_figures.h"
#include "panes/explain_host.h"

#include <QWidget>

#include <map>
#include <vector>

class QGridLayout;
class QLabel;
class QTimer;
class QToolButton;

namespace drawercast::app {

class Document;
class DoseGauge;
class FigureButton;
class Head;
class Selection;

/// The foam answer of the shown drawer: what to mix, how full the mold gets, how hard it pushes. Each figure
/// explains itself; the overpack is set on the band itself. Figures of a drawer with something to mend are
/// named as not final.
class FoamPane final : public QWidget {
    Q_OBJECT
  public:
    FoamPane(Document& document, const Selection& selection, QWidget* parent = nullptr);

    const std::vector<FoamFigure>& figures() const { return figures_; }
    DoseGauge& dose_gauge() { return *gauge_; }
    void explain(const QString& id); ///< opens the explanation of a figure, or closes it where it is open
    QString explained() const;       ///< id; empty: none is open
    QString explanation() const;     ///< its words

  signals:
    void action_wanted(const QString& action); ///< from an explanation: where a term is changed
    void guide_wanted(const QString& id);      ///< more about that figure

  private:
    void lay_out();
    void add_figure(const QString& id, int row, int column, int columns);
    void connect_dose();
    void refresh_soon();
    void refresh();
    void refresh_gauges();
    void show_rows();
    void set_overpack(std::optional<double> overpack);

    Document& document_;
    const Selection& selection_;
    std::vector<FoamFigure> figures_;
    DosingUnit unit_ = DosingUnit::mass;
    Head* head_;
    QLabel* none_;
    QWidget* answer_;
    QGridLayout* grid_;
    std::map<QString, FigureButton*> buttons_;
    DoseGauge* gauge_;
    QLabel* deciding_;
    QToolButton* automatic_;
    QToolButton* unit_button_;
    QTimer* later_;
    ExplainHost explain_{*this, buttons_};
};

} // namespace drawercast::app
