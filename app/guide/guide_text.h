// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "guide/book.h"
#include "guide/demo.h"
#include "guide/markup.h"

#include <QImage>
#include <QTextBrowser>
#include <QTimer>

#include <map>

namespace drawercast::app::guide {

/// The guide's open chapter. Links within it turn its pages, so that one can go back; a link to an action is
/// told. Pictures are drawn as wide as there is room, and again when what they show is another.
class GuideText final : public QTextBrowser {
    Q_OBJECT
  public:
    /// `action`, `list`: as in Answers.
    GuideText(const Book& book, Answers answers, QWidget* parent = nullptr);

    void set_units(job::DisplayUnits units);
    void open(const QString& id); ///< nothing happens where that leads nowhere
    const Chapter& chapter() const;
    QString plain_text(const Chapter& chapter) const; ///< as it is shown, for finding in it

    QVariant loadResource(int type, const QUrl& name) override;

  signals:
    void action_wanted(const QString& id);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void renew(); ///< the same place, all drawn again
    QString html(const Chapter& chapter);
    const QImage* image(const QString& name);
    int picture_width() const;
    Demo& demo();

    const Book& book_;
    Answers answers_;
    Demo* demo_ = nullptr; ///< made when the first picture is asked for
    std::map<QString, QImage> images_;
    int drawn_for_px_ = 0;
    QTimer later_; ///< for renew(): a text must not be replaced while it is being laid out
};

} // namespace drawercast::app::guide
