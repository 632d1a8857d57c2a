// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/svg_outlines.h"

#include "forms/form_context.h"

#include <QString>

#include <optional>

class QWidget;

namespace drawercast::app {

/// The outlines of an SVG file; a file that cannot be opened is a problem like one that cannot be read.
Expected<job::SvgOutlines> read_drawing_file(const QString& path);

/// "bracket, 82.5 × 40 (line 4, column 3)": an outline of a drawing, to choose from a list.
QString drawing_words(const job::SvgOutline& outline, const FormContext& context);

/// Asks for an SVG file, and which of its outlines where it has several; says what is wrong with it, and
/// where. Nothing where the maker took it back.
std::optional<shape::Polygon> outline_from_drawing(const FormContext& context, QWidget* parent);

} // namespace drawercast::app
