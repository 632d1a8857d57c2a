// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/tidy_acts.h"

#include "document/document.h"
#include "document/selection.h"
#include "language/say.h"
#include "window/actions.h"

#include <QCursor>

namespace drawercast::app {

TidyActs::TidyActs(const Desk& desk, Actions& actions, QWidget* window)
    : QObject(window), desk_(desk), menu_(new WaysMenu(desk.document, tr("Tidy"), window)) {
    actions.on("arrange.tidy", [this] { offer(); });
    connect(menu_, &WaysMenu::said, this, &TidyActs::said);
}

void TidyActs::offer() {
    using arrange::Wish;
    menu_->clear();
    for (const Wish wish : {Wish::equal_walls, Wish::labels_one_way, Wish::heavy_in_front}) {
        const auto tidied = arrange::tidied(desk_.document.job(), desk_.selection.drawer(), wish);
        if (arrange::gains(tidied)) menu_->add(words(tidied), tidied.job);
    }
    if (menu_->isEmpty())
        return emit said(tr("Nothing to tidy: walls are even, labels read one way, and what is heavy stands "
                            "as near the front as it can, or nothing has room to move."));
    menu_->popup(QCursor::pos());
}

QString TidyActs::words(const arrange::Tidied& tidied) const {
    const auto length = [&](double mm) {
        return language::say_length(mm, desk_.document.job().display_units);
    };
    const QString before = length(tidied.narrowest_before_mm);
    const QString after = length(tidied.narrowest_after_mm);
    switch (tidied.wish) {
    case arrange::Wish::equal_walls:
        return tr("Equal walls: moves %1; the narrowest goes from %2 to %3")
            .arg(QString::number(tidied.moved), before, after);
    case arrange::Wish::labels_one_way:
        return tr("Labels read one way: turns %1, can’t turn %2; the narrowest wall goes from %3 to %4")
            .arg(QString::number(tidied.moved), QString::number(tidied.left), before, after);
    case arrange::Wish::heavy_in_front:
        return tr("Heavy to the front: moves %1; their center of mass goes from %2 to %3, "
                  "the narrowest wall from %4 to %5")
            .arg(QString::number(tidied.moved), length(tidied.heavy_before_mm), length(tidied.heavy_after_mm),
                 before, after);
    }
    return {};
}

} // namespace drawercast::app
