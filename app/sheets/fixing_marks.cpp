// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/fixing_marks.h"

#include "casting/fixing.h"

#include "language/spoken.h"

namespace drawercast::sheets {

namespace {

double diameter_of(casting::Holder by) {
    switch (by) {
    case casting::Holder::screw:
        return casting::screw_mm;
    case casting::Holder::thin_screw:
        return casting::thin_screw_mm;
    case casting::Holder::pin:
        return casting::pin_mm;
    }
    return 0;
}

} // namespace

Sign sign_of(casting::Holder by) { return by == casting::Holder::pin ? Sign::pin : Sign::screw; }

QString words_of(casting::Holder by) {
    return (by == casting::Holder::pin ? language::tr("pin %1 mm") : language::tr("screw %1 mm"))
        .arg(diameter_of(by));
}

QString remark_of(casting::Holder by) {
    if (by == casting::Holder::screw) return {};
    return by == casting::Holder::pin ? language::tr("pin")
                                      : language::tr("%1 mm", "a screw's diameter").arg(diameter_of(by));
}

} // namespace drawercast::sheets
