// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/object.h"
#include "job/svg_outlines.h"

#include "forms/form_context.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

class QWidget;

namespace drawercast::app {

/// The outlines of an SVG file; a file that cannot be opened is a problem like one that cannot be read.
Expected<job::SvgOutlines> read_drawing_file(const QString& path);

/// "bracket, 82.5 × 40 (line 4, column 3)": an outline of a drawing, to choose from a list.
QString drawing_words(const job::SvgOutline& outline, const FormContext& context);

/// What reading a drawing asks the maker. Tests answer in the maker's place.
class DrawingAsking {
  public:
    virtual ~DrawingAsking() = default;

    virtual std::optional<QString> drawing_file(QWidget* parent) = 0;
    virtual void warn(QWidget* parent, const QString& title, const QString& words) = 0;
    /// Rows of `names`, one of them or several; nothing where the maker took it back.
    virtual std::optional<std::vector<int>> outlines(QWidget* parent, const QString& words,
                                                     const QStringList& names, bool several) = 0;
};

/// By dialogs.
class DrawingDialogs final : public DrawingAsking {
  public:
    std::optional<QString> drawing_file(QWidget* parent) override;
    void warn(QWidget* parent, const QString& title, const QString& words) override;
    std::optional<std::vector<int>> outlines(QWidget* parent, const QString& words, const QStringList& names,
                                             bool several) override;
};

/// Asks for an SVG file, and which of its outlines where it has several; says what is wrong with it, and
/// where. Nothing where the maker took it back.
std::optional<shape::Polygon> outline_from_drawing(const FormContext& context, DrawingAsking& asking,
                                                   QWidget* parent);

/// The same for several outlines of one drawing, which keep their places to each other, about the middle of
/// them all: levels of an object, each without a depth yet. Empty where the maker took it back.
std::vector<job::Level> levels_from_drawing(const FormContext& context, DrawingAsking& asking,
                                            QWidget* parent);

} // namespace drawercast::app
