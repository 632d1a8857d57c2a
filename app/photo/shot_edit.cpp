// SPDX-License-Identifier: GPL-3.0-or-later
#include "photo/shot_edit.h"

#include "forms/field_rows.h"
#include "forms/length_edit.h"

#include <QComboBox>
#include <QVBoxLayout>

#include <cmath>

namespace drawercast::app::photo {

namespace {

constexpr job::Range sheet_side{"", 50, 2000};
constexpr job::Range camera_range{"", 50, 10000};
constexpr job::Range resolution_range{"", 50, 4800};

bool same(const capture::Shot& a, const capture::Shot& b) {
    return a.ground == b.ground && a.sheet == b.sheet && a.dots_per_inch == b.dots_per_inch &&
           a.camera_mm == b.camera_mm;
}

} // namespace

ShotEdit::ShotEdit(const FormContext& context, QWidget* parent)
    : QWidget(parent), context_(context), rows_(new FieldRows(this)), ground_(new QComboBox(this)),
      width_(new LengthEdit(context, sheet_side)), height_(new LengthEdit(context, sheet_side)),
      camera_(new LengthEdit(context, camera_range)),
      resolution_(new ValueEdit(number_notation(context, tr("dots per inch")), resolution_range)) {
    ground_->addItems({tr("Measuring sheet, A4"), tr("Measuring sheet, Letter"), tr("White paper, A4"),
                       tr("White paper, Letter"), tr("White paper, other size"), tr("Flatbed scan")});
    ground_->setCurrentIndex(context.metric() ? measuring_a4 : measuring_letter);
    width_->set_value(300);
    height_->set_value(400);
    camera_->allow_empty(tr("by the photo"));
    resolution_->allow_empty(tr("by the file"));
    rows_->add_head(tr("Photo"));
    rows_->add_wide("/ground", tr("&On"), ground_);
    rows_->add("/width", tr("&Short side"), width_);
    rows_->add("/height", tr("&Long side"), height_);
    rows_->add("/resolution", tr("&Resolution"), resolution_);
    rows_->add("/camera", tr("&Distance"), camera_, tr("Lens to sheet"));
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(rows_);
    told_ = shot();
    const auto tell = [this] {
        show_rows();
        if (!rows_->own_problems().empty() || same(told_, shot())) return;
        told_ = shot();
        emit changed();
    };
    connect(ground_, &QComboBox::currentIndexChanged, this, tell);
    for (ValueEdit* edit : {static_cast<ValueEdit*>(width_), static_cast<ValueEdit*>(height_),
                            static_cast<ValueEdit*>(camera_), resolution_})
        connect(edit, &QLineEdit::editingFinished, this, tell); // half a number is another distance
    show_rows();
}

capture::Shot ShotEdit::shot() const {
    capture::Shot shot;
    const int ground = ground_->currentIndex();
    shot.ground = ground == scan       ? capture::Ground::scan
                  : ground >= blank_a4 ? capture::Ground::plain_sheet
                                       : capture::Ground::measuring_sheet;
    const bool letter = ground == measuring_letter || ground == blank_letter;
    shot.sheet = letter ? capture::sheet_letter : capture::sheet_a4;
    if (ground == blank_other && width_->value() && height_->value())
        shot.sheet = {std::min(*width_->value(), *height_->value()),
                      std::max(*width_->value(), *height_->value())};
    if (ground == scan)
        shot.dots_per_inch = resolution_->value();
    else
        shot.camera_mm = camera_->value();
    return shot;
}

void ShotEdit::show_rows() {
    const int ground = ground_->currentIndex();
    rows_->set_row_shown("/width", ground == blank_other);
    rows_->set_row_shown("/height", ground == blank_other);
    rows_->set_row_shown("/resolution", ground == scan);
    rows_->set_row_shown("/camera", ground != scan);
}

QString ShotEdit::camera_words(const capture::FlatPicture& flat) const {
    const auto notation = length_notation(context_);
    const auto shown = [&notation](double mm) { return notation.shown(std::round(mm)); };
    const QString far =
        tr("%1 ± %2 %3", "length, doubt, unit")
            .arg(shown(flat.camera.distance_mm), shown(2 * flat.camera.within_mm), notation.unit)
            .replace(u' ', QChar::Nbsp);
    switch (flat.camera.by) {
    case capture::CameraBy::typed:
        return tr("Lens to sheet: %1 as typed").arg(far);
    case capture::CameraBy::perspective:
        return tr("Lens to sheet: %1 by the perspective").arg(far);
    case capture::CameraBy::file:
        return tr("Lens to sheet: %1 by what the file says of the lens").arg(far);
    case capture::CameraBy::nothing:
        break;
    }
    return tr("Lens to sheet: this photo can’t tell, type it");
}

void ShotEdit::show_camera(const capture::FlatPicture* flat) {
    rows_->set_hint("/camera", flat && !flat->scanned ? camera_words(*flat) : tr("Lens to sheet"));
}

} // namespace drawercast::app::photo
