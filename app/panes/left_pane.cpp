// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/left_pane.h"

#include "document/document.h"
#include "document/selection.h"
#include "panes/drawer_delegate.h"
#include "panes/drawers_model.h"
#include "panes/head.h"
#include "panes/objects_model.h"
#include "panes/objects_table.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QSortFilterProxyModel>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

QString link(const QAction* action) {
    return QStringLiteral("<a href='%1'>%2</a>")
        .arg(action->objectName(), action->text().remove(u'&').remove(u'…').toHtmlEscaped());
}

/// What there is to do, each act a link with its key.
QString links(const QList<QAction*>& actions) {
    QString html;
    for (const auto* action : actions) {
        const QString key = action->shortcut().toString(QKeySequence::NativeText);
        html += QStringLiteral("<p style='margin:6px 0 0 0'>%1%2</p>")
                    .arg(link(action),
                         key.isEmpty() ? QString() : QStringLiteral(" &nbsp;") + key.toHtmlEscaped());
    }
    return html;
}

} // namespace

LeftPane::LeftPane(const Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent), document_(document), selection_(selection), drawers_(new DrawersModel(document, this)),
      objects_(new ObjectsModel(document, this)), found_(new QSortFilterProxyModel(this)),
      drawers_head_(new Head("drawer", tr("Drawers"), this)),
      objects_head_(new Head("object", tr("Objects"), this)), drawers_list_(new QListView(this)),
      objects_table_(new ObjectsTable(this)), find_(new QLineEdit(this)), no_drawer_(new QLabel(this)),
      nothing_(new QLabel(this)), object_buttons_(new QHBoxLayout) {
    found_->setSourceModel(objects_);
    found_->setFilterCaseSensitivity(Qt::CaseInsensitive);
    found_->setFilterKeyColumn(ObjectsModel::name_column);

    drawers_list_->setModel(drawers_);
    drawers_list_->setItemDelegate(new DrawerDelegate(drawers_list_));
    drawers_list_->setFrameShape(QFrame::NoFrame);
    drawers_list_->setAccessibleName(tr("Drawers"));
    drawers_list_->setUniformItemSizes(true);
    objects_table_->setModel(found_);
    constexpr int least_rows = 4; // what is higher than the window scrolls as a whole
    objects_table_->setMinimumHeight(least_rows * 36);
    find_->setPlaceholderText(tr("Find an object"));
    find_->setAccessibleName(tr("Find an object"));
    find_->setClearButtonEnabled(true);
    for (auto* clear : find_->findChildren<QToolButton*>()) clear->setAccessibleName(tr("Clear"));
    for (auto* words : {no_drawer_, nothing_}) {
        words->setWordWrap(true);
        words->setTextFormat(Qt::RichText);
        words->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
        words->setContentsMargins(12, 4, 12, 8);
        words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
        words->hide();
    }

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(drawers_head_);
    column->addWidget(no_drawer_);
    column->addWidget(drawers_list_);
    column->addWidget(objects_head_);
    object_buttons_->setContentsMargins(12, 2, 8, 6);
    object_buttons_->setSpacing(0);
    object_buttons_->addWidget(find_, 1);
    object_buttons_->addSpacing(4);
    column->addLayout(object_buttons_);
    column->addWidget(nothing_, 1);
    column->addWidget(objects_table_, 1);
    setMinimumWidth(200);
    connect_views();
    show_counts();
    show_choice();
}

void LeftPane::connect_views() {
    connect(find_, &QLineEdit::textChanged, this, [this](const QString& text) {
        found_->setFilterFixedString(text);
        show_counts();
    });
    connect(drawers_list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& now) {
                if (now.isValid())
                    selection_.choose_drawer(now.data(DrawersModel::id_role).toString().toStdString());
            });
    connect(objects_table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& now) {
                if (now.isValid())
                    selection_.choose_object(now.data(ObjectsModel::id_role).toString().toStdString());
            });
    connect(objects_table_, &QTableView::activated, this, [this](const QModelIndex& at) {
        emit object_activated(at.data(ObjectsModel::id_role).toString());
    });
    connect(objects_table_, &QTableView::customContextMenuRequested, this, [this](const QPoint& at) {
        if (objects_table_->indexAt(at).isValid())
            emit menu_wanted(objects_table_->viewport()->mapToGlobal(at));
    });
    drawers_list_->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(drawers_list_, &QListView::customContextMenuRequested, this, [this](const QPoint& at) {
        if (drawers_->rowCount() > 0) emit drawer_menu_wanted(drawers_list_->viewport()->mapToGlobal(at));
    });
    for (auto* words : {no_drawer_, nothing_})
        connect(words, &QLabel::linkActivated, this, &LeftPane::trigger);
    connect(&selection_, &Selection::changed, this, &LeftPane::show_choice);
    connect(&document_, &Document::shown_changed, this, [this] {
        show_counts();
        show_choice();
    });
}

void LeftPane::set_drawer_actions(const QList<QAction*>& actions) {
    drawers_head_->set_actions(actions);
    drawer_actions_ = actions;
    show_counts();
}

void LeftPane::set_object_actions(const QList<QAction*>& actions) {
    object_actions_ = actions;
    for (auto* action : actions) {
        auto* button = new QToolButton(this);
        button->setDefaultAction(action);
        button->setToolButtonStyle(Qt::ToolButtonIconOnly);
        button->setIconSize({18, 18});
        object_buttons_->addWidget(button);
    }
    show_counts();
}

void LeftPane::add_below(QWidget* pane) { layout()->addWidget(pane); }

void LeftPane::trigger(const QString& name) {
    for (auto* action : drawer_actions_ + object_actions_)
        if (action->objectName() == name) action->trigger();
}

void LeftPane::show_counts() {
    const int drawers = drawers_->rowCount();
    const int row = drawers_list_->sizeHintForRow(0);
    constexpr int most_rows = 5;
    drawers_list_->setFixedHeight(row > 0 ? row * qBound(1, drawers, most_rows) + 2 : 0);
    drawers_head_->set_remark(drawers == 0 ? QString() : QString::number(drawers));
    objects_head_->set_remark(
        objects_->rowCount() == 0
            ? QString()
            : tr("%1 of %2 placed").arg(objects_->placed_in_all()).arg(objects_->count_in_all()));
    show_what_is_missing();
}

/// Empty lists say what goes there and what to do next.
void LeftPane::show_what_is_missing() {
    const bool no_drawer = drawers_->rowCount() == 0;
    no_drawer_->setVisible(no_drawer);
    drawers_list_->setHidden(no_drawer);
    if (no_drawer)
        no_drawer_->setText(tr("No drawer yet. Measure its inside: width, depth and clear height.") +
                            links(drawer_actions_.mid(0, 1)));
    const bool searched = !find_->text().isEmpty();
    const bool nothing = found_->rowCount() == 0;
    nothing_->setVisible(nothing);
    objects_table_->setHidden(nothing);
    if (!nothing) return;
    nothing_->setText(
        searched
            ? tr("No object’s name holds “%1”.").arg(find_->text().toHtmlEscaped()) +
                  links(object_actions_.mid(0, 1))
            : tr("No objects yet. Each thing that gets a pocket is an object here: its outline, how deep it "
                 "sits, its mass.") +
                  links(object_actions_.mid(0, 2)));
}

void LeftPane::show_choice() {
    const int drawer = drawers_->row_of(selection_.drawer());
    if (drawer != drawers_list_->currentIndex().row())
        drawers_list_->setCurrentIndex(drawers_->index(drawer));
    const int object = objects_->row_of(selection_.object());
    const QModelIndex row = found_->mapFromSource(objects_->index(object, 0));
    if (!row.isValid()) // none, or one that is not among those found
        objects_table_->setCurrentIndex({});
    else if (row.row() != objects_table_->currentIndex().row())
        show_object(row);
}

/// A row that was only just added has no height yet: it is gone to once it is laid out.
void LeftPane::show_object(const QModelIndex& row) {
    objects_table_->setCurrentIndex(row);
    QTimer::singleShot(0, this, [this, at = QPersistentModelIndex(row)] { objects_table_->scrollTo(at); });
}

} // namespace drawercast::app
