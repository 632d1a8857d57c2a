// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

namespace drawercast::app {

/// The words beside a field: what may be typed there, what is still missing, or what is wrong with what was
/// typed, marked by the square of a mend. Two lines; the rest is in its tool tip.
class RowNote final : public QWidget {
    Q_OBJECT
  public:
    explicit RowNote(QWidget* parent = nullptr);

    void set_hint(const QString& hint);
    enum class Tone { missing, wrong };
    void set_problem(const QString& problem, Tone tone = Tone::wrong); ///< empty: the hint is shown again
    const QString& problem() const { return problem_; }
    const QString& words() const { return problem_.isEmpty() ? hint_ : problem_; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void show_words();

    QString hint_;
    QString problem_;
    Tone tone_ = Tone::wrong;
};

} // namespace drawercast::app
