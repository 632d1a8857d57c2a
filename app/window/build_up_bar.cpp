// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/build_up_bar.h"

#include "canvas/sheet_canvas.h"
#include "theme/icons.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSlider>
#include <QToolButton>

namespace drawercast::app {

namespace {

constexpr int apart_steps = 20;

}

BuildUpBar::BuildUpBar(SheetCanvas& canvas, QWidget* parent)
    : QWidget(parent), canvas_(canvas), turned_(new QLabel(this)), apart_(new QSlider(Qt::Horizontal, this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 4, 12, 4);
    row->setSpacing(8);
    row->addWidget(step_button(QStringLiteral("back"), tr("Turn to the left"), -TurnTool::step_deg));
    row->addWidget(turned_);
    row->addWidget(step_button(QStringLiteral("forward"), tr("Turn to the right"), TurnTool::step_deg));
    row->addSpacing(16);
    row->addWidget(new QLabel(tr("Together"), this));
    apart_->setRange(0, apart_steps);
    apart_->setPageStep(apart_steps / 4);
    apart_->setAccessibleName(tr("How far the mold is taken apart"));
    apart_->setToolTip(tr("Takes the mold apart (Up and Down on the sheet)"));
    row->addWidget(apart_, 1);
    row->addWidget(new QLabel(tr("Apart"), this));
    turned_->setAlignment(Qt::AlignCenter);
    turned_->setMinimumWidth(turned_->fontMetrics().horizontalAdvance(tr("turned %1°").arg(888)) + 4);
    connect(apart_, &QSlider::valueChanged, this, [this](int value) {
        canvas_.set_look({canvas_.look().turn_deg, static_cast<double>(value) / apart_steps});
    });
    connect(&canvas_, &SheetCanvas::look_changed, this, &BuildUpBar::show_look);
    show_look();
}

QToolButton* BuildUpBar::step_button(const QString& icon, const QString& words, double turn_deg) {
    auto* button = new QToolButton(this);
    button->setIcon(theme::icon(icon));
    button->setAutoRaise(true);
    button->setAutoRepeat(true);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setAccessibleName(words);
    button->setToolTip(words);
    connect(button, &QToolButton::clicked, this, [this, turn_deg] {
        canvas_.set_look({canvas_.look().turn_deg + turn_deg, canvas_.look().apart});
    });
    return button;
}

void BuildUpBar::show_look() {
    turned_->setText(tr("turned %1°").arg(qRound(canvas_.look().turn_deg)));
    const QSignalBlocker quiet(apart_);
    apart_->setValue(qRound(canvas_.look().apart * apart_steps));
}

} // namespace drawercast::app
