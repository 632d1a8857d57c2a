// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/dose.h"
#include "plan/say.h"

#include "panes/explain/mold_figures.h"
#include "sheets/text.h"

#include <algorithm>
#include <map>

namespace drawercast::app::explain {

namespace {

using sheets::text;

class Vents {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::explain::Vents)

  public:
    Vents(std::vector<MoldFigure>& figures, const Answer& answer)
        : figures_(figures, MoldPart::vents, "vents"), answer_(answer), air_(*answer.drawer.air),
          pockets_(air_.model->map().pockets) {}

    void add() {
        add_holes();
        add_pockets();
        add_arrival();
        add_squeeze();
        add_held();
    }

    QString remark() const {
        const int left = unvented();
        if (pockets_.empty()) return tr("no air pocket");
        if (left == 0) return tr("all vented");
        return left == 1 ? tr("air stays in one place") : tr("air stays in %1 places").arg(left);
    }

  private:
    int unvented() const {
        const auto& shares = air_.vented.shares_ml;
        return static_cast<int>(
            std::count_if(shares.begin(), shares.end(), [](double ml) { return ml > air::vented_ml; }));
    }

    void add_holes() {
        std::map<double, int> drills;
        int own = 0;
        for (const auto& vent : air_.vented.vents) {
            ++drills[vent.diameter_mm];
            own += vent.why == air::VentFor::kept;
        }
        QStringList said;
        for (const auto& [mm, count] : drills)
            said << tr("%1, ⌀%2").arg(count).arg(text(plan::say_length(mm, answer_.units())));
        QString rule = tr("As few as leave no air pocket more than a little air, each at an air pocket; "
                          "then, where none is near, one in each corner and along the box walls.");
        if (own > 0) rule += u' ' + tr("Of them %n set by you.", nullptr, own);
        figures_.put(
            "holes", tr("vents"), said.isEmpty() ? tr("none") : said.join(QStringLiteral(" + ")),
            {rule,
             {},
             tr("Where the air pockets are: this program’s own model. Corners and walls: common practice."),
             tr("Vents keep two diameters of wood to closures and stiffeners.")});
    }

    void add_pockets() {
        const int all = static_cast<int>(pockets_.size()), left = unvented();
        figures_.put(
            "pockets", tr("air pockets"), tr("%1 of %2 vented").arg(all - left).arg(all),
            {tr("Places that the foam closes in from all sides before it fills them. One counts as vented "
                "when no more than a few milliliters stay in it."),
             {},
             tr("Thin-gap flow of evenly expanding foam over the whole rise (an obstacle problem; Richardson "
                "1972, Elliott and Janovsky 1981)."),
             tr("It needs no viscosity and no speed, and knows none.")},
            MoldFigure::Limit{all > 0 ? static_cast<double>(all - left) / all : 0, left > 0, false});
        figures_.put(
            "air", tr("air left in the mold"), answer_.said_ml(air_.vented.air_ml).text(),
            {tr("What is shut in when the foam has passed every vent, at the day’s air pressure. It is "
                "pressed "
                "together with the foam and raises the pressure when closed."),
             {},
             {},
             {}});
    }

    void add_arrival() {
        if (pockets_.empty()) return;
        const auto said = [](double e) { return QStringLiteral("×") + text(plan::fixed(e, 2)); };
        const QString value =
            pockets_.size() == 1
                ? said(pockets_.front().expansion)
                : tr("%1 to %2").arg(said(pockets_.front().expansion), said(pockets_.back().expansion));
        figures_.put(
            "arrival", tr("filled at a rise of"), value,
            {tr("How often its liquid volume the foam has reached when the first and the last air pocket go. "
                "The mold is full at ×%1.")
                 .arg(text(plan::fixed(air_.model->map().full_expansion, 2))),
             {},
             {},
             tr("The sheet shows it for every place, in bands.")});
    }

    void add_squeeze() {
        const auto& squeeze = air_.squeeze;
        const Result most = answer_.said_ml(squeeze.limit_ml);
        const Scale volume = volume_scale(most.unit);
        const Line line{tr("allowed"),
                        QStringLiteral("{share} × {overpack} × {holds}"),
                        {rule("share", tr("share of the overpack"), casting::squeeze_out_share, {},
                              tr("that much more is mixed; our guess")),
                         answer_.overpack(), answer_.holds(volume)},
                        most};
        figures_.put(
            "squeeze", tr("squeeze-out"),
            tr("%1 of %2").arg(answer_.said_ml(squeeze.out_ml).text(), most.text()),
            {tr("Foam that leaves through the vents from full mold to half a minute after the rise, while "
                "none "
                "is pegged."),
             {line},
             tr("Poiseuille’s flow through each hole with both ends’ losses; it goes with the fourth power "
                "of "
                "the drill."),
             tr("As uncertain as the foam’s viscosity: half or twice as much is quite possible. A cast tells "
                "it.")},
            MoldFigure::Limit{squeeze.limit_ml > 0 ? squeeze.out_ml / squeeze.limit_ml : 2,
                              squeeze.out_ml > squeeze.limit_ml, false});
    }

    void add_held() {
        const auto& squeeze = air_.squeeze;
        figures_.put(
            "held", tr("pressure that is held"), answer_.said_kpa(squeeze.held_kpa).text(),
            {tr("The pressure when closed with the squeeze-out gone: %1 were the foam half as viscous, %2 "
                "were "
                "it twice.")
                 .arg(answer_.said_kpa(squeeze.held_thin_kpa).text(),
                      answer_.said_kpa(squeeze.held_thick_kpa).text()),
             {},
             {},
             squeeze.unsure ? tr("These differ by more than a tenth: take a smaller drill, or peg the vents "
                                 "as foam shows.")
                            : QString()});
    }

    PartFigures figures_;
    const Answer& answer_;
    const air::Answer& air_;
    const std::vector<air::AirPocket>& pockets_;
};

} // namespace

void add_vents(std::vector<MoldFigure>& figures, const Answer& answer) { Vents(figures, answer).add(); }

QString vents_remark(const Answer& answer) {
    std::vector<MoldFigure> none;
    return Vents(none, answer).remark();
}

} // namespace drawercast::app::explain
