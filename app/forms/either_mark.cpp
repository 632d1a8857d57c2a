// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/either_mark.h"

#include "language/spoken.h"

namespace drawercast::app {

namespace {

QString with_point(QString text) { return text.replace(QLatin1Char(','), QLatin1Char('.')); }

} // namespace

EitherMark::EitherMark(QWidget* parent) : QDoubleSpinBox(parent) {
    setLocale(QLocale::c()); // what is shown is made from its text
}

QValidator::State EitherMark::validate(QString& text, int& at) const {
    QString plain = with_point(text);
    return QDoubleSpinBox::validate(plain, at);
}

double EitherMark::valueFromText(const QString& text) const {
    return QDoubleSpinBox::valueFromText(with_point(text));
}

QString EitherMark::textFromValue(double value) const {
    return language::figures(QDoubleSpinBox::textFromValue(value).toStdString());
}

} // namespace drawercast::app
