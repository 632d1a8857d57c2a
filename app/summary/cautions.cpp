// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/cautions.h"

#include "language/spoken.h"

namespace drawercast::summary {

std::vector<QString> cautions() {
    return {
        language::tr(
            "One of the two parts contains isocyanate: here it is called part A. Some labels call it B: "
            "go by the safety data sheet and enter that one as A. It can sensitize: after that a trace "
            "is enough to bring on asthma; whoever has asthma or has reacted to it before stays away. "
            "Ventilation, gloves, eye and breathing protection as the safety data sheet and local rules "
            "say. Drawercast gives no exposure advice of its own."),
        language::tr("Vapors of solvents, for cleaning and in release agents, can catch fire below room "
                     "temperature: no flame, spark or heater near them; keep rags in a closed metal bin."),
        language::tr("A closed mold stands under pressure and can burst. Nobody leans or stands over it; "
                     "open it only when the foam has cured."),
        language::tr("Saw, drill and blade: guards on, push stick, eye and ear protection; no gloves, no "
                     "loose sleeves "
                     "at saw or drill; cut away from the hand. Sawing board and foam makes dust: extraction "
                     "and a dust mask. Never cut or shape foam with heat: the "
                     "fumes are poisonous."),
        language::tr("Large masses of foam heat up inside, for hours. Let them cool in the open, away from "
                     "anything that burns."),
        language::tr("Never close a container of half-reacted or wet parts: gas builds up in it."),
        language::tr("All figures are estimates from the values entered and stated. The material’s own data "
                     "sheet, local codes and licensed practice come first."),
    };
}

} // namespace drawercast::summary
