// SPDX-License-Identifier: GPL-3.0-or-later
// The drawings at true size, read back as any drawing program would read them.
#include "job/catalog.h"
#include "job/edit.h"
#include "plan/plan.h"

#include "app/ink_jobs.h"
#include "print/drawing_files.h"

#include <QRegularExpression>
#include <QXmlStreamReader>
#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

namespace drawercast::print {
namespace {

using namespace std::string_literals;
using shape::Box;
using shape::Vec;

constexpr double tolerance_mm = 0.01;

struct Svg {
    double width_mm = 0, height_mm = 0;
    std::vector<double> view_box;
    struct Outline {
        std::string subject; ///< of the group it is in
        Box box;             ///< of its ends: quarter arcs reach no further
    };
    std::vector<Outline> outlines; ///< stroked paths
};

/// Box of a path's ends: M and L have one, A ends with one.
Box ends_of(const QString& data) {
    Box box;
    static const QRegularExpression piece(QStringLiteral("([MLAZ])([^MLAZ]*)"));
    for (auto found = piece.globalMatch(data); found.hasNext();) {
        const auto one = found.next();
        const auto numbers = one.captured(2).simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
        if (numbers.size() < 2) continue;
        box.add(Vec{numbers[numbers.size() - 2].toDouble(), numbers.back().toDouble()});
    }
    return box;
}

double millimeters(const QString& text) {
    EXPECT_TRUE(text.endsWith(QStringLiteral("mm"))) << text.toStdString();
    return text.chopped(2).toDouble();
}

Svg read_svg(const QByteArray& bytes) {
    Svg svg;
    std::string subject;
    bool in_group = false;
    QXmlStreamReader xml(bytes);
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isEndElement() && xml.name() == QStringLiteral("g")) {
            in_group = false;
            subject.clear();
        }
        if (!xml.isStartElement()) continue;
        const auto attributes = xml.attributes();
        const auto text = [&](const char* name) { return attributes.value(QLatin1String(name)).toString(); };
        if (xml.name() == QStringLiteral("svg")) {
            svg.width_mm = millimeters(text("width"));
            svg.height_mm = millimeters(text("height"));
            for (const auto& number : text("viewBox").split(QLatin1Char(' ')))
                svg.view_box.push_back(number.toDouble());
        } else if (xml.name() == QStringLiteral("g"))
            in_group = true;
        else if (xml.name() == QStringLiteral("title") && in_group)
            subject = xml.readElementText().toStdString();
        else if (xml.name() == QStringLiteral("path") && text("fill") == QStringLiteral("none"))
            svg.outlines.push_back({subject, ends_of(text("d"))});
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return svg;
}

/// The stroked outline of that size and subject. Fails the running test where there is none.
Box outline_of(const Svg& svg, const std::string& subject, double width, double height) {
    for (const auto& outline : svg.outlines)
        if (outline.subject == subject && std::abs(outline.box.width() - width) < tolerance_mm &&
            std::abs(outline.box.height() - height) < tolerance_mm)
            return outline.box;
    ADD_FAILURE() << "no outline of " << subject << " " << width << " × " << height;
    return {};
}

/// A pocket 60 × 40 at (60, 50) in a drawer 200 × 120.
job::Job one_pocket() {
    job::Job job = job::new_job({200, 120, 90, 60});
    job::Object object;
    object.id = "r";
    object.fit_mm = 0;
    object.levels = {{job::Sunk{shape::Rectangle{60, 40, 0}, 20}, {}, {}}};
    job = job::with_object(std::move(job), object);
    return job::placed(std::move(job), "d1", "r", {{60, 50}, 0});
}

Svg drawing(const job::Job& job, const std::string& name) {
    for (const DrawingFile& file : drawing_files(job, plan::compute(job)))
        if (file.name == name) return read_svg(file.bytes);
    ADD_FAILURE() << "no " << name;
    return {};
}

TEST(Drawings, one_unit_is_one_millimeter) {
    for (const auto& name : test::demo_names) {
        const job::Job job = test::demo_job(name);
        const auto files = drawing_files(job, plan::compute(job));
        EXPECT_EQ(files.size(), 4 * job.drawers.size()) << "plan, board, check and build-up; no plate yet";
        for (const DrawingFile& file : files) {
            const Svg svg = read_svg(file.bytes);
            ASSERT_EQ(svg.view_box.size(), 4u) << file.name;
            EXPECT_EQ(svg.view_box[0], 0) << file.name;
            EXPECT_EQ(svg.view_box[1], 0) << file.name;
            EXPECT_EQ(svg.view_box[2], svg.width_mm) << file.name;
            EXPECT_EQ(svg.view_box[3], svg.height_mm) << file.name;
            for (const auto& outline : svg.outlines) {
                EXPECT_GE(outline.box.min.x, 0) << file.name;
                EXPECT_GE(outline.box.min.y, 0) << file.name;
                EXPECT_LE(outline.box.max.x, svg.width_mm) << file.name;
                EXPECT_LE(outline.box.max.y, svg.height_mm) << file.name;
            }
        }
    }
}

TEST(Drawings, no_name_makes_one_that_does_not_open) {
    job::Job job = one_pocket();
    const std::string name = "a\x1b[2J b\0c\nd \xEF\xBF\xBF <&> \xF0\x9D\x9F\x8F"s;
    job.title = name;
    job::Object object = *job.objects[0];
    object.name = name;
    job.objects[0] = object;
    job::Drawer drawer = *job.drawers[0];
    drawer.name = name;
    job.drawers[0] = drawer;
    for (const DrawingFile& file : drawing_files(job, plan::compute(job))) {
        QXmlStreamReader xml(file.bytes);
        QString words;
        while (!xml.atEnd())
            if (xml.readNext() == QXmlStreamReader::Characters) words += xml.text();
        EXPECT_FALSE(xml.hasError()) << file.name << ": " << xml.errorString().toStdString();
        EXPECT_FALSE(words.contains(QChar(0x1b)) || words.contains(QChar(0xFFFF))) << file.name;
        EXPECT_TRUE(words.contains(QStringLiteral("<&>"))) << file.name;
    }
}

TEST(Drawings, a_pocket_lies_in_the_drawer_where_the_job_has_it) {
    for (const char* name : {"d1-drawer-plan.svg", "d1-drawer-check.svg"}) {
        const Svg svg = drawing(one_pocket(), name);
        const Box drawer = outline_of(svg, "", 200, 120), pocket = outline_of(svg, "r#1", 60, 40);
        EXPECT_NEAR(pocket.min.x - drawer.min.x, 60 - 30, tolerance_mm) << name;
        EXPECT_NEAR(drawer.max.y - pocket.max.y, 50 - 20, tolerance_mm) << name << ": y points down";
    }
}

TEST(Drawings, its_block_is_mirrored_and_enlarged_on_the_board) {
    const job::Job job = one_pocket();
    const double k = 1 / (1 - job.foam->shrinkage), gap = 0.5;
    ASSERT_EQ(job.drawers[0]->gap_mm.value_or(gap), gap);
    const Svg svg = drawing(job, "d1-pattern-board.svg");
    const Box board = outline_of(svg, "", (200 - 2 * gap) * k, (120 - 2 * gap) * k);
    const Box block = outline_of(svg, "r#1", 60 * k, 40 * k);
    EXPECT_NEAR(block.center().x - board.min.x, (200 - gap - 60) * k, tolerance_mm);
    EXPECT_NEAR(board.max.y - block.center().y, (50 - gap) * k, tolerance_mm);
}

} // namespace
} // namespace drawercast::print
