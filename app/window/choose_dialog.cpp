// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/choose_dialog.h"

#include "base/contains.h"
#include "plan/sentences.h"

#include "forms/dialog_buttons.h"
#include "forms/small_screen.h"
#include "panes/objects_model.h"
#include "sheets/zones.h"

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr int subject_role = Qt::UserRole;

} // namespace

std::vector<ListedPocket> listed_pockets(const job::Job& job, const plan::DrawerPlan& drawer) {
    std::vector<ListedPocket> list;
    if (!drawer.insert) return list;
    const auto inside = shape::bounds(drawer.insert->drawer.contour);
    for (const auto& pocket : drawer.pockets) {
        const auto* object = job::find_object(job, pocket->object);
        const auto found = job::find_pocket(job, pocket->subject);
        if (object == nullptr || found.pocket == nullptr) continue;
        const auto middle = shape::Point<shape::InDrawer>::of(pocket->box.center());
        const QString words =
            ChooseDialog::tr("%1, %2, zone %3")
                .arg(QString::fromStdString(plan::subject_name(pocket->subject, job)),
                     size_text(*object, job.display_units),
                     QString::fromStdString(sheets::zone_of(middle, inside, job.display_units)));
        list.push_back(
            {pocket->subject, found.pocket->locked ? ChooseDialog::tr("%1, locked").arg(words) : words});
    }
    std::stable_sort(list.begin(), list.end(), [](const ListedPocket& a, const ListedPocket& b) {
        return QString::localeAwareCompare(a.words, b.words) < 0;
    });
    return list;
}

ChooseDialog::ChooseDialog(const std::vector<ListedPocket>& pockets, const job::Subjects& chosen, Show show,
                           QWidget* parent)
    : QDialog(parent), show_(std::move(show)), find_(new QLineEdit(this)), list_(new QListWidget(this)) {
    setWindowTitle(tr("Choose pockets from a list"));
    find_->setPlaceholderText(tr("Find by name, size or zone"));
    find_->setAccessibleName(tr("Find by name, size or zone"));
    find_->setClearButtonEnabled(true);
    list_->setAccessibleName(tr("Pockets of this drawer"));
    list_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    for (const auto& pocket : pockets) {
        auto* item = new QListWidgetItem(pocket.words, list_);
        item->setData(subject_role, QString::fromStdString(pocket.subject));
        item->setSelected(contains(chosen, pocket.subject));
    }
    auto* hint = new QLabel(tr("Ctrl or Shift with a click chooses several."), this);
    auto* buttons = dialog_buttons(*this, QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    take_ = buttons->button(QDialogButtonBox::Ok);
    auto* all = buttons->addButton(tr("&All found"), QDialogButtonBox::ActionRole);
    all->setAutoDefault(false);
    connect(all, &QPushButton::clicked, this, &ChooseDialog::choose_all);
    connect(find_, &QLineEdit::textChanged, this, &ChooseDialog::find);
    connect(list_, &QListWidget::itemSelectionChanged, this, &ChooseDialog::follow);
    connect(list_, &QListWidget::itemActivated, this, &QDialog::accept);
    auto* column = new QVBoxLayout(this);
    column->addWidget(find_);
    column->addWidget(list_, 1);
    column->addWidget(hint);
    column->addWidget(buttons);
    fit_screen(*this, {420, 460});
    follow();
    find_->setFocus();
}

void ChooseDialog::find(const QString& words) {
    const auto parts = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (int i = 0; i < list_->count(); ++i) {
        const QString text = list_->item(i)->text();
        list_->item(i)->setHidden(!std::all_of(parts.begin(), parts.end(), [&](const QString& part) {
            return text.contains(part, Qt::CaseInsensitive);
        }));
    }
}

void ChooseDialog::choose_all() {
    for (int i = 0; i < list_->count(); ++i) list_->item(i)->setSelected(!list_->item(i)->isHidden());
}

job::Subjects ChooseDialog::chosen() const {
    job::Subjects subjects;
    for (int i = 0; i < list_->count(); ++i)
        if (list_->item(i)->isSelected())
            subjects.push_back(list_->item(i)->data(subject_role).toString().toStdString());
    return subjects;
}

void ChooseDialog::follow() {
    const auto subjects = chosen();
    take_->setText(subjects.empty() ? tr("Choose none") : tr("Choose %1").arg(subjects.size()));
    if (show_) show_(subjects);
}

} // namespace drawercast::app
