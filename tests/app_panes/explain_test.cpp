// SPDX-License-Identifier: GPL-3.0-or-later
// Every figure of the foam answer is what its printed formula gives, worked out anew from the printed words.
#include "casting/pressure.h"
#include "casting/times.h"
#include "job/edit.h"
#include "job/store.h"
#include "plan/foam_in_mold.h"

#include "application.h"
#include "panes/explain/formula.h"
#include "panes/explain/sheet_text.h"
#include "source_dir.h"

#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <gtest/gtest.h>

#include <memory>
#include <numbers>

namespace drawercast::app::explain {
namespace {

job::Job demo() {
    auto job = job::load_job(DRAWERCAST_SOURCE_DIR "/resources/demo/field-service.drawercast.json");
    EXPECT_TRUE(job);
    return *job;
}

struct Case {
    Case(const char* called, const job::Job& of) : name(called), job(of), plan(plan::compute(of)) {}
    const char* name;
    job::Job job;
    plan::Plan plan;
};

template <class Change>
job::Job foam_changed(Change change) {
    auto job = demo();
    job.foam.edit(change);
    return job;
}

template <class Change>
job::Job shop_changed(Change change) {
    auto job = demo();
    job.shop.edit(change);
    return job;
}

job::Job with_cup(double altitude_m) {
    auto job = foam_changed([](job::Foam& foam) {
        const double liquid_g_ml = (foam.ratio_a * foam.density_a_g_ml + foam.ratio_b * foam.density_b_g_ml) /
                                   (foam.ratio_a + foam.ratio_b);
        foam.cup = job::Cup{};
        foam.cup->use = true;
        foam.cup->liquid_g = liquid_g_ml / 9.4 * std::numbers::pi * 40 * 40 * 100 / 1000;
    });
    job.shop.edit([&](job::Shop& shop) { shop.altitude_m = altitude_m; });
    return job;
}

const std::vector<Case>& cases() {
    static const std::vector<Case> all{
        {"demo", demo()},
        {"inches", job::in_units(demo(), job::DisplayUnits::inch)},
        {"fractions", job::in_units(demo(), job::DisplayUnits::inch_32)},
        {"high up", shop_changed([](job::Shop& shop) { shop.altitude_m = 1850; })},
        {"a cup", with_cup(0)},
        {"a cup high up", with_cup(900)},
        {"a cup in inches", job::in_units(with_cup(900), job::DisplayUnits::inch)},
        {"cold", shop_changed([](job::Shop& shop) { shop.temperature_c = 17; })},
        {"cold, by activation",
         [] {
             auto job = foam_changed([](job::Foam& foam) { foam.activation_kj_mol = 38; });
             job.shop.edit([](job::Shop& shop) { shop.temperature_c = 17; });
             return job;
         }()},
        {"warm", shop_changed([](job::Shop& shop) { shop.temperature_c = 31; })},
        {"warm, in inches", job::in_units(shop_changed([](job::Shop& shop) { shop.temperature_c = 31; }),
                                          job::DisplayUnits::inch)},
        {"small bucket", shop_changed([](job::Shop& shop) { shop.container_ml = 700; })},
        {"small mixer", shop_changed([](job::Shop& shop) { shop.mixer_ml = 400; })},
        {"slow pour", shop_changed([](job::Shop& shop) { shop.pour_l_s = 0.02; })},
        {"pour by the watch", shop_changed([](job::Shop& shop) { shop.pour_s = 11; })},
        {"pour too late", shop_changed([](job::Shop& shop) { shop.pour_s = 300; })},
        {"bucket known", shop_changed([](job::Shop& shop) { shop.bucket_left_ml = 25; })},
        {"overpack by hand", job::with_overpack(demo(), 0.325)},
        {"little overpack", job::with_overpack(demo(), 0.02)},
        {"odd ratio", foam_changed([](job::Foam& foam) { foam.ratio_a = 1.37, foam.ratio_b = 0.91; })},
    };
    return all;
}

/// Numbers with their units taken off, as one would type them into a calculator.
QString without_units(QString printed) {
    static const QRegularExpression unit(QStringLiteral(
        "(?<=[0-9]) (kJ/\\(mol K\\)|kJ/mol|kg/L|g/mL|oz/fl oz|lb/qt|fl oz(/s)?|mL(/s)?|L(/s)?|qt(/s)?|"
        "kPa|psi|cm²|in²|mm|in|°C|°F|°R|K|kg|g|oz|lb|lbf|N|s|%)(?![A-Za-z/])"));
    return printed.remove(unit);
}

TEST(Explain, printed_numbers_give_the_shown_figure) {
    test::application();
    for (const auto& [name, job, plan] : cases()) {
        for (const auto& drawer : plan.drawers)
            for (const auto unit : {DosingUnit::mass, DosingUnit::volume}) {
                const auto figures = foam_figures(job, plan, drawer, unit);
                ASSERT_GE(figures.size(), 15U) << name;
                for (const auto& figure : figures)
                    for (const auto& line : figure.why.lines) {
                        const QString printed = in_numbers(line);
                        const auto value = evaluate(without_units(printed),
                                                    [](const QString&) { return std::optional<double>(); });
                        const QString where =
                            QStringLiteral("%1, %2: %3 = %4 (%5)")
                                .arg(name, figure.id, printed, line.result.text(), in_words(line));
                        ASSERT_TRUE(value) << where.toStdString();
                        EXPECT_TRUE(gives(value, line.result)) << where.toStdString() << ", is " << *value;
                    }
            }
    }
}

TEST(Explain, air_shut_in_is_in_the_formulas) {
    test::application();
    const auto job = demo();
    auto plan = plan::compute(job);
    auto& drawer = plan.drawers.front();
    air::Answer air;
    air.vented.air_ml = 400;
    drawer.air = std::make_shared<const air::Answer>(air);
    const auto mold = plan::mold_with(*plan::profile_today(job), *job.foam, *drawer.cavity,
                                      drawer.dose->poured_ml, air.vented.air_ml);
    drawer.band = casting::band_of(mold);
    drawer.pressure = casting::pressure_of({mold, *drawer.band, job.mold.pressure_factor});
    drawer.times = casting::times_of({mold.profile, mold.poured_ml, drawer.dose->pour_s, mold.net_mm3,
                                      drawer.cavity->height_mm, drawer.times->liquid_level_mm, mold.air_ml});
    for (const auto& figure : foam_figures(job, plan, drawer, DosingUnit::mass)) {
        if (figure.id != u"closed" && figure.id != u"build_for" && figure.id != u"touch" &&
            figure.id != u"contact")
            continue;
        for (const auto& line : figure.why.lines) {
            const auto value = evaluate(without_units(in_numbers(line)),
                                        [](const QString&) { return std::optional<double>(); });
            EXPECT_TRUE(value && gives(value, line.result))
                << figure.id.toStdString() << ": " << in_numbers(line).toStdString();
        }
    }
}

TEST(Explain, the_first_formula_gives_what_the_pane_shows) {
    test::application();
    const QSet<QString> told_otherwise{"kits", "band"}; // names of kits, both ends of the band
    for (const auto& [name, job, plan] : cases()) {
        const bool by_hand = job.foam->overpack.has_value();
        const bool cup = job.foam->cup && job.foam->cup->use;
        for (const auto& figure : foam_figures(job, plan, plan.drawers.front(), DosingUnit::mass)) {
            if (told_otherwise.contains(figure.id) || (by_hand && figure.id == u"overpack") ||
                (cup && (figure.id == u"touch" || figure.id == u"contact")))
                continue;
            ASSERT_FALSE(figure.why.lines.empty()) << name << figure.id.toStdString();
            EXPECT_TRUE(figure.value.startsWith(figure.why.lines.front().result.text()))
                << name << ": " << figure.id.toStdString() << " " << figure.value.toStdString() << " is not "
                << figure.why.lines.front().result.text().toStdString();
        }
    }
}

TEST(Explain, every_term_has_its_origin_and_every_figure_its_source) {
    test::application();
    for (const auto& [name, job, plan] : cases()) {
        const auto figures = foam_figures(job, plan, plan.drawers.front(), DosingUnit::mass);
        for (const auto& figure : figures) {
            EXPECT_FALSE(figure.label.isEmpty() || figure.value.isEmpty()) << figure.id.toStdString();
            EXPECT_FALSE(figure.why.source.isEmpty() || figure.why.limits.isEmpty())
                << figure.id.toStdString();
            bool changed_by_something = false;
            for (const auto& line : figure.why.lines) {
                QSet<QString> keys;
                for (const auto& term : line.terms) {
                    keys.insert(term.key);
                    EXPECT_TRUE(line.formula.contains(u'{' + term.key + u'}'))
                        << figure.id.toStdString() << ": " << term.key.toStdString()
                        << " is not in the formula";
                    EXPECT_TRUE(term.input != Input::figure || find_figure(figures, term.note) != nullptr)
                        << figure.id.toStdString() << ": no figure " << term.note.toStdString();
                    changed_by_something |= term.input != Input::constant;
                }
                EXPECT_EQ(keys.size(), static_cast<qsizetype>(line.terms.size())) << "two terms of one key";
            }
            EXPECT_TRUE(changed_by_something) << figure.id.toStdString();
        }
    }
}

TEST(Explain, the_sheet_escapes_what_the_maker_typed) {
    test::application();
    auto job = foam_changed([](job::Foam& foam) {
        for (auto& kit : foam.kits) kit.name = "<b>&kit";
    });
    const auto plan = plan::compute(job);
    for (const auto& figure : foam_figures(job, plan, plan.drawers.front(), DosingUnit::volume)) {
        const QString html = sheet_html(figure, {});
        EXPECT_FALSE(html.contains(u"<b>&kit"));
        EXPECT_FALSE(html.contains(QRegularExpression("%[1-9]"))) << html.toStdString();
    }
}

} // namespace
} // namespace drawercast::app::explain
