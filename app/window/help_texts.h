// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace drawercast::app {

class Actions;

QString keys_html(const Actions& actions); ///< every action with a key, and what the pointer does
QString cautions_html();
QString about_html();

} // namespace drawercast::app
