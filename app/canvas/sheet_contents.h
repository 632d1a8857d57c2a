// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/sheet_table.h"

#include <QStringList>

#include <memory>
#include <optional>
#include <string>

namespace drawercast::app {

class Document;
class Selection;

/// What a sheet shows of the open job's chosen drawer. What takes long is worked out once, until forget():
/// zooming and panning must not wait for it.
class SheetContents {
  public:
    SheetContents(const Document& document, const Selection& selection)
        : document_(document), selection_(selection) {}

    void set_sheet(SheetId sheet) { sheet_ = sheet; }
    SheetId sheet() const { return sheet_; }
    const SheetSpec& spec() const { return spec_of(sheet_); }

    const job::Drawer* drawer() const;              ///< of what is shown; null: none
    const plan::DrawerPlan* drawer_plan() const;    ///< likewise
    const plan::DrawerPlan* built_plan() const;     ///< CanvasPort's
    std::shared_ptr<const air::Answer> air() const; ///< likewise

    /// How a sheet is looked at.
    struct Look {
        double px_per_mm = 1;
        sheets::Zones zones = sheets::Zones::none;
        buildup::Look mold;
    };
    /// Nothing where it can't be drawn. Sheets to look at are drawn once for what is shown; a slow one of the
    /// last job worked out.
    std::optional<Drawn> drawn(const Look& look) const;
    bool old() const; ///< drawn() is of an older job; the answer for this one is being worked out
    /// What an unfit sheet lacks: a heading, then a line each, with the mends in its way.
    QStringList missing() const;

    void forget(); ///< what is shown has changed

  private:
    struct Board {
        job::Job job;
        std::string drawer;
        std::optional<casting::PatternBoard> answer;
    };
    struct Mold { ///< as seen from one side: lettered at each scale
        buildup::Look look;
        std::optional<sheets::SeenMold> seen;
    };
    struct Kept { ///< the marks of a sheet that is only looked at
        SheetId sheet;
        Look look;
        std::optional<Drawn> drawn;
    };

    bool keeps(const Look& look) const;
    std::optional<Drawn> draw(const job::Job& job, const plan::Plan& plan, const Look& look) const;
    const std::optional<casting::PatternBoard>& board(const job::Job& job,
                                                      const plan::DrawerPlan& plan) const;
    const std::optional<sheets::SeenMold>& mold(const job::Job& job, const plan::DrawerPlan& plan,
                                                const buildup::Look& look) const;

    const Document& document_;
    const Selection& selection_;
    SheetId sheet_ = SheetId::drawer_plan;
    mutable std::optional<Board> board_;
    mutable std::optional<Mold> mold_;
    mutable std::optional<Kept> kept_;
    mutable std::shared_ptr<const air::Answer> tried_; ///< air() where the answer is old
};

} // namespace drawercast::app
