// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/right_pane.h"

#include "panes/checks_pane.h"
#include "panes/foam_pane.h"
#include "panes/mold_pane.h"
#include "window/actions.h"
#include "window/scrolled.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <optional>

namespace drawercast::app {

namespace {

constexpr int checks_px = 230;
constexpr int answers_px = 410;

} // namespace

RightPane::RightPane(Document& document, Selection& selection, Actions& actions, QWidget* parent)
    : theme::Splitter(Qt::Vertical, parent), checks_(new ChecksPane(document, selection, this)),
      foam_(new FoamPane(document, selection, this)), mold_(new MoldPane(document, selection, this)) {
    for (const char* id : {"check.mend", "check.leave", "check.take_back", "check.guide"})
        checks_->add_action(actions[id]);
    addWidget(checks_);
    auto* column = new QWidget(this);
    column_ = new QVBoxLayout(column);
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(0);
    column_->addWidget(foam_);
    column_->addWidget(mold_);
    column_->addStretch(1);
    answers_ = scrolled(column);
    addWidget(answers_);
    setStretchFactor(0, 1);
    setStretchFactor(1, 3);
    setSizes({checks_px, answers_px});
    setMinimumWidth(220);
    connect(foam_, &FoamPane::action_wanted, this, &RightPane::action_wanted);
    connect(mold_, &MoldPane::action_wanted, this, &RightPane::action_wanted);
    connect(foam_, &FoamPane::guide_wanted, this, &RightPane::guide_wanted);
    connect(mold_, &MoldPane::guide_wanted, this, &RightPane::guide_wanted);
}

void RightPane::arrange_for(SheetId sheet) {
    const bool mold_first = spec_of(sheet).tool == SheetTool::vents;
    mold_->open_for(!mold_first                 ? std::nullopt
                    : sheet == SheetId::air_map ? std::optional(MoldPart::vents)
                                                : std::optional(MoldPart::plate));
    column_->removeWidget(foam_);
    column_->removeWidget(mold_);
    column_->insertWidget(0, mold_first ? static_cast<QWidget*>(mold_) : foam_);
    column_->insertWidget(1, mold_first ? static_cast<QWidget*>(foam_) : mold_);
    answers_->verticalScrollBar()->setValue(0);
}

} // namespace drawercast::app
