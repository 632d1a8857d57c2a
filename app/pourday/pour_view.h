// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/pour_log.h"
#include "plan/pour_steps.h"

#include <QTimer>
#include <QWidget>

#include <functional>

namespace drawercast::app {

/// What the view needs of whoever owns the job.
struct PourPort {
    std::function<plan::PourRun()> run; ///< of the drawer, as the log has it now
    std::function<std::vector<plan::PourStep>()> steps;
    /// Marks a step, or takes the last mark back, and saves; what went wrong with saving, else nothing.
    std::function<QString(const std::string& step)> mark;
    std::function<QString()> take_back;
    std::function<double()> now_s; ///< since 1970
};

/// The pour in letters to be read from two meters: what is next, how long there is for it, what follows.
/// Space or Enter marks it as done, Backspace takes the last mark back, Escape leaves; the log goes on. The
/// clock is the log's, so that closing or killing the program does not stop it.
class PourView final : public QWidget {
    Q_OBJECT
  public:
    PourView(const QString& title, PourPort port, QWidget* parent = nullptr);

    const plan::PourStep* next() const; ///< nullptr: all is done
    void refresh();                     ///< the job or its plan is another
    QString clock_words() const;        ///< "1:47", the stopwatch; empty before it runs
    const QString& trouble() const { return trouble_; }

  signals:
    void finished(); ///< all marked

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

  private:
    void mark();
    void take_back();
    void tick();
    void sound(double left_s);

    QString title_;
    PourPort port_;
    plan::PourRun run_;
    std::vector<plan::PourStep> steps_;
    QString trouble_;
    QTimer timer_;
    int last_whole_s_ = 1000000; ///< of the countdown, when last looked at
};

} // namespace drawercast::app
