// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/foam_pane.h"

#include "document/document.h"
#include "document/selection.h"
#include "panes/head.h"

#include <QGridLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

const plan::DrawerPlan* shown_drawer(const Document& document, const Selection& selection) {
    for (const auto& drawer : document.plan().drawers)
        if (drawer.id == selection.drawer()) return &drawer;
    return nullptr;
}

int to_mend(const plan::DrawerPlan& drawer) {
    int count = 0;
    for (const auto& check : drawer.checks)
        count += check.severity == layout::Severity::mend && !check.left_as_is;
    return count;
}

} // namespace

FoamPane::FoamPane(const Document& document, const Selection& selection, QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), head_(new Head("foam", tr("Foam"), this)),
      none_(new QLabel(this)), grid_(new QGridLayout), unit_button_(new QToolButton(this)),
      explanation_(new QLabel(this)) {
    none_->setWordWrap(true);
    none_->setContentsMargins(12, 0, 12, 8);
    grid_->setContentsMargins(12, 0, 12, 2);
    grid_->setHorizontalSpacing(8);
    grid_->setVerticalSpacing(0);
    grid_->setColumnStretch(0, 1);
    unit_button_->setAutoRaise(true);
    explanation_->setWordWrap(true);
    explanation_->setTextFormat(Qt::RichText);
    explanation_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    explanation_->setContentsMargins(12, 0, 12, 8);
    explanation_->setFrameShape(QFrame::NoFrame);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(head_);
    column->addWidget(none_);
    column->addLayout(grid_);
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(12, 0, 12, 4);
    foot->addWidget(unit_button_);
    foot->addStretch(1);
    column->addLayout(foot);
    column->addWidget(explanation_);
    connect(unit_button_, &QToolButton::clicked, this, [this] {
        unit_ = unit_ == DosingUnit::mass ? DosingUnit::volume : DosingUnit::mass;
        refresh();
    });
    connect(&document, &Document::shown_changed, this, &FoamPane::refresh);
    connect(&selection, &Selection::changed, this, &FoamPane::refresh);
    refresh();
}

void FoamPane::explain(const QString& id) {
    explained_ = explained_ == id ? QString() : id;
    show_explanation();
}

void FoamPane::refresh() {
    const auto* drawer = shown_drawer(document_, selection_);
    figures_ = drawer == nullptr ? std::vector<FoamFigure>()
                                 : foam_figures(document_.shown(), document_.plan(), *drawer, unit_);
    const int mends = drawer == nullptr ? 0 : to_mend(*drawer);
    head_->set_remark(mends > 0 ? tr("not yet: %n to mend", nullptr, mends)
                                : QString::fromStdString(document_.shown().foam->name));
    none_->setVisible(figures_.empty());
    none_->setText(drawer == nullptr
                       ? tr("How much of each part to mix, how hard it pushes and what to buy, once there "
                            "is a drawer.")
                       : tr("No dose yet: a check says what is missing."));
    unit_button_->setVisible(!figures_.empty());
    unit_button_->setText(unit_ == DosingUnit::mass ? tr("dose by volume") : tr("dose by mass"));
    show_rows();
    show_explanation();
}

void FoamPane::show_rows() {
    while (values_.size() < figures_.size()) {
        const int row = static_cast<int>(values_.size());
        auto* label = new QLabel(this);
        label->setBackgroundRole(QPalette::Window);
        auto* value = new QToolButton(this);
        value->setAutoRaise(true);
        value->setToolTip(tr("How this figure comes about"));
        connect(value, &QToolButton::clicked, this, [this, row] {
            if (row < static_cast<int>(figures_.size())) explain(figures_[static_cast<std::size_t>(row)].id);
        });
        grid_->addWidget(label, row, 0);
        grid_->addWidget(value, row, 1, Qt::AlignRight);
        labels_.push_back(label);
        values_.push_back(value);
    }
    for (std::size_t row = 0; row < values_.size(); ++row) {
        const bool used = row < figures_.size();
        labels_[row]->setVisible(used);
        values_[row]->setVisible(used);
        if (!used) continue;
        if (labels_[row]->text() != figures_[row].label) labels_[row]->setText(figures_[row].label);
        if (values_[row]->text() != figures_[row].value) values_[row]->setText(figures_[row].value);
        values_[row]->setAccessibleName(figures_[row].label + QStringLiteral(": ") + figures_[row].value);
    }
}

void FoamPane::show_explanation() {
    for (const auto& figure : figures_)
        if (figure.id == explained_) {
            explanation_->setText(explanation_html(figure));
            explanation_->show();
            return;
        }
    explanation_->hide();
}

} // namespace drawercast::app
