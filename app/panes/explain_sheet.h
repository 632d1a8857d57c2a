// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/explain/answer.h"

#include <QFrame>
#include <QPointer>

#include <vector>

class QLabel;
class QTextBrowser;
class QToolButton;

namespace drawercast::app {

/// How a figure comes about, on a sheet laid over the drawing beside the pane it belongs to. It follows the
/// figures while it is open, so that one can drag the dose and watch; Escape, its button or work elsewhere
/// closes it.
class ExplainSheet final : public QFrame {
    Q_OBJECT
  public:
    /// Over the window of `beside`, at its left (or right, where there is no room).
    explicit ExplainSheet(QWidget* beside);
    ~ExplainSheet() override;

    void open(const QString& id, const std::vector<FoamFigure>& figures);
    void refresh(const std::vector<FoamFigure>& figures); ///< closes where the figure is gone
    void leave();
    const QString& shown() const { return id_; } ///< id; empty: closed
    QString text() const;

  signals:
    void changed();                            ///< another figure, or closed
    void action_wanted(const QString& action); ///< "job.foam": where a term is changed
    void guide_wanted(const QString& id);      ///< more about that figure

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void show_figure(const FoamFigure& figure);
    void follow_link(const QString& link);
    void place();
    void focus_moved(QWidget* now);

    QPointer<QWidget> beside_;
    QString id_;
    std::vector<FoamFigure> figures_;
    QLabel* title_;
    QToolButton* close_;
    QTextBrowser* text_;
};

} // namespace drawercast::app
