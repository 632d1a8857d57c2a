// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/icons.h"

#include <QIconEngine>

#include <optional>

namespace drawercast::theme {

/// Renders one of our drawings on demand, with the two placeholder colors of the file replaced by `inks`, or
/// by the application palette's where none are given. Renderings are kept in QPixmapCache by name, size and
/// inks.
class IconEngine final : public QIconEngine {
  public:
    IconEngine(QString name, std::optional<IconInks> inks);

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) override;
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override;
    QSize actualSize(const QSize& size, QIcon::Mode mode, QIcon::State state) override;
    QIconEngine* clone() const override;
    QString key() const override;
    bool isNull() override;

  private:
    IconInks inks_for(QIcon::Mode mode) const;

    QString name_;
    std::optional<IconInks> inks_;
};

/// The drawing `name` with `inks` in place of the placeholder colors, as SVG text. Demands a known name.
QByteArray icon_svg(const QString& name, const IconInks& inks);

} // namespace drawercast::theme
