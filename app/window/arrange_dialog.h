// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/need.h"

#include "window/arranging.h"

#include <QDialog>
#include <QElapsedTimer>

class QLabel;
class QProgressBar;
class QPushButton;

namespace drawercast::app {

/// Stands over the window while a search arranges, and lets nothing else be changed meanwhile. The sheet
/// behind it shows the best so far. Left by keeping that, by going back to what was, or by the search itself.
class ArrangeDialog final : public QDialog {
    Q_OBJECT
  public:
    /// `need`: what all of it takes of the room, a sentence.
    ArrangeDialog(Arranging::Task task, const QString& need, QWidget* window);

    void begin();              ///< shown in the window's lower right corner, so that the whole plan is seen
    void give_up() { drop(); } ///< nothing it finds counts any more
    void reject() override { finish(); } ///< Escape and the frame's button keep the best

  signals:
    void better(const drawercast::arrange::Arranged& found);
    void kept(const drawercast::arrange::Arranged& found);
    void dropped();

  private:
    void finish();
    void drop();
    void show_best(const arrange::Arranged& found);
    void end(const arrange::Arranged& found);

    Arranging arranging_;
    QElapsedTimer shown_for_;
    QLabel* words_;
    QProgressBar* progress_;
    QPushButton* keep_;
    QPushButton* back_;
    bool dropped_ = false;
};

/// "Placed: 12. Moved: 3. Found no room: 2."
QString arranged_words(const arrange::Arranged& found);
/// "Of the room within the edges, objects need 60 %, with their fit 71 %, with walls 104 %."
QString need_words(const arrange::Need& need);
/// Of places that the job's own walls leave too narrow for foam.
QString slot_words(int count);

} // namespace drawercast::app
