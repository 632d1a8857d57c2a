// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/explain/answer.h"

#include <QObject>
#include <QPointer>

#include <map>
#include <vector>

namespace drawercast::app {

class ExplainSheet;
class FigureButton;

/// The explanations of a pane's figures: one sheet over the window, made when first opened, and the button of
/// the figure it explains marked while it is open. A member of its pane, behind the buttons.
class ExplainHost final : public QObject {
    Q_OBJECT
  public:
    using Buttons = std::map<QString, FigureButton*>; ///< by the figure's id
    ExplainHost(QWidget& pane, const Buttons& buttons) : pane_(pane), buttons_(buttons) {}
    ~ExplainHost() override; ///< the sheet goes with it

    /// Opens the explanation of a figure, or closes it where it is open.
    void explain(const QString& id, const std::vector<FoamFigure>& figures);
    void refresh(const std::vector<FoamFigure>& figures); ///< closes where the figure is gone
    void leave();
    QString explained() const;   ///< id; empty: none is open
    QString explanation() const; ///< its words

  signals:
    void action_wanted(const QString& action); ///< where a term is changed
    void guide_wanted(const QString& id);      ///< more about that figure

  private:
    ExplainSheet& sheet();

    QWidget& pane_;
    const Buttons& buttons_;
    QPointer<ExplainSheet> sheet_;
};

} // namespace drawercast::app
