// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/cut_order.h"

#include "document/document.h"
#include "language/goods.h"
#include "sheets/bench_pen.h"
#include "sheets/part_words.h"

#include <QHeaderView>
#include <QSignalBlocker>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace drawercast::app {

namespace {

enum Column { number, way, fence, panel, frees, columns };
constexpr int place_role = Qt::UserRole;

} // namespace

CutOrder::CutOrder(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), rows_(new QTreeWidget(this)) {
    rows_->setAccessibleName(tr("Cuts in order"));
    rows_->setColumnCount(columns);
    rows_->setHeaderLabels(
        {tr("Cut", "of a saw"), tr("Direction"), tr("Fence at"), tr("Of the piece"), tr("Part cut free")});
    rows_->setUniformRowHeights(true);
    rows_->setAllColumnsShowFocus(true);
    rows_->header()->setStretchLastSection(true);
    rows_->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(rows_);
    connect(rows_, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* row) {
        if (row == nullptr || row->parent() == nullptr) return;
        const QPoint sheet = row->parent()->data(number, place_role).toPoint();
        emit chosen({static_cast<std::size_t>(sheet.x()), static_cast<std::size_t>(sheet.y()),
                     static_cast<std::size_t>(row->data(number, place_role).toInt())});
    });
    connect(&document_, &Document::shown_changed, this, &CutOrder::refresh);
}

void CutOrder::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void CutOrder::refresh() {
    if (!isVisible()) return;
    const auto& built = document_.last_built();
    const auto stock = built ? built->stock : nullptr;
    if (stock == stock_) return;
    stock_ = stock;
    fill();
}

QString CutOrder::said(double mm) const {
    return QString::fromStdString(sheets::length_words(document_.last_built_job(), mm));
}

void CutOrder::fill() {
    const QSignalBlocker quiet(rows_);
    rows_->clear();
    if (!stock_) return;
    for (std::size_t board = 0; board < stock_->cuts.boards.size(); ++board)
        for (std::size_t sheet = 0; sheet < stock_->cuts.boards[board].sheets.size(); ++sheet)
            add_sheet(board, sheet);
}

void CutOrder::add_sheet(std::size_t board, std::size_t sheet) {
    const stock::BoardCut& cut = stock_->cuts.boards[board];
    auto* head = new QTreeWidgetItem(rows_);
    head->setText(number, tr("%1, sheet %2 of %3")
                              .arg(language::goods_name(cut.board.name))
                              .arg(sheet + 1)
                              .arg(cut.sheets.size()));
    head->setFirstColumnSpanned(true);
    head->setData(number, place_role, QPoint(static_cast<int>(board), static_cast<int>(sheet)));
    QFont bold = rows_->font();
    bold.setBold(true);
    head->setFont(number, bold);
    int order = 0;
    for (const stock::SawCut& saw : cut.sheets[sheet].cuts) {
        auto* row = new QTreeWidgetItem(head);
        row->setData(number, place_role, order);
        row->setText(number, QString::number(++order));
        row->setText(way, saw.saw == stock::Saw::upright ? tr("upright") : tr("level"));
        row->setText(fence, sheets::fence_words(stock::mm_of(saw.at), said(stock::mm_of(saw.at))));
        row->setText(panel, QString::fromStdString(sheets::size_words(document_.last_built_job(),
                                                                      stock::mm_of(saw.panel_width),
                                                                      stock::mm_of(saw.panel_height))));
        row->setText(frees, freed(cut, saw));
        row->setToolTip(frees, row->text(frees));
    }
    head->setExpanded(true);
}

QString CutOrder::freed(const stock::BoardCut& cut, const stock::SawCut& saw) const {
    QStringList words;
    for (const int piece : {saw.first, saw.second})
        if (piece >= 0)
            words << QString::fromStdString(
                sheets::piece_words(cut.pieces[static_cast<std::size_t>(piece)], *stock_));
    return words.join(QStringLiteral(", "));
}

} // namespace drawercast::app
