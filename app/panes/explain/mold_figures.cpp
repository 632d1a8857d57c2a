// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/explain/mold_figures.h"

namespace drawercast::app {

std::vector<MoldFigure> mold_figures(const explain::Answer& answer) {
    std::vector<MoldFigure> figures;
    if (answer.drawer.plate) explain::add_plate(figures, answer);
    if (answer.drawer.air) explain::add_vents(figures, answer);
    if (answer.drawer.plate && answer.drawer.times) explain::add_closing(figures, answer);
    return figures;
}

QString mold_remark(MoldPart part, const explain::Answer& answer) {
    switch (part) {
    case MoldPart::plate:
        return answer.drawer.plate ? explain::plate_remark(answer) : QString();
    case MoldPart::vents:
        return answer.drawer.air ? explain::vents_remark(answer) : QString();
    case MoldPart::closing:
        return answer.drawer.plate ? explain::closing_remark(answer) : QString();
    }
    return {};
}

} // namespace drawercast::app
