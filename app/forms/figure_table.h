// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

class QLabel;

namespace drawercast::app {

/// Figures under each other as rich text for a label: what they are of at the left, the figures flush right.
class FigureTable {
  public:
    /// `gap_px` between columns, `leading_px` above and below each row.
    FigureTable(int gap_px, int leading_px) : gap_px_(gap_px), leading_px_(leading_px) {}

    void row(const QStringList& cells); ///< rich text
    /// Words where the figures of `columns` columns would stand.
    void remark(const QString& name, const QString& words, int columns);
    int rows() const { return rows_; }
    QString html() const;

  private:
    QString cell(const QString& rich, const char* attributes, bool last) const;

    int gap_px_, leading_px_;
    int rows_ = 0;
    QString body_;
};

QString bold(const QString& rich);

/// A label for such a table, whose figures can be chosen and copied; the caller gives it its place.
QLabel* figures_label();

} // namespace drawercast::app
