// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

#include <vector>

namespace drawercast::app {

class Document;
class Selection;

/// What is left of the right pane in a narrow window: counts of the checks in their shapes, and the limits of
/// the foam answer as upright gauges; its accessible name says all of that in words. Clicked, it opens the
/// pane over the sheet.
class Rail final : public QAbstractButton {
    Q_OBJECT
  public:
    Rail(const Document& document, const Selection& selection, QWidget* parent = nullptr);

    QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    struct Gauge {
        QString name;
        double share = 0; ///< of its limit; over 1 is past it
        bool operator==(const Gauge&) const = default;
    };
    struct Shown {
        int mends = 0, looks = 0, notes = 0;
        std::vector<Gauge> gauges;
        bool operator==(const Shown&) const = default;
    };
    Shown shown_now() const;
    void refresh();
    int paint_counts(QPainter& painter, int top) const;
    void paint_gauge(QPainter& painter, int top, const Gauge& gauge) const;

    const Document& document_;
    const Selection& selection_;
    Shown shown_;
};

} // namespace drawercast::app
