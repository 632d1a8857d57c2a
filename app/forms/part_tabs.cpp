// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/part_tabs.h"

#include "theme/icons.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QStackedWidget>
#include <QTabBar>
#include <QToolButton>
#include <QVBoxLayout>

namespace drawercast::app {

PartTabs::PartTabs(const Words& words, int least, int most, QWidget* parent)
    : QWidget(parent), words_(words), least_(least), most_(most), head_(new QHBoxLayout),
      tabs_(new QTabBar(this)), add_(new QToolButton(this)), take_(new QToolButton(this)),
      stack_(new QStackedWidget(this)) {
    tabs_->setExpanding(false);
    tabs_->setDrawBase(true);
    tabs_->setUsesScrollButtons(true);
    tabs_->setAccessibleName(words_.one.arg(QString()).trimmed());
    for (auto [button, icon, text] :
         {std::tuple{add_, "object", words_.add}, {take_, "delete", words_.take}}) {
        button->setIcon(theme::icon(QString::fromLatin1(icon)));
        button->setToolTip(text);
        button->setAccessibleName(text);
        button->setAutoRaise(true);
        button->setFocusPolicy(Qt::StrongFocus);
    }
    add_->setText(words_.add);
    add_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    head_->setSpacing(4);
    head_->addWidget(tabs_, 0, Qt::AlignBottom);
    head_->addWidget(add_);
    head_->addStretch(1);
    head_->addWidget(take_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addLayout(head_);
    all->addWidget(stack_, 1);
    if (!words_.none.isEmpty()) {
        auto* none = new QLabel(words_.none, this);
        none->setWordWrap(true);
        none->setAlignment(Qt::AlignTop | Qt::AlignLeft);
        all->insertWidget(1, none);
        none_ = none;
    }
    connect(tabs_, &QTabBar::currentChanged, this, [this](int index) {
        stack_->setCurrentIndex(index);
        emit turned();
    });
    connect(add_, &QToolButton::clicked, this, &PartTabs::asked_for_another);
    connect(take_, &QToolButton::clicked, this, &PartTabs::take);
    refresh();
}

void PartTabs::add_page(QWidget* page) {
    stack_->addWidget(page);
    refresh();
    show_page(page);
}

QList<QWidget*> PartTabs::pages() const {
    QList<QWidget*> all;
    for (int i = 0; i < stack_->count(); ++i) all << stack_->widget(i);
    return all;
}

void PartTabs::show_page(QWidget* page) { tabs_->setCurrentIndex(stack_->indexOf(page)); }

void PartTabs::take_page(QWidget* page) {
    show_page(page);
    take();
}

void PartTabs::add_to_head(QWidget* widget) { head_->insertWidget(head_->count() - 1, widget); }

void PartTabs::set_to_mend(int index, bool to_mend) {
    const QString words = words_.one.arg(index + 1);
    tabs_->setTabText(index, to_mend ? tr("%1 (!)").arg(words) : words);
    tabs_->setTabToolTip(index, to_mend ? tr("Something to mend here") : QString());
}

void PartTabs::take() {
    QWidget* page = stack_->currentWidget();
    if (!page || stack_->count() <= least_) return;
    stack_->removeWidget(page);
    page->deleteLater();
    refresh();
    emit taken_away();
}

/// One tab for each page, with its number.
void PartTabs::refresh() {
    const int shown = stack_->currentIndex();
    {
        const QSignalBlocker quiet(tabs_);
        while (tabs_->count() > stack_->count()) tabs_->removeTab(tabs_->count() - 1);
        while (tabs_->count() < stack_->count()) tabs_->addTab(QString());
        for (int i = 0; i < tabs_->count(); ++i) tabs_->setTabText(i, words_.one.arg(i + 1));
        tabs_->setCurrentIndex(shown);
    }
    tabs_->setVisible(stack_->count() > 0);
    stack_->setVisible(stack_->count() > 0);
    if (none_) none_->setVisible(stack_->count() == 0);
    add_->setEnabled(stack_->count() < most_);
    take_->setEnabled(stack_->count() > least_);
    take_->setVisible(stack_->count() > 0);
}

} // namespace drawercast::app
