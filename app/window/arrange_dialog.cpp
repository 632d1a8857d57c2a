// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/arrange_dialog.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

constexpr int thousandths = 1000;
constexpr int above_edge_px = 40;
constexpr int narrowest_px = 420;

} // namespace

QString arranged_words(const arrange::Arranged& found) {
    return QCoreApplication::translate("ArrangeDialog", "Placed: %1. Moved: %2. Found no room: %3.")
        .arg(found.placed)
        .arg(found.moved)
        .arg(found.left);
}

ArrangeDialog::ArrangeDialog(Arranging::Task task, QWidget* window)
    : QDialog(window), arranging_(std::move(task)), words_(new QLabel(tr("Looking for places…"), this)),
      progress_(new QProgressBar(this)), keep_(new QPushButton(tr("&Keep the best so far"), this)),
      back_(new QPushButton(tr("&Back to what was"), this)) {
    setWindowTitle(tr("Arrange for me"));
    setWindowModality(Qt::WindowModal);
    setMinimumWidth(narrowest_px);
    progress_->setRange(0, thousandths);
    progress_->setTextVisible(false);
    progress_->setAccessibleName(tr("How much of the search is done"));
    keep_->setDefault(true);
    auto* all = new QVBoxLayout(this);
    all->addWidget(words_);
    all->addWidget(progress_);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(back_);
    buttons->addWidget(keep_);
    all->addLayout(buttons);
    connect(keep_, &QPushButton::clicked, this, &ArrangeDialog::finish);
    connect(back_, &QPushButton::clicked, this, &ArrangeDialog::drop);
    connect(&arranging_, &Arranging::better, this, &ArrangeDialog::show_best);
    connect(&arranging_, &Arranging::progressed, this,
            [this](double done) { progress_->setValue(static_cast<int>(done * thousandths)); });
    connect(&arranging_, &Arranging::over, this, &ArrangeDialog::end);
}

void ArrangeDialog::begin() {
    open();
    const QPoint middle = parentWidget()->mapToGlobal(QPoint(parentWidget()->width() / 2, 0));
    const QPoint edge = parentWidget()->mapToGlobal(QPoint(0, parentWidget()->height()));
    move(middle.x() - width() / 2, edge.y() - height() - above_edge_px);
    arranging_.begin();
}

void ArrangeDialog::show_best(const arrange::Arranged& found) {
    if (dropped_) return;
    best_ = found;
    words_->setText(arranged_words(found));
    emit better(found);
}

/// The search ends by itself soon after, with its best.
void ArrangeDialog::finish() {
    keep_->setEnabled(false);
    back_->setEnabled(false);
    arranging_.stop();
}

void ArrangeDialog::drop() {
    dropped_ = true;
    finish();
}

void ArrangeDialog::end(const arrange::Arranged& found) {
    hide();
    if (dropped_)
        emit dropped();
    else
        emit kept(found);
    deleteLater();
}

} // namespace drawercast::app
