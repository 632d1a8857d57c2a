// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/arrange_dialog.h"

#include "language/spoken.h"

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <cmath>

namespace drawercast::app {

namespace {

constexpr int thousandths = 1000;
constexpr int above_edge_px = 40;
constexpr int beside_edge_px = 8;
constexpr int least_ms = 300; ///< a search may end sooner than anyone sees the dialog
constexpr int most_ms = 1000; ///< it waits to be given the keyboard
constexpr int look_again_ms = 50;
constexpr int width_px = 300; ///< as wide as the right pane, so that no part of the plan is under it

} // namespace

QString arranged_words(const arrange::Arranged& found) {
    return language::tr("Placed: %1. Moved: %2. Found no room: %3.")
        .arg(found.placed)
        .arg(found.moved)
        .arg(found.left);
}

QString need_words(const arrange::Need& need) {
    const auto percent = [](double share) { return QString::number(std::round(share * 100)); };
    return language::tr("Of the room within the edges, objects need %1\u00a0%, with their fit "
                        "%2\u00a0%, with walls %3\u00a0%.")
        .arg(percent(need.objects), percent(need.with_fit), percent(need.with_walls));
}

QString slot_words(int count) {
    return language::tr("Slots too narrow for foam to flow through by itself, by the walls "
                        "this job asks for: %1.")
        .arg(count);
}

ArrangeDialog::ArrangeDialog(Arranging::Task task, const QString& need, QWidget* window)
    : QDialog(window), arranging_(std::move(task)), words_(new QLabel(tr("Looking for places…"), this)),
      progress_(new QProgressBar(this)), keep_(new QPushButton(tr("&Keep the best so far"), this)),
      back_(new QPushButton(tr("&Back to what was"), this)) {
    setWindowTitle(tr("Arrange for me"));
    setWindowModality(Qt::WindowModal);
    words_->setWordWrap(true);
    setFixedWidth(width_px);
    progress_->setRange(0, thousandths);
    progress_->setTextVisible(false);
    progress_->setAccessibleName(tr("How much of the search is done"));
    keep_->setDefault(true);
    auto* all = new QVBoxLayout(this);
    all->addWidget(words_);
    auto* takes = new QLabel(need, this);
    takes->setWordWrap(true);
    all->addWidget(takes);
    all->addWidget(progress_);
    all->addWidget(keep_);
    all->addWidget(back_);
    connect(keep_, &QPushButton::clicked, this, &ArrangeDialog::finish);
    connect(back_, &QPushButton::clicked, this, &ArrangeDialog::drop);
    connect(&arranging_, &Arranging::better, this, &ArrangeDialog::show_best);
    connect(&arranging_, &Arranging::progressed, this,
            [this](double done) { progress_->setValue(static_cast<int>(done * thousandths)); });
    connect(&arranging_, &Arranging::over, this, &ArrangeDialog::end);
}

void ArrangeDialog::begin() {
    open();
    const QPoint corner =
        parentWidget()->mapToGlobal(QPoint(parentWidget()->width(), parentWidget()->height()));
    move(corner - QPoint(frameGeometry().width() + beside_edge_px, frameGeometry().height() + above_edge_px));
    shown_for_.start();
    arranging_.begin();
}

void ArrangeDialog::show_best(const arrange::Arranged& found) {
    if (dropped_) return;
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

/// Hidden before the desktop has given it the keyboard, it would take that along: the window behind it would
/// get no keys until it is clicked.
void ArrangeDialog::end(const arrange::Arranged& found) {
    const auto ms = shown_for_.elapsed();
    if (ms < least_ms || (!isActiveWindow() && ms < most_ms))
        return QTimer::singleShot(look_again_ms, this, [this, found] { end(found); });
    hide();
    if (dropped_)
        emit dropped();
    else
        emit kept(found);
    deleteLater();
}

} // namespace drawercast::app
