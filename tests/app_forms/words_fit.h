// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QCheckBox>
#include <QComboBox>
#include <QGroupBox>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QStringList>
#include <QTabBar>
#include <QToolButton>

#include <map>

/// Whether words have room, and whether each key of a window leads to one place.
namespace drawercast::test {

/// Visible words that are cut off.
inline QStringList clipped_words(const QWidget& window) {
    QStringList clipped;
    const auto needs = [&](const QWidget& widget, QSize room, const QString& words) {
        if (widget.width() + 1 < room.width() || widget.height() + 1 < room.height())
            clipped << QStringLiteral("%1 [%2×%3, needs %4×%5]")
                           .arg(words)
                           .arg(widget.width())
                           .arg(widget.height())
                           .arg(room.width())
                           .arg(room.height());
    };
    for (auto* label : window.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty()) continue;
        if (label->wordWrap())
            needs(*label, {0, label->heightForWidth(label->width())}, label->text());
        else
            needs(*label, label->minimumSizeHint(), label->text());
    }
    for (auto* button : window.findChildren<QAbstractButton*>()) {
        if (!button->isVisible() || button->text().isEmpty()) continue;
        const auto* tool = qobject_cast<QToolButton*>(button);
        if (tool != nullptr && tool->toolButtonStyle() == Qt::ToolButtonIconOnly) continue;
        needs(*button, {button->sizeHint().width(), button->fontMetrics().height()}, button->text());
    }
    for (auto* box : window.findChildren<QComboBox*>())
        if (box->isVisible())
            needs(*box, {box->fontMetrics().horizontalAdvance(box->currentText()), 0}, box->currentText());
    for (auto* tabs : window.findChildren<QTabBar*>())
        if (tabs->isVisible() && tabs->count() > 0 && tabs->elideMode() == Qt::ElideNone)
            needs(*tabs, {tabs->minimumSizeHint().width(), 0}, tabs->tabText(0));
    return clipped;
}

inline QChar mnemonic(const QString& text) {
    for (qsizetype at = text.indexOf(u'&'); at >= 0 && at + 1 < text.size(); at = text.indexOf(u'&', at + 2))
        if (text[at + 1] != u'&') return text[at + 1].toLower();
    return {};
}

/// Those of `texts` that have the same mnemonic, as "&New, &Next".
inline QStringList clashes(const QStringList& texts) {
    std::map<QChar, QStringList> by_key;
    for (const QString& text : texts)
        if (const QChar key = mnemonic(text); !key.isNull()) by_key[key] << text;
    QStringList found;
    for (const auto& [key, all] : by_key)
        if (all.size() > 1) found << all.join(QStringLiteral(", "));
    return found;
}

/// What is seen of a dialog at the moment.
inline QStringList clashing_keys(const QWidget& window) {
    QStringList texts;
    for (auto* label : window.findChildren<QLabel*>())
        if (label->isVisible() && label->buddy() != nullptr) texts << label->text();
    for (auto* button : window.findChildren<QAbstractButton*>())
        if (button->isVisible()) texts << button->text();
    for (auto* group : window.findChildren<QGroupBox*>())
        if (group->isVisible()) texts << group->title();
    for (auto* tabs : window.findChildren<QTabBar*>())
        for (int i = 0; tabs->isVisible() && i < tabs->count(); ++i) texts << tabs->tabText(i);
    return clashes(texts);
}

} // namespace drawercast::test
