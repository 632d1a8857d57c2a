// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/badge.h"

#include "sheets/badge.h"
#include "sheets/paint.h"
#include "theme/theme_of.h"

#include <QPainter>

namespace drawercast::app {

Badge::Badge(layout::Severity severity, QWidget* parent) : QWidget(parent), severity_(severity) {
    setFixedSize(sizeHint());
    setAttribute(Qt::WA_TransparentForMouseEvents); // what it lies on is clicked
}

void Badge::set_count(int count) {
    if (count == count_) return;
    count_ = count;
    setAccessibleName(severity_ == layout::Severity::mend   ? tr("%1 to mend").arg(count)
                      : severity_ == layout::Severity::look ? tr("%1 to look at").arg(count)
                                                            : tr("notes: %1").arg(count));
    update();
}

QSize Badge::sizeHint() const { return {22, 22}; }

void Badge::paintEvent(QPaintEvent*) {
    if (count_ == 0) return;
    QPainter painter(this);
    sheets::CheckTag tag;
    tag.number = count_;
    tag.severity = severity_;
    sheets::Inks inks;
    sheets::write_badge(inks, {width() / 2.0, height() / 2.0}, 1, tag, {theme::Face::bold, 12},
                        theme::theme_of(this));
    painter.setRenderHint(QPainter::Antialiasing);
    sheets::paint(inks, painter);
}

} // namespace drawercast::app
