// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/run_list.h"

#include "plan/run_ticks.h"

#include "document/document.h"
#include "language/in_words.h"
#include "sheets/run_words.h"
#include "window/now.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

enum Column { what, drawer, from, until, then, columns };
constexpr int tick_role = Qt::UserRole;

QString words(const std::string& utf8) { return QString::fromStdString(utf8); }

QString joined(const std::vector<Phrase>& all) {
    QStringList list;
    for (const Phrase& one : all) list << in_words(one);
    return list.join(QStringLiteral(", "));
}

/// Under the pointer: long words, which a narrow window cuts short.
void tell_whole(QTreeWidgetItem& row, const QString& note = {}) {
    row.setToolTip(what, note.isEmpty() ? row.text(what) : row.text(what) + '\n' + note);
}

/// Every row that can be ticked, gates after what waits for them.
template <class Act>
void for_each_row(const QTreeWidget& rows, const Act& act) {
    for (int i = 0; i < rows.topLevelItemCount(); ++i) {
        auto* row = rows.topLevelItem(i);
        act(*row);
        for (int k = 0; k < row->childCount(); ++k)
            if (row->child(k)->data(what, tick_role).isValid()) act(*row->child(k));
    }
}

} // namespace

RunList::RunList(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), rows_(new QTreeWidget(this)), told_(new QLabel(this)),
      clear_(new QPushButton(tr("Take all marks back"), this)) {
    rows_->setAccessibleName(tr("What is done when"));
    rows_->setColumnCount(columns);
    rows_->setHeaderLabels({tr("What"), tr("Drawer"), tr("From"), tr("Until"), tr("Then")});
    rows_->setUniformRowHeights(true);
    rows_->setAllColumnsShowFocus(true);
    rows_->header()->setStretchLastSection(false);
    rows_->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    rows_->header()->setSectionResizeMode(what, QHeaderView::Stretch);
    clear_->setToolTip(tr("For the next cast. Undo brings them back."));
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(12, 4, 12, 4);
    foot->addWidget(told_, 1);
    foot->addWidget(clear_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(rows_, 1);
    column->addLayout(foot);
    connect(rows_, &QTreeWidget::itemChanged, this, [this](QTreeWidgetItem* item) { take(*item); });
    connect(clear_, &QPushButton::clicked, this, &RunList::clear_ticks);
    connect(&document_, &Document::shown_changed, this, &RunList::refresh);
}

void RunList::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void RunList::refresh() {
    if (!isVisible()) return;
    const auto& built = document_.last_built();
    auto run = built ? plan::run_sheet(document_.last_built_job(), *built)
                     : plan::run_sheet(document_.shown(), document_.plan());
    const bool same = run.tasks == run_.tasks && run.schedule == run_.schedule;
    run_ = std::move(run);
    if (!same) fill();
    show_ticks();
}

void RunList::fill() {
    const QSignalBlocker quiet(rows_);
    rows_->clear();
    bool several = false;
    for (const auto& slot : run_.schedule.entries) {
        const auto& task = run_.tasks[slot.task];
        several = several || !task.drawer.empty();
        auto* row = new QTreeWidgetItem(rows_);
        row->setText(what, in_words(task.what));
        row->setText(drawer, words(task.drawer));
        row->setText(from, sheets::run_day_and_time(slot.begins_min));
        row->setText(until, sheets::run_until(slot));
        row->setText(then, sheets::run_then(slot));
        row->setData(what, tick_role, words(plan::task_tick(task)));
        if (slot.critical) {
            QFont bold = rows_->font();
            bold.setBold(true);
            row->setFont(what, bold);
        }
        tell_whole(*row, slot.critical ? tr("Can’t wait without making the whole job later") : QString());
        for (std::size_t gate = 0; gate < task.gates.size(); ++gate) {
            auto* child = new QTreeWidgetItem(row);
            child->setText(what, tr("first: %1").arg(in_words(task.gates[gate])));
            child->setData(what, tick_role, words(plan::gate_tick(task, gate)));
            tell_whole(*child);
        }
        if (!task.materials.empty()) {
            auto* child = new QTreeWidgetItem(row);
            child->setText(what, tr("at hand: %1").arg(joined(task.materials)));
            child->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable); // nothing to tick
            tell_whole(*child);
        }
        row->setExpanded(true);
    }
    rows_->setColumnHidden(drawer, !several);
    if (rows_->topLevelItemCount() > 0) rows_->setCurrentItem(rows_->topLevelItem(0));
}

void RunList::show_ticks() {
    const QSignalBlocker quiet(rows_);
    const auto& log = document_.shown().log;
    int ticked = 0, all = 0;
    for_each_row(*rows_, [&](QTreeWidgetItem& item) {
        const bool on = plan::is_ticked(log, item.data(what, tick_role).toString().toStdString());
        item.setCheckState(what, on ? Qt::Checked : Qt::Unchecked);
        ticked += on, ++all;
    });
    rows_->viewport()->update(); // the rows’ signals were held back
    told_->setText(
        all == 0 ? tr("Nothing to do yet: it needs a mold and a dose.")
                 : tr("%1 of %2 marked done. Space marks a row. Bold can’t wait.").arg(ticked).arg(all));
    clear_->setEnabled(ticked > 0);
}

void RunList::take(const QTreeWidgetItem& item) {
    const bool on = item.checkState(what) == Qt::Checked;
    document_.commit(
        on ? tr("Mark “%1”").arg(item.text(what)) : tr("Take the mark of “%1” back").arg(item.text(what)),
        plan::with_tick(document_.job(), item.data(what, tick_role).toString().toStdString(), on, now_s()));
}

void RunList::clear_ticks() {
    document_.commit(tr("Take all marks back"), plan::without_ticks(document_.job(), run_.tasks, now_s()));
}

} // namespace drawercast::app
