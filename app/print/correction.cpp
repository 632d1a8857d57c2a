// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/correction.h"

#include "language/say.h"
#include "language/spoken.h"

#include <cmath>

namespace drawercast::print {

bool is_none(const Correction& correction) { return correction == Correction{}; }

bool is_sound(const Correction& correction) {
    const auto sound = [](double mm) { return std::abs(mm - 100) <= correctable_mm; };
    return sound(correction.short_mm) && sound(correction.long_mm);
}

Vec stretch_of(const Correction& correction, Vec page_mm) {
    const Vec upright{100 / correction.short_mm, 100 / correction.long_mm};
    return page_mm.x <= page_mm.y ? upright : Vec{upright.y, upright.x};
}

QString sentence_of(const Correction& correction, const QString& printer) {
    return language::tr("Corrected for “%1”: its 100 mm scales measured %2 mm along the paper’s short side, "
                        "%3 mm along the long one. Printed elsewhere these pages are wrong.")
        .arg(printer, language::fixed(correction.short_mm, 2), language::fixed(correction.long_mm, 2));
}

QTransform stretched(const Page& page) {
    const Vec middle = px(page.size_mm) * 0.5;
    return QTransform::fromTranslate(-middle.x, -middle.y) *
           QTransform::fromScale(page.stretch.x, page.stretch.y) *
           QTransform::fromTranslate(middle.x, middle.y);
}

} // namespace drawercast::print
