// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/closing.h"
#include "mold/plate_answers.h"
#include "plan/json_text.h"

namespace drawercast::plan {

void write_plate(JsonText& json, const mold::PlateAnswer& answer); ///< "plate": mold frame
void write_closing(JsonText& json, const mold::Closing& closing);  ///< members of "time"

} // namespace drawercast::plan
