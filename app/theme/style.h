// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/palette.h"

#include <QProxyStyle>

class QStyleOptionToolButton;

namespace drawercast::theme {

/// The drafting look of all controls: Fusion for behavior, our own two weights, square corners and three
/// pencils for what is seen. Colors come from the Theme it was made with; another theme is another Style.
///
/// A QTabBar with the dynamic property "numbered" set to true has each tab's number in a box before its
/// words.
class Style final : public QProxyStyle {
  public:
    /// `text_scale`: 1 is as drawn; every measure that holds words grows with it (0.75 … 3).
    explicit Style(const Theme& theme, double text_scale = 1.0);

    const Theme& theme() const { return theme_; }

    void polish(QWidget* widget) override;
    void polish(QPalette& palette) override;
    using QProxyStyle::polish;
    QPalette standardPalette() const override;

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;

    QRect subElementRect(SubElement element, const QStyleOption* option,
                         const QWidget* widget) const override;
    QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                         const QWidget* widget) const override;
    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                           const QWidget* widget) const override;
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* result) const override;
    QIcon standardIcon(StandardPixmap which, const QStyleOption* option,
                       const QWidget* widget) const override;
    QPixmap standardPixmap(StandardPixmap which, const QStyleOption* option,
                           const QWidget* widget) const override;

  private:
    int scaled(int pixels) const;
    bool paint_primitive(PrimitiveElement element, const QStyleOption& option, QPainter& painter,
                         const QWidget* widget) const;
    bool paint_panel(PrimitiveElement element, const QStyleOption& option, QPainter& painter,
                     const QWidget* widget) const;
    bool paint_control(ControlElement element, const QStyleOption& option, QPainter& painter,
                       const QWidget* widget) const;

    void draw_menu_button(const QStyleOptionToolButton& button, QPainter& painter,
                          const QWidget* widget) const;

    static constexpr int menu_arrow_room = 14; ///< px beside the words of a tool button that opens a menu

    Theme theme_;
    double text_scale_;
};

} // namespace drawercast::theme
