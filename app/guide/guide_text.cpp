// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/guide_text.h"

#include "guide/pictures.h"
#include "theme/theme_of.h"

#include <QEvent>
#include <QResizeEvent>
#include <QScrollBar>
#include <QTextCursor>
#include <QTextDocument>

#include <algorithm>

namespace drawercast::app::guide {

namespace {

constexpr int most_wide_px = 700; ///< of pictures and lines: longer lines are hard to read
constexpr int least_wide_px = 280;
constexpr int margin_px = 20;

QUrl place_url(const QString& chapter, const QString& id) {
    return QUrl(QStringLiteral("guide:%1#%2").arg(chapter, id));
}

} // namespace

GuideText::GuideText(const Book& book, Answers answers, QWidget* parent)
    : QTextBrowser(parent), book_(book), answers_(std::move(answers)) {
    later_.setSingleShot(true);
    later_.setInterval(0);
    connect(&later_, &QTimer::timeout, this, &GuideText::renew);
    setOpenLinks(false);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("The guide’s text"));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setTextInteractionFlags(Qt::TextBrowserInteraction);
    answers_.picture = [this](const QString& name) {
        const auto* drawn = image(name);
        return drawn == nullptr ? QSize() : drawn->deviceIndependentSize().toSize();
    };
    connect(this, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) {
        if (link.scheme() == QStringLiteral("action"))
            emit action_wanted(link.path());
        else
            setSource(link, QTextDocument::HtmlResource);
    });
}

void GuideText::set_units(job::DisplayUnits units) {
    if (units == answers_.units) return;
    answers_.units = units;
    if (demo_ != nullptr) demo_->set_units(units);
    later_.start();
}

void GuideText::open(const QString& id) {
    const auto place = book_.find(id);
    if (place.chapter != nullptr) setSource(place_url(place.chapter->name, id), QTextDocument::HtmlResource);
}

const Chapter& GuideText::chapter() const {
    const auto* shown = book_.chapter(source().path());
    return shown == nullptr ? book_.chapters().front() : *shown;
}

QString GuideText::plain_text(const Chapter& chapter) const {
    Answers without = answers_;
    without.picture = [](const QString&) { return QSize(1, 1); }; // its caption is found too
    QTextDocument text;
    text.setHtml(html_of(chapter, book_, without));
    return text.toPlainText();
}

QVariant GuideText::loadResource(int type, const QUrl& name) {
    if (type == QTextDocument::ImageResource) {
        const auto* drawn = image(name.path());
        return drawn == nullptr ? QVariant() : QVariant(*drawn);
    }
    if (type != QTextDocument::HtmlResource) return {};
    const auto* chapter = book_.chapter(name.path());
    return chapter == nullptr ? QVariant() : QVariant(html(*chapter));
}

QString GuideText::html(const Chapter& chapter) {
    Answers answers = answers_;
    const auto& theme = theme::theme_of(this);
    answers.quiet_color = theme.ink2.name();
    answers.plate_color = theme.alt.name();
    return html_of(chapter, book_, answers);
}

const QImage* GuideText::image(const QString& name) {
    const auto known = images_.find(name);
    if (known != images_.end()) return &known->second;
    auto drawn = picture(name, demo(), {picture_width(), devicePixelRatioF(), theme::theme_of(this)});
    if (!drawn) return nullptr;
    return &images_.emplace(name, std::move(*drawn)).first->second;
}

int GuideText::picture_width() const {
    const int room = viewport()->width() - 2 * margin_px;
    return std::clamp(room, least_wide_px, most_wide_px);
}

Demo& GuideText::demo() {
    if (demo_ == nullptr) {
        demo_ = new Demo(demo_job(answers_.units), this);
        connect(demo_, &Demo::changed, &later_, qOverload<>(&QTimer::start));
    }
    return *demo_;
}

void GuideText::renew() {
    images_.clear();
    drawn_for_px_ = picture_width();
    if (!source().isValid()) return;
    const int at = verticalScrollBar()->value();
    const QTextCursor before = textCursor();
    const int from = before.anchor(), to = before.position();
    reload();
    QTextCursor cursor(document()); // what was found stays chosen
    const int last = document()->characterCount() - 1;
    cursor.setPosition(std::clamp(from, 0, last));
    cursor.setPosition(std::clamp(to, 0, last), QTextCursor::KeepAnchor);
    setTextCursor(cursor);
    verticalScrollBar()->setValue(at);
}

void GuideText::resizeEvent(QResizeEvent* event) {
    const int side = std::max(0, (width() - most_wide_px - 2 * margin_px) / 2);
    if (viewportMargins().left() != side) setViewportMargins(side, 0, side, 0); // comes back here
    QTextBrowser::resizeEvent(event);
    document()->setDocumentMargin(margin_px);
    if (picture_width() != drawn_for_px_) later_.start();
}

void GuideText::changeEvent(QEvent* event) {
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) later_.start();
}

} // namespace drawercast::app::guide
