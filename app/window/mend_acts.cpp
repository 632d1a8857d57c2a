// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/mend_acts.h"

#include "plan/sentences.h"

#include "document/document.h"
#include "document/selection.h"
#include "language/say.h"
#include "window/actions.h"

#include <QCursor>

#include <cmath>

namespace drawercast::app {

MendActs::MendActs(const Desk& desk, Actions& actions, QWidget* window)
    : QObject(window), desk_(desk), menu_(new WaysMenu(desk.document, tr("Mend"), window)) {
    actions.on("check.mend", [this] { offer(); });
    connect(menu_, &WaysMenu::said, this, &MendActs::said);
}

void MendActs::offer() {
    const auto& check = desk_.selection.check();
    if (!check) return;
    menu_->clear();
    const auto mends = plan::mends_for(desk_.document.job(), desk_.selection.drawer(), *check);
    if (mends.empty())
        return emit said(
            tr("No small change puts this right: move more than one pocket, or change the drawer."));
    for (const auto& mend : mends) menu_->add(words(mend), mend.job);
    menu_->popup(QCursor::pos());
}

QString MendActs::words(const plan::Mend& mend) const {
    const auto& job = desk_.document.job();
    const auto length = [&](double mm) { return language::say_length(std::abs(mm), job.display_units); };
    const QString name = QString::fromStdString(plan::subject_name(mend.subject, job));
    switch (mend.kind) {
    case plan::Mend::Kind::move: {
        QStringList ways;
        if (mend.by.x != 0) ways << (mend.by.x > 0 ? tr("%1 right") : tr("%1 left")).arg(length(mend.by.x));
        if (mend.by.y != 0) ways << (mend.by.y > 0 ? tr("%1 back") : tr("%1 forward")).arg(length(mend.by.y));
        return tr("Move “%1” %2").arg(name, ways.join(tr(", ")));
    }
    case plan::Mend::Kind::shallower:
        return tr("Make the pockets of “%1” %2 shallower").arg(name, length(mend.amount_mm));
    case plan::Mend::Kind::deeper:
        return tr("Make the pockets of “%1” %2 deeper").arg(name, length(mend.amount_mm));
    case plan::Mend::Kind::thicker_insert:
        return tr("Make the insert %1 thicker").arg(length(mend.amount_mm));
    case plan::Mend::Kind::automatic_dose:
        return tr("Let the overpack be worked out");
    }
    return {};
}

} // namespace drawercast::app
