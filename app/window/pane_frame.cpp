// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/pane_frame.h"

#include "theme/splitter.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>

namespace drawercast::app {

namespace {
constexpr int least_px = 200; // of a pane
constexpr int most_px = 900;
} // namespace

PaneFrame::PaneFrame(QWidget* left, QWidget* middle, QWidget* right, QWidget* rail, QWidget* parent)
    : QWidget(parent), left_(left), middle_(middle), right_(right), rail_(rail),
      panes_(new theme::Splitter(Qt::Horizontal, this)) {
    panes_->addWidget(left_);
    panes_->addWidget(middle_);
    panes_->addWidget(right_);
    panes_->setStretchFactor(1, 1);
    right_->setAutoFillBackground(true); // when it lies over the sheet
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(panes_, 1);
    row->addWidget(rail_);
    rail_->hide();
    connect(panes_, &QSplitter::splitterMoved, this, &PaneFrame::take_widths);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { focus_moved(now); });
}

/// Its children lose the focus as they go; there is no frame left then to fold.
PaneFrame::~PaneFrame() { disconnect(qApp, nullptr, this, nullptr); }

int PaneFrame::narrow_at() const { return narrow_px * QFontInfo(font()).pixelSize() / 13; }

void PaneFrame::show_left(bool on) {
    left_wanted_ = on;
    arrange();
    emit changed();
}

void PaneFrame::show_right(bool on) {
    (narrow_ ? over_ : right_wanted_) = on;
    arrange();
    if (narrow_ && on) right_->setFocus();
    emit changed();
}

/// Takes the right pane out of the row or puts it back.
void PaneFrame::fold(bool narrow) {
    if (narrow == narrow_) return;
    narrow_ = narrow;
    over_ = false;
    if (narrow) {
        right_->setParent(this);
    } else {
        panes_->insertWidget(2, right_);
        set_widths();
    }
    emit changed();
}

void PaneFrame::arrange() {
    left_->setVisible(left_wanted_);
    right_->setVisible(right_shown());
    rail_->setVisible(narrow_);
    if (!narrow_ || !over_) return;
    const int room = width() - rail_->width();
    const int wide = qMin(right_px_, room);
    right_->setGeometry(room - wide, 0, wide, height());
    right_->raise();
}

void PaneFrame::take_widths() {
    const auto sizes = panes_->sizes();
    if (left_wanted_ && sizes.value(0) > 0) left_px_ = sizes[0];
    if (!narrow_ && right_wanted_ && sizes.value(2) > 0) right_px_ = sizes[2];
}

void PaneFrame::set_widths() {
    panes_->setSizes({left_px_, qMax(1, width() - left_px_ - right_px_), right_px_});
}

void PaneFrame::resizeEvent(QResizeEvent*) {
    fold(width() < narrow_at());
    arrange();
}

void PaneFrame::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) {
        fold(width() < narrow_at());
        arrange();
    }
    QWidget::changeEvent(event);
}

void PaneFrame::focus_moved(QWidget* now) {
    if (!over_ || now == nullptr || !(now == middle_ || middle_->isAncestorOf(now))) return;
    show_right(false);
}

QByteArray PaneFrame::state() const {
    QByteArrayList words;
    for (const int number : {left_px_, right_px_, int(left_wanted_), int(right_wanted_)})
        words << QByteArray::number(number);
    return words.join(' ');
}

void PaneFrame::restore(const QByteArray& state) {
    const auto words = state.split(' ');
    if (words.size() == 4) {
        const auto px = [](const QByteArray& word, int usual) {
            bool read = false;
            const int number = word.toInt(&read);
            return read ? qBound(least_px, number, most_px) : usual;
        };
        left_px_ = px(words[0], left_px_);
        right_px_ = px(words[1], right_px_);
        left_wanted_ = words[2] != "0";
        right_wanted_ = words[3] != "0";
    }
    arrange();
    set_widths();
}

void PaneFrame::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    set_widths(); // only now is there room to share
}

} // namespace drawercast::app
