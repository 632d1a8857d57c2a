// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/standard_dialog.h"

#include "job/catalog.h"

#include "forms/dialog_buttons.h"
#include "forms/object_picture.h"
#include "forms/small_screen.h"
#include "language/goods.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace drawercast::app {

namespace {

/// The catalog's, called as the maker speaks: what is taken is the maker's own from then on.
std::vector<job::Object> all_objects() {
    auto objects = job::standard_objects();
    for (job::Object& object : objects)
        for (std::string* words : {&object.name, &object.note})
            *words = language::goods_name(*words).toStdString();
    return objects;
}

/// Every typed word must be found somewhere in the name or the source.
bool answers(const job::Object& object, const QString& words) {
    const QString text = QString::fromStdString(object.name + ' ' + object.note);
    const auto parts = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return std::all_of(parts.begin(), parts.end(),
                       [&](const QString& part) { return text.contains(part, Qt::CaseInsensitive); });
}

} // namespace

StandardDialog::StandardDialog(const FormContext& context, QWidget* parent)
    : QDialog(parent), all_(all_objects()), find_(new QLineEdit(this)), list_(new QListWidget(this)),
      picture_(new ObjectPicture(context, this)), source_(new QLabel(this)) {
    setWindowTitle(tr("Objects of published size"));
    find_->setPlaceholderText(tr("Find by name or standard"));
    find_->setAccessibleName(tr("Find by name or standard"));
    find_->setClearButtonEnabled(true);
    list_->setAccessibleName(tr("Objects of published size"));
    list_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    for (const auto& object : all_) list_->addItem(QString::fromStdString(object.name));
    source_->setWordWrap(true);
    source_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    source_->setMinimumHeight(3 * fontMetrics().height());
    source_->setAlignment(Qt::AlignTop | Qt::AlignLeft);

    auto* buttons = dialog_buttons(*this, QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    take_ = buttons->button(QDialogButtonBox::Ok);
    connect(find_, &QLineEdit::textChanged, this, &StandardDialog::find);
    connect(list_, &QListWidget::itemSelectionChanged, this, &StandardDialog::show_choice);
    connect(list_, &QListWidget::itemDoubleClicked, this, &QDialog::accept);

    auto* left = new QVBoxLayout;
    left->addWidget(find_);
    left->addWidget(list_, 1);
    auto* right = new QVBoxLayout;
    right->addWidget(picture_, 1);
    right->addWidget(source_);
    auto* row = new QHBoxLayout;
    row->addLayout(left, 2);
    row->addLayout(right, 3);
    auto* all = new QVBoxLayout(this);
    all->addLayout(row, 1);
    all->addWidget(buttons);
    fit_screen(*this, {760, 560});
    list_->setCurrentRow(0);
}

void StandardDialog::find(const QString& words) {
    int first = -1;
    for (int i = 0; i < list_->count(); ++i) {
        const bool found = answers(all_[static_cast<std::size_t>(i)], words);
        list_->item(i)->setHidden(!found);
        if (found && first < 0) first = i;
    }
    list_->clearSelection();
    list_->setCurrentRow(first);
}

void StandardDialog::show_choice() {
    const auto chosen = objects();
    take_->setEnabled(!chosen.empty());
    take_->setText(chosen.size() > 1 ? tr("Add %1 objects").arg(chosen.size()) : tr("Add object"));
    const auto* shown = list_->currentItem();
    if (shown == nullptr || shown->isHidden()) return source_->clear();
    const auto& object = all_[static_cast<std::size_t>(list_->currentRow())];
    picture_->set_object(object);
    source_->setText(QString::fromStdString(object.note));
}

std::vector<job::Object> StandardDialog::objects() const {
    std::vector<job::Object> chosen;
    for (int i = 0; i < list_->count(); ++i) {
        if (!list_->item(i)->isSelected() || list_->item(i)->isHidden()) continue;
        chosen.push_back(all_[static_cast<std::size_t>(i)]);
        chosen.back().id.clear();
    }
    return chosen;
}

} // namespace drawercast::app
