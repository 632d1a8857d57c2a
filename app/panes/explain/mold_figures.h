// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/explain/answer.h"

#include <QString>

#include <optional>
#include <utility>
#include <vector>

namespace drawercast::app {

/// The three answers about the mold, in the right pane.
enum class MoldPart { plate, vents, closing };

/// A figure of one of them: it explains itself as those of the foam do, and may stand beside a limit.
struct MoldFigure {
    FoamFigure figure; ///< ids begin with the part: "plate.bow"
    MoldPart part = MoldPart::plate;
    struct Limit {
        double share = 0; ///< of it
        bool breached = false;
        bool decides = false;
    };
    std::optional<Limit> limit;
};

/// All that is known of the mold of a drawer; nothing of what is not worked out yet.
std::vector<MoldFigure> mold_figures(const explain::Answer& answer);

/// What stands beside each part's name: what it comes to in a few words. Empty: not known yet.
QString mold_remark(MoldPart part, const explain::Answer& answer);

namespace explain {

/// Puts the figures of one part in a row with those that are there.
class PartFigures {
  public:
    PartFigures(std::vector<MoldFigure>& figures, MoldPart part, const char* name)
        : figures_(figures), part_(part), name_(QLatin1String(name) + QLatin1Char('.')) {}

    /// `id`: within the part, "bow".
    void put(const QString& id, const QString& label, const QString& value, Explanation why,
             std::optional<MoldFigure::Limit> limit = std::nullopt) {
        figures_.push_back({{name_ + id, label, value, std::move(why)}, part_, limit});
    }

  private:
    std::vector<MoldFigure>& figures_;
    MoldPart part_;
    QString name_;
};

void add_plate(std::vector<MoldFigure>& figures, const Answer& answer);
void add_vents(std::vector<MoldFigure>& figures, const Answer& answer);
void add_closing(std::vector<MoldFigure>& figures, const Answer& answer);
QString plate_remark(const Answer& answer);
QString vents_remark(const Answer& answer);
QString closing_remark(const Answer& answer);
} // namespace explain
} // namespace drawercast::app
