// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/head.h"

#include "theme/icons.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QToolButton>

namespace drawercast::app {

namespace {

/// An icon that follows the theme: a label's pixmap would keep the colors it was made in.
class Sign final : public QWidget {
  public:
    Sign(const QString& icon, QWidget* parent) : QWidget(parent), icon_(theme::icon(icon)) {
        setFixedSize(20, 20);
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        icon_.paint(&painter, rect());
    }

  private:
    QIcon icon_;
};

} // namespace

Head::Head(const QString& icon, const QString& name, QWidget* parent)
    : QWidget(parent), name_(new QLabel(name, this)), remark_(new QLabel(this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 8, 12, 4);
    row->setSpacing(8);
    row->addWidget(new Sign(icon, this));
    row->addWidget(name_);
    row->addStretch(1);
    row->addWidget(remark_);
    remark_->setTextInteractionFlags(Qt::NoTextInteraction);
    remark_->setMinimumWidth(1); // a long one is cut off; it does not push the pane out of view
    set_fonts();
}

void Head::set_fonts() {
    QFont large = font();
    large.setPixelSize(qMax(12, qRound(QFontInfo(font()).pixelSize() * 15.0 / 13.0)));
    large.setBold(true);
    if (name_->font() != large) name_->setFont(large);
}

void Head::set_remark(const QString& remark) {
    if (remark_->text() != remark) remark_->setText(remark);
}

void Head::set_actions(const QList<QAction*>& actions) {
    for (auto* action : actions) {
        auto* button = new QToolButton(this);
        button->setDefaultAction(action);
        button->setToolButtonStyle(Qt::ToolButtonIconOnly);
        button->setIconSize({18, 18});
        layout()->addWidget(button);
    }
}

void Head::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) set_fonts();
    QWidget::changeEvent(event);
}

} // namespace drawercast::app
