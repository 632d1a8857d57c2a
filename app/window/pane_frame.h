// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QSplitter;

namespace drawercast::app {

/// The panes beside the sheets, and which of them are seen. In a window too narrow for all, the right one
/// folds to its rail and opens over the sheet when asked; work on the sheet folds it again.
class PaneFrame final : public QWidget {
    Q_OBJECT
  public:
    PaneFrame(QWidget* left, QWidget* middle, QWidget* right, QWidget* rail, QWidget* parent = nullptr);
    ~PaneFrame() override;

    bool left_shown() const { return left_wanted_; }
    bool right_shown() const { return narrow_ ? over_ : right_wanted_; }
    bool narrow() const { return narrow_; }
    void show_left(bool on);
    void show_right(bool on);

    /// Which panes are seen and how wide they are, as kept in the preferences. What can't be read changes
    /// nothing.
    QByteArray state() const;
    void restore(const QByteArray& state);

    static constexpr int narrow_px = 1200; ///< at the usual text size

  signals:
    void changed(); ///< a pane came or went

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void arrange();
    void fold(bool narrow);
    void take_widths();
    void set_widths();
    void focus_moved(QWidget* now);
    int narrow_at() const;

    QWidget* left_;
    QWidget* middle_;
    QWidget* right_;
    QWidget* rail_;
    QSplitter* panes_;
    int left_px_ = 264;
    int right_px_ = 320;
    bool left_wanted_ = true;
    bool right_wanted_ = true;
    bool narrow_ = false;
    bool over_ = false; ///< narrow, and the right pane lies over the sheet
};

} // namespace drawercast::app
