// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/explain_sheet.h"

#include "panes/explain/sheet_text.h"
#include "theme/icons.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollBar>
#include <QTextBrowser>
#include <QTextDocument>
#include <QToolButton>
#include <QUrl>
#include <QVBoxLayout>

#include <cmath>

namespace drawercast::app {

namespace {
constexpr int usual_width = 460; // at the usual text size
constexpr int gap = 8;
constexpr int margin = 12; // of the words
} // namespace

ExplainSheet::ExplainSheet(QWidget* beside)
    : QFrame(beside->window()), beside_(beside), title_(new QLabel(this)), close_(new QToolButton(this)),
      text_(new QTextBrowser(this)) {
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    setAccessibleName(tr("How a figure comes about"));
    close_->setIcon(theme::icon(QStringLiteral("clear")));
    close_->setAutoRaise(true);
    close_->setToolTip(tr("Close (Esc)"));
    close_->setAccessibleName(tr("Close the explanation"));
    text_->setFrameShape(QFrame::NoFrame);
    text_->setOpenLinks(false);
    text_->setTextInteractionFlags(Qt::TextBrowserInteraction);
    text_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(12, 6, 6, 0);
    head->addWidget(title_, 1);
    head->addWidget(close_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(text_, 1);
    hide();
    connect(close_, &QToolButton::clicked, this, &ExplainSheet::leave);
    connect(text_, &QTextBrowser::anchorClicked, this,
            [this](const QUrl& link) { follow_link(link.toString()); });
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { focus_moved(now); });
    beside_->window()->installEventFilter(this);
}

/// Its children lose the focus as they go; there is no sheet left then to close.
ExplainSheet::~ExplainSheet() { disconnect(qApp, nullptr, this, nullptr); }

void ExplainSheet::open(const QString& id, const std::vector<FoamFigure>& figures) {
    figures_ = figures;
    const auto* figure = find_figure(figures_, id);
    if (figure == nullptr) return;
    id_ = id;
    show_figure(*figure);
    text_->verticalScrollBar()->setValue(0);
    show();
    raise();
    text_->setFocus();
    emit changed();
}

void ExplainSheet::refresh(const std::vector<FoamFigure>& figures) {
    if (id_.isEmpty()) return;
    figures_ = figures;
    const auto* figure = find_figure(figures_, id_);
    if (figure == nullptr) return leave();
    const int at = text_->verticalScrollBar()->value();
    show_figure(*figure);
    text_->verticalScrollBar()->setValue(at);
}

void ExplainSheet::leave() {
    if (id_.isEmpty()) return;
    id_.clear();
    const bool had_focus = isAncestorOf(QApplication::focusWidget());
    hide();
    emit changed();
    if (had_focus && beside_) beside_->setFocus();
}

QString ExplainSheet::text() const { return text_->toPlainText(); }

void ExplainSheet::show_figure(const FoamFigure& figure) {
    title_->setText(
        QStringLiteral("<b>%1: %2</b>").arg(figure.label.toHtmlEscaped(), figure.value.toHtmlEscaped()));
    text_->setHtml(explain::sheet_html(figure, figures_));
    text_->document()->setDocumentMargin(margin);
    place();
}

void ExplainSheet::follow_link(const QString& link) {
    const QString what = link.section(u':', 1);
    if (link.startsWith(u"figure:"))
        open(what, figures_);
    else if (link.startsWith(u"guide:"))
        emit guide_wanted(what);
    else
        emit action_wanted(what);
}

/// As wide as its lines want to be, as high as its words, both within the window.
void ExplainSheet::place() {
    const auto* window = parentWidget();
    const QPoint corner = beside_->mapTo(window, QPoint(0, 0));
    const double scale = QFontInfo(font()).pixelSize() / 13.0;
    const int room = qMax(corner.x(), window->width() - corner.x() - beside_->width()) - 2 * gap;
    const int width = qMin(qRound(usual_width * scale), qMax(240, room));
    QTextDocument paper; // the browser's own is as high as its view
    paper.setDefaultFont(text_->font());
    paper.setDocumentMargin(margin);
    paper.setHtml(explain::sheet_html(*find_figure(figures_, id_), figures_));
    paper.setTextWidth(width - 2);
    const int head = layout()->itemAt(0)->sizeHint().height();
    const int wanted = head + int(std::ceil(paper.size().height())) + 4;
    const int height = qMin(wanted, window->height() - 2 * gap);
    const bool left = corner.x() >= width + gap;
    const int x = left ? corner.x() - width - gap : corner.x() + beside_->width() + gap;
    const int y = qBound(gap, corner.y(), window->height() - height - gap);
    setGeometry(qMax(gap, qMin(x, window->width() - width - gap)), y, width, height);
}

void ExplainSheet::focus_moved(QWidget* now) {
    if (id_.isEmpty() || !beside_ || now == nullptr || now->window() != window())
        return; // a dialog or another program
    const bool ours = now == this || isAncestorOf(now) || beside_->isAncestorOf(now) || now == beside_;
    if (!ours) leave();
}

void ExplainSheet::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return leave();
    QFrame::keyPressEvent(event);
}

bool ExplainSheet::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && beside_ && !id_.isEmpty()) place();
    return QFrame::eventFilter(watched, event);
}

} // namespace drawercast::app
