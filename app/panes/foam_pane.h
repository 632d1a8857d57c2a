// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/foam_figures.h"

#include <QWidget>

#include <vector>

class QFrame;
class QGridLayout;
class QLabel;
class QToolButton;

namespace drawercast::app {

class Document;
class Head;
class Selection;

/// The foam answer of the shown drawer. Each figure is a button that opens its explanation; figures of a
/// drawer with something to mend are named as not final.
class FoamPane final : public QWidget {
    Q_OBJECT
  public:
    FoamPane(const Document& document, const Selection& selection, QWidget* parent = nullptr);

    const std::vector<FoamFigure>& figures() const { return figures_; }
    void explain(const QString& id); ///< opens the explanation of a figure; unknown ids do nothing
    bool explaining() const { return !explained_.isEmpty(); }

  private:
    void refresh();
    void show_rows();
    void show_explanation();

    const Document& document_;
    const Selection& selection_;
    std::vector<FoamFigure> figures_;
    DosingUnit unit_ = DosingUnit::mass;
    QString explained_; ///< id; empty: none is open
    Head* head_;
    QLabel* none_;
    QGridLayout* grid_;
    std::vector<QToolButton*> values_;
    std::vector<QLabel*> labels_;
    QToolButton* unit_button_;
    QLabel* explanation_;
};

} // namespace drawercast::app
