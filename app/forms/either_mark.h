// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDoubleSpinBox>

namespace drawercast::app {

/// A spin box that takes a decimal point and a decimal comma alike, and shows the language's.
class EitherMark final : public QDoubleSpinBox {
  public:
    explicit EitherMark(QWidget* parent = nullptr);

  protected:
    QValidator::State validate(QString& text, int& at) const override;
    double valueFromText(const QString& text) const override;
    QString textFromValue(double value) const override;
};

} // namespace drawercast::app
