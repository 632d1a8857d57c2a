// SPDX-License-Identifier: GPL-3.0-or-later
#include "application.h"
#include "theme/icon_engine.h"
#include "theme/icons.h"
#include "theme/widget_palette.h"

#include <QImage>
#include <QPainter>
#include <QPixmap>
#include <QRegularExpression>
#include <gtest/gtest.h>

namespace drawercast::theme {
namespace {

const QStringList wanted =
    QStringLiteral(
        // job, edit
        "new open save templates summary drawings print undo redo duplicate delete copy paste "
        // objects
        "object rectangle rounded circle capsule free finger-notch standard-library "
        "from-svg from-above from-side "
        // place
        "turn lock unlock align-left align-right align-front align-back align-center-x "
        "align-center-y equal-walls row-of-copies measure snap grid fit to-check arrange swap "
        // frames
        "drawer-frame mirror sign-drawer sign-mold "
        // casting
        "depth foam vent plate stiffener screw air box cut-sheet build-up "
        // pour day, marks, window
        "run-sheet pour-day as-cast cost kits check mend left-as-is explain settings drawer "
        "pane-left pane-right clear "
        // file dialog
        "back forward up folder folder-new file tiles rows computer")
        .split(QLatin1Char(' '));

class Icons : public testing::Test {
  protected:
    void SetUp() override { test::application().setPalette(widget_palette(light_theme())); }
};

QImage drawn(const QString& name, int pixels, qreal ratio = 1, QIcon::Mode mode = QIcon::Normal) {
    return icon(name)
        .pixmap(QSize(pixels, pixels), ratio, mode)
        .toImage()
        .convertToFormat(QImage::Format_ARGB32_Premultiplied);
}

int inked_pixels(const QImage& image) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) count += qAlpha(image.pixel(x, y)) > 128;
    return count;
}

bool holds_solid(const QImage& image, const QColor& color) {
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (image.pixel(x, y) == color.rgba()) return true;
    return false;
}

TEST_F(Icons, are_all_there) {
    const QStringList names = icon_names();
    for (const QString& name : wanted) EXPECT_TRUE(names.contains(name)) << name.toStdString();
    EXPECT_EQ(names.size(), wanted.size()) << "an icon nobody asked for, or one wanted twice";
}

TEST_F(Icons, are_sharp_and_not_empty_at_every_size_and_ratio) {
    for (const QString& name : icon_names())
        for (const int pixels : {16, 18, 20, 40})
            for (const qreal ratio : {1.0, 1.25, 2.0, 3.0}) {
                const QImage image = drawn(name, pixels, ratio);
                EXPECT_EQ(image.width(), qRound(pixels * ratio)) << name.toStdString() << ' ' << pixels;
                EXPECT_GT(inked_pixels(image), image.width() * image.width() / 25)
                    << name.toStdString() << ' ' << pixels;
            }
}

TEST_F(Icons, stay_inside_the_live_area) {
    for (const QString& name : icon_names()) {
        const QImage image =
            drawn(name, 200); // ten pixels to the unit; square caps may reach half a unit out
        for (int i = 0; i < 200; ++i)
            for (const int rim : {0, 3, 196, 199})
                EXPECT_TRUE(qAlpha(image.pixel(i, rim)) == 0 && qAlpha(image.pixel(rim, i)) == 0)
                    << name.toStdString();
    }
}

TEST_F(Icons, can_be_told_apart_at_twenty_pixels) {
    const QStringList names = icon_names();
    for (qsizetype i = 0; i < names.size(); ++i)
        for (qsizetype k = i + 1; k < names.size(); ++k) {
            const QImage one = drawn(names[i], 20);
            const QImage other = drawn(names[k], 20);
            int different = 0;
            for (int y = 0; y < 20; ++y)
                for (int x = 0; x < 20; ++x)
                    different += std::abs(qAlpha(one.pixel(x, y)) - qAlpha(other.pixel(x, y))) > 128;
            EXPECT_GE(different, 8) << names[i].toStdString() << " and " << names[k].toStdString();
        }
}

TEST_F(Icons, are_drawn_with_two_pencils_only) {
    const QRegularExpression color("#[0-9a-fA-F]{3,8}");
    const QRegularExpression width("stroke-width=\"([0-9.]+)\"");
    const QStringList allowed = {"1.6", "1.25", "3.25"}; // 3.25: the nodes of an outline
    for (const QString& name : icon_names()) {
        const QString svg = QString::fromUtf8(icon_svg(name, {QColor("#010203"), QColor("#040506")}));
        for (auto match = color.globalMatch(svg); match.hasNext();) {
            const QString found = match.next().captured();
            EXPECT_TRUE(found == "#010203" || found == "#040506")
                << name.toStdString() << ' ' << found.toStdString();
        }
        for (auto match = width.globalMatch(svg); match.hasNext();)
            EXPECT_TRUE(allowed.contains(match.next().captured(1))) << name.toStdString();
    }
}

TEST_F(Icons, follow_the_theme_without_being_made_again) {
    const QIcon kept = icon("new");
    const auto now = [&] {
        return kept.pixmap(QSize(40, 40), 2.0).toImage().convertToFormat(QImage::Format_ARGB32);
    };
    EXPECT_TRUE(holds_solid(now(), light_theme().ink));
    EXPECT_TRUE(holds_solid(now(), light_theme().blue));
    test::application().setPalette(widget_palette(dark_theme()));
    EXPECT_TRUE(holds_solid(now(), dark_theme().ink));
    EXPECT_TRUE(holds_solid(now(), dark_theme().blue));
    EXPECT_FALSE(holds_solid(now(), light_theme().ink));
}

TEST_F(Icons, are_in_pale_ink_alone_where_disabled) {
    const QImage image = drawn("new", 40, 2.0, QIcon::Disabled);
    EXPECT_TRUE(holds_solid(image, light_theme().ink3));
    EXPECT_FALSE(holds_solid(image, light_theme().ink));
    EXPECT_FALSE(holds_solid(image, light_theme().blue));
}

TEST_F(Icons, note_turns_ink_on_a_chosen_ground_that_swallows_blue) {
    QPalette palette = widget_palette(light_theme());
    EXPECT_EQ(icon_inks(palette, QIcon::Selected), (IconInks{light_theme().ink, light_theme().blue}));
    palette.setColor(QPalette::Highlight, QColor("#2050b0"));
    palette.setColor(QPalette::HighlightedText, Qt::white);
    EXPECT_EQ(icon_inks(palette, QIcon::Selected), (IconInks{Qt::white, Qt::white}));
}

TEST_F(Icons, take_inks_of_their_own_where_given) {
    // An ink that equals the other pencil's placeholder must not be replaced a second time.
    const IconInks swapped{QColor("#1d4fb8"), QColor("#16212b")};
    const QImage image =
        icon("mirror", swapped).pixmap(QSize(40, 40), 2.0).toImage().convertToFormat(QImage::Format_ARGB32);
    EXPECT_EQ(image.pixelColor(56, 56), swapped.thing) << "the filled triangle";
    EXPECT_TRUE(holds_solid(image, swapped.note));
}

TEST_F(Icons, are_rendered_once) {
    const QIcon one = icon("open");
    EXPECT_EQ(one.pixmap(QSize(20, 20)).cacheKey(), icon("open").pixmap(QSize(20, 20)).cacheKey());
}

TEST_F(Icons, refuse_a_name_that_is_none) { EXPECT_THROW(icon("no-such-icon"), std::logic_error); }

TEST_F(Icons, program_icon_shows_its_pockets_at_sixteen_pixels) {
    for (const int pixels : {16, 32, 48, 256}) {
        const QImage image = program_icon_image(pixels);
        EXPECT_EQ(image.size(), QSize(pixels, pixels));
        EXPECT_TRUE(holds_solid(image.convertToFormat(QImage::Format_ARGB32), QColor("#6b908c")))
            << pixels << ": deep";
        EXPECT_TRUE(holds_solid(image.convertToFormat(QImage::Format_ARGB32), QColor("#bbd4d1")))
            << pixels << ": shallow";
    }
    EXPECT_EQ(program_icon().availableSizes().size(), 7);
}

} // namespace
} // namespace drawercast::theme
