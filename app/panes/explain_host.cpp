// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/explain_host.h"

#include "panes/explain_sheet.h"
#include "panes/figure_button.h"

namespace drawercast::app {

ExplainHost::~ExplainHost() { delete sheet_; }

ExplainSheet& ExplainHost::sheet() {
    if (!sheet_) {
        sheet_ = new ExplainSheet(&pane_);
        connect(sheet_, &ExplainSheet::changed, this, [this] {
            for (const auto& [id, button] : buttons_) button->set_open(id == sheet_->shown());
        });
        connect(sheet_, &ExplainSheet::action_wanted, this, &ExplainHost::action_wanted);
        connect(sheet_, &ExplainSheet::guide_wanted, this, &ExplainHost::guide_wanted);
    }
    return *sheet_;
}

void ExplainHost::explain(const QString& id, const std::vector<FoamFigure>& figures) {
    if (explained() == id)
        sheet().leave();
    else
        sheet().open(id, figures);
}

void ExplainHost::refresh(const std::vector<FoamFigure>& figures) {
    if (sheet_) sheet_->refresh(figures);
}

void ExplainHost::leave() {
    if (sheet_) sheet_->leave();
}

QString ExplainHost::explained() const { return sheet_ ? sheet_->shown() : QString(); }
QString ExplainHost::explanation() const { return sheet_ ? sheet_->text() : QString(); }

} // namespace drawercast::app
