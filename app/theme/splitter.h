// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSplitter>

namespace drawercast::theme {

/// A splitter whose handle is seen as a line of 1 px but can be taken hold of over 7: Qt's own thin handle
/// gives 5.
class Splitter : public QSplitter {
  public:
    explicit Splitter(Qt::Orientation orientation, QWidget* parent = nullptr);

  protected:
    QSplitterHandle* createHandle() override;
};

} // namespace drawercast::theme
