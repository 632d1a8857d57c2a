// SPDX-License-Identifier: GPL-3.0-or-later
#include "photo/found_edit.h"

#include "base/units.h"

#include "forms/field_rows.h"
#include "forms/length_edit.h"
#include "language/spoken.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

namespace drawercast::app::photo {

namespace {

/// A figure and its unit are not parted at the end of a line.
QString in_one_line(QString words) { return words.replace(u' ', QChar::Nbsp); }

} // namespace

QString shape_words(Shape shape) {
    using language::tr;
    switch (shape) {
    case Shape::as_found:
        break;
    case Shape::symmetric:
        return tr("Symmetric");
    case Shape::rectangle:
        return tr("Rectangle");
    case Shape::turned_rectangle:
        return tr("Turned rectangle");
    case Shape::two_rectangles:
        return tr("Two rectangles");
    case Shape::disc:
        return tr("Disc");
    }
    return tr("As found");
}

FoundEdit::FoundEdit(const FormContext& context, QWidget* parent)
    : QWidget(parent), context_(context), rows_(new FieldRows(this)), name_(new QLineEdit(this)),
      height_(new LengthEdit(context, job::range_of("/objects/*/levels/*/depth_mm"))),
      edge_(new LengthEdit(context, job::range_of("/objects/*/height_mm"))),
      depth_(new LengthEdit(context, job::range_of("/objects/*/levels/*/depth_mm"))),
      for_all_(new QPushButton(tr("This height for all without on&e"), this)), shape_(new QPushButton(this)),
      walls_(new QComboBox(this)), band_(new QCheckBox(tr("The fit &allows for the band"), this)),
      words_(new QLabel(this)) {
    name_->setMaxLength(200);
    edge_->allow_empty(tr("as high"));
    depth_->allow_empty(tr("as high"));
    walls_->addItems({tr("Upright, or nearly"), tr("Only the widest edge is seen")});
    for_all_->setAutoDefault(false);
    shape_->setAutoDefault(false);
    words_->setWordWrap(true);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    rows_->add_wide("/name", tr("&Name"), name_);
    rows_->add("/height", tr("&Height"), height_);
    rows_->add_widget(for_all_);
    rows_->add("/edge", tr("&Widest edge at"), edge_, tr("Above the sheet"));
    rows_->add_wide("/walls", tr("S&ides"), walls_);
    rows_->add("/depth", tr("Depth in &foam"), depth_);
    rows_->add_wide("/shape", tr("Sha&pe"), shape_);
    rows_->add_widget(words_);
    rows_->add_widget(band_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(rows_);
    connect(name_, &QLineEdit::textEdited, this, [this] { tell(QStringLiteral("name")); });
    connect(height_, &ValueEdit::edited, this, [this] { tell(QStringLiteral("height")); });
    connect(edge_, &ValueEdit::edited, this, [this] { tell(QStringLiteral("edge")); });
    connect(depth_, &ValueEdit::edited, this, [this] { tell(QStringLiteral("depth")); });
    connect(walls_, &QComboBox::currentIndexChanged, this, [this] { tell(QStringLiteral("walls")); });
    connect(band_, &QCheckBox::toggled, this, [this] { tell(QStringLiteral("band")); });
    connect(shape_, &QPushButton::clicked, this, &FoundEdit::offer_shapes);
    connect(for_all_, &QPushButton::clicked, this, [this] {
        if (outline_.height_mm) emit height_for_all(*outline_.height_mm);
    });
}

QLineEdit& FoundEdit::height() const { return *height_; }

void FoundEdit::go_to_height() {
    height_->setFocus(Qt::TabFocusReason);
    height_->selectAll();
}

void FoundEdit::tell(const QString& what) {
    if (filling_ || !shown_) return;
    Outline now = outline_;
    now.name = name_->text().trimmed().toStdString();
    now.height_mm = height_->value();
    now.edge_mm = edge_->value();
    now.depth_mm = depth_->value();
    now.walls = walls_->currentIndex() == 1 ? capture::Walls::edge_only : capture::Walls::upright;
    now.band_in_fit = band_->isChecked();
    outline_ = now;
    emit edited(now, what);
}

QString FoundEdit::length(double mm) const {
    const auto notation = length_notation(context_);
    return in_one_line(
        tr("%1 %2", "length, unit").arg(notation.shown(std::round(mm * 10) / 10), notation.unit));
}

/// Shapes that hold the whole outline, each with what it costs.
void FoundEdit::offer_shapes() {
    if (!flat_) return;
    const auto found = offers(outline_, *flat_);
    Outline plain = outline_;
    plain.shape = Shape::as_found;
    const auto base = measured(plain, *flat_);
    const auto contour = base ? shape::contour_of(base->polygon) : Expected<shape::Contour>(base.error());
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    for (const Offer& offer : found) {
        QString words = shape_words(offer.shape);
        if (offer.shape != Shape::as_found && contour) {
            const double share = 100 * offer.more_mm2 / shape::area(*contour);
            words = tr("%1: %2 % more pocket, up to %3 further out")
                        .arg(words, number_words(std::round(share * 10) / 10, context_.mark),
                             length(offer.reach_mm));
        }
        connect(menu->addAction(words), &QAction::triggered, this, [this, shape = offer.shape] {
            outline_.shape = shape;
            emit edited(outline_, QStringLiteral("shape"));
        });
    }
    menu->popup(shape_->mapToGlobal(QPoint(0, shape_->height())));
}

QString FoundEdit::measured_words(const Measured& measured) const {
    shape::Box seen, now;
    for (const auto& corner : outline_.seen.corners) seen.add(corner.at);
    const auto contour = shape::contour_of(measured.polygon);
    if (contour) now = shape::bounds(*contour);
    const QString size = tr("Size: %1 × %2.").arg(length(now.width()), length(now.height()));
    if (measured.enlarged_by <= 1) return size;
    const double percent = std::round((measured.enlarged_by - 1) * 1000) / 10;
    const QString words =
        outline_.walls == capture::Walls::upright
            ? tr("%1 At that height its edge looked %2 % larger, and a side of it was seen: %3 × %4 in the "
                 "photo. Both are taken out.")
            : tr("%1 At that height its edge looked %2 % larger: %3 × %4 in the photo. This is taken out.");
    return words.arg(size, number_words(percent, context_.mark), length(seen.width()), length(seen.height()));
}

QString FoundEdit::band_words(const Measured& measured) const {
    // Finer than lengths are shown elsewhere: a tenth of a millimeter is half of it.
    const QString band =
        context_.metric()
            ? tr("%1 mm").arg(number_words(std::round(measured.band_mm * 100) / 100, context_.mark))
            : tr("%1 in").arg(number_words(std::round(measured.band_mm / units::mm_per_inch * 1000) / 1000,
                                           context_.mark));
    QString words = tr("The true outline lies within a band of %1.").arg(in_one_line(tr("± %1").arg(band)));
    if (outline_.by_hand || outline_.brushed)
        words += QLatin1Char(' ') + tr("Where the hand put it right it is as good as the hand.");
    if (outline_.maybe_shadow)
        words +=
            QLatin1Char(' ') + tr("Part of it may be a shadow: hold it against the object, and brush the "
                                  "shadow away.");
    if (outline_.maybe_part)
        words += QLatin1Char(' ') + tr("Its neighbor is so near that both may be one thing, cut by a blank "
                                       "streak: then brush over the gap.");
    return words;
}

void FoundEdit::show_outline(const Outline* outline, const Flat& flat, const Expected<Measured>* measured,
                             bool further) {
    filling_ = true;
    const bool another = !outline || outline->number != outline_.number;
    shown_ = outline != nullptr;
    flat_ = flat;
    setEnabled(shown_);
    const Outline now = outline ? *outline : Outline{};
    const auto fill = [another](LengthEdit* edit, std::optional<double> value, std::optional<double> before) {
        // What is typed stays as it is typed, half a number too.
        if (another || edit->value() != value || value != before) edit->set_value(value);
    };
    if (name_->text().trimmed() != QString::fromStdString(now.name))
        name_->setText(QString::fromStdString(now.name));
    fill(height_, now.height_mm, outline_.height_mm);
    fill(edge_, now.edge_mm, outline_.edge_mm);
    fill(depth_, now.depth_mm, outline_.depth_mm);
    walls_->setCurrentIndex(now.walls == capture::Walls::edge_only ? 1 : 0);
    band_->setChecked(now.band_in_fit);
    outline_ = now;
    shape_->setText(shape_words(now.shape) + QStringLiteral(" ▾"));
    for_all_->setEnabled(further && shown_ && now.height_mm.has_value());
    if (measured && *measured)
        words_->setText(tr("%1 %2").arg(measured_words(**measured), band_words(**measured)));
    else
        words_->setText(outline ? QString() : tr("Choose an outline in the photo or in the list."));
    filling_ = false;
}

} // namespace drawercast::app::photo
