// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/page.h"

#include <QByteArray>
#include <QString>

namespace drawercast::print {

/// The pages as a PDF file, true to a micrometer: vectors only, fonts embedded. Empty if Qt could not write
/// it. Needs an application object.
QByteArray pdf_of(const std::vector<Page>& pages, const QString& title, const QString& program);

} // namespace drawercast::print
