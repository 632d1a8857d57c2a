// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "guide/book.h"

#include <QSize>

#include <functional>

namespace drawercast::app::guide {

/// What the guide's text asks for while it is shown.
struct Answers {
    job::DisplayUnits units = job::DisplayUnits::mm;
    /// The words of an action with its key, "Foam (Ctrl+Shift+F)"; empty: there is no such action.
    std::function<QString(const QString& id)> action;
    std::function<QString(const QString& name)> list; ///< rich text of "keys", "cautions"
    /// Size of a picture, px; empty: there is no such picture.
    std::function<QSize(const QString& name)> picture;
    QString quiet_color; ///< of captions and sources: "#3f4c57"
    QString plate_color; ///< behind formulas
};

/// A chapter as rich text. Beside plain Markdown it knows
///   {mm 12} {ml 40} {g 500} {kg 1} {kpa 20} {n 300} {c 23} {m 150}   a quantity in the maker's units
///   [words](#id)           to another place of the guide, of any chapter
///   {do job.foam}          the action's own words and key, as a link that does it
///   ![caption](name)       one of pictures.h, alone on its line
///   {list keys}            alone on its line
///   > words                where a figure comes from
/// Links come out as "guide:CHAPTER#ID" and "action:ID". What can't be found is left out.
QString html_of(const Chapter& chapter, const Book& book, const Answers& answers);

/// All that a chapter refers to, for a test to follow.
struct References {
    QStringList links;
    QStringList actions;
    QStringList pictures;
    QStringList lists;
    QStringList quantities; ///< "mm 12"
};
References references_of(const Chapter& chapter);

/// "mm 12" in the maker's units; empty where it is no quantity.
QString quantity(const QString& words, job::DisplayUnits units);

} // namespace drawercast::app::guide
