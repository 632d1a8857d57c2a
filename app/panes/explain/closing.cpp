// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/pour_steps.h"
#include "plan/say.h"

#include "panes/explain/mold_figures.h"

#include <cmath>

namespace drawercast::app::explain {

namespace {

class ClosingTimes {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::explain::ClosingTimes)

  public:
    ClosingTimes(std::vector<MoldFigure>& figures, const Answer& answer)
        : figures_(figures, MoldPart::closing, "closing"), answer_(answer),
          closing_(answer.drawer.plate->closing),
          count_(static_cast<int>(answer.drawer.plate->answer.design.closures.size())) {}

    void add() {
        add_plate_on();
        add_all_in();
        add_by_contact();
        add_margin();
    }

    QString remark() const { return in_time() ? tr("in time") : tr("too late"); }

  private:
    static Result seconds(double s) { return fixed_result(s, 0, QStringLiteral("s")); }
    bool in_time() const { return closing_.close_margin_s >= 0; }

    void add_plate_on() {
        const Result result = seconds(closing_.plate_on_s);
        const Line line{tr("plate on"),
                        QStringLiteral("{mix} + {pour} + {set}"),
                        {{"mix", tr("mixing"), answer_.foam().mix_s, QStringLiteral("s"), Input::foam, {}},
                         {"pour", tr("pouring"), answer_.dose().pour_s, QStringLiteral("s"), Input::shop,
                          tr("what is poured over how fast")},
                         {"set",
                          tr("setting the plate"),
                          answer_.shop().set_plate_s,
                          QStringLiteral("s"),
                          Input::shop,
                          {}}},
                        result};
        const double touch = answer_.drawer.times->touch_s;
        figures_.put(
            "plate_on", tr("plate on"), tr("%1 of %2").arg(result.text(), seconds(touch).text()),
            {tr("From the start of mixing. The foam in the channels reaches the plate after %1: it must be "
                "on "
                "by then.")
                 .arg(seconds(touch).text()),
             {line},
             {},
             tr("Set on later than %1, it can no longer be closed in time: past that leave it off and let it "
                "rise "
                "open.")
                 .arg(seconds(std::floor(plan::latest_plate_on_s(answer_.drawer).value_or(touch))).text())},
            MoldFigure::Limit{touch > 0 ? closing_.plate_on_s / touch : 2, closing_.plate_on_s > touch,
                              closing_.by_touch});
    }

    void add_all_in() {
        const double at = closing_.plate_on_s + closing_.close_s;
        const int drivers = std::max(1, answer_.shop().drivers);
        const Line line{tr("all in after"),
                        QStringLiteral("{plate_on} + {closing}"),
                        {{"plate_on", tr("plate on"), closing_.plate_on_s, QStringLiteral("s"), Input::figure,
                          QStringLiteral("closing.plate_on")},
                         {"closing", tr("tightening them all"), closing_.close_s, QStringLiteral("s"),
                          Input::shop, tr("number over people closing, times the seconds each takes")}},
                        seconds(at)};
        figures_.put("all_in", tr("all closures in"), seconds(at).text(),
                     {(drivers == 1 ? tr("%1 closures, one person closing.").arg(count_)
                                    : tr("%1 closures, %2 people closing.").arg(count_).arg(drivers)),
                      {line},
                      {},
                      {}});
    }

    void add_by_contact() {
        figures_.put(
            "by_contact", tr("in when the mold is full"),
            tr("%1 of %2").arg(closing_.in_by_contact).arg(count_),
            {tr("So many must be in when the foam begins to push, after %1. From then on as many as the "
                "pressure at each moment needs, with the worst closure’s share.")
                 .arg(seconds(answer_.drawer.times->contact_s).text()),
             {},
             {},
             {}},
            MoldFigure::Limit{count_ > 0 ? static_cast<double>(closing_.in_by_contact) / count_ : 0,
                              closing_.in_by_contact > count_, false});
    }

    void add_margin() {
        const double s = closing_.close_margin_s;
        const QString value = s >= 0 ? tr("%1 to spare").arg(seconds(std::floor(s)).text())
                                     : tr("%1 too late").arg(seconds(std::ceil(-s)).text());
        figures_.put(
            "margin", tr("can it be closed"), value,
            {tr("By how much the plate may come on later and still as many closures are in, at every moment "
                "of "
                "the rise, as the pressure to build for needs; and once more with foam a fifth quicker."),
             {},
             tr("How much quicker foam may be: our guess."),
             in_time() ? QString()
                       : tr("What helps: screws started beforehand, one more person closing, clamps or rods "
                            "with wing nuts, cooler parts.")},
            MoldFigure::Limit{s >= 0 ? 0.0 : 1.5, s < 0, s < 0});
    }

    PartFigures figures_;
    const Answer& answer_;
    const mold::Closing& closing_;
    int count_ = 0;
};

} // namespace

void add_closing(std::vector<MoldFigure>& figures, const Answer& answer) {
    ClosingTimes(figures, answer).add();
}

QString closing_remark(const Answer& answer) {
    std::vector<MoldFigure> none;
    return ClosingTimes(none, answer).remark();
}

} // namespace drawercast::app::explain
