// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/page.h"

#include <QIcon>
#include <QWidget>

namespace drawercast::app {

/// One page as it will lie on the printer's tray, whole, on white paper whatever the theme.
class PagePreview final : public QWidget {
    Q_OBJECT
  public:
    explicit PagePreview(QWidget* parent = nullptr);

    void show_page(const print::Page* page);    ///< must live while it is shown; null: none
    void set_empty_words(const QString& words); ///< said where there is no page

    QSize sizeHint() const override { return {430, 560}; }
    QSize minimumSizeHint() const override { return {240, 300}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    const print::Page* page_ = nullptr;
    QString empty_words_;
};

/// The page as small as a list shows it.
QIcon thumbnail(const print::Page& page, QSize box, double pixel_ratio, const QColor& edge);

} // namespace drawercast::app
