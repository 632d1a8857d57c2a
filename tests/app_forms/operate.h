// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QTabBar>
#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

#include <set>
#include <stdexcept>
#include <string>

/// Forms as a maker handles them: by the names of their fields, with keys and clicks.
namespace drawercast::test {

/// Shows a form and gives it the keys.
inline void open(QWidget& form) {
    form.show();
    form.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&form));
}

/// The visible widget of that accessible name.
inline QWidget& field(QWidget& form, const char* name) {
    QApplication::processEvents(); // what was added to a layout is shown by then
    for (auto* widget : form.findChildren<QWidget*>())
        if (widget->isVisible() && widget->accessibleName() == QLatin1String(name)) return *widget;
    throw std::runtime_error(std::string("no field ") + name);
}

inline QAbstractButton& button(QWidget& form, const char* name) {
    for (auto* one : form.findChildren<QAbstractButton*>())
        if (one->accessibleName() == QLatin1String(name) ||
            QString(one->text()).remove('&') == QLatin1String(name))
            return *one;
    throw std::runtime_error(std::string("no button ") + name);
}

/// The words of all labels that are seen, a line for each.
inline QString words_seen(const QWidget& form) {
    QApplication::processEvents();
    QString words;
    for (const auto* label : form.findChildren<QLabel*>())
        if (label->isVisible()) words += label->text() + QLatin1Char('\n');
    return words;
}

/// Types over what stands in a field, and leaves it.
inline void type(QWidget& form, const char* name, const char* text) {
    QWidget& edit = field(form, name);
    edit.setFocus();
    QTest::keySequence(&edit, QKeySequence::SelectAll);
    QTest::keyClick(&edit, Qt::Key_Delete);
    QTest::keyClicks(&edit, QString::fromUtf8(text));
    QTest::keyClick(&edit, Qt::Key_Tab);
}

/// Types into a cell of a table and presses Enter.
inline void type_cell(QAbstractItemView& view, int row, int column, const char* text) {
    view.setFocus();
    view.setCurrentIndex(view.model()->index(row, column));
    QTest::keyClick(&view, Qt::Key_F2);
    auto* editor =
        qobject_cast<QLineEdit*>(QApplication::focusWidget()); // an earlier one may not be gone yet
    ASSERT_NE(editor, nullptr);
    editor->selectAll();
    QTest::keyClicks(editor, QString::fromUtf8(text));
    QTest::keyClick(editor, Qt::Key_Return);
    QApplication::processEvents();
}

inline QPushButton& take_button(QDialog& form) {
    return *form.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
}

inline QToolButton& to_mend_button(QDialog& form) {
    for (auto* one : form.findChildren<QToolButton*>())
        if (one->text().contains(QStringLiteral("still to do"))) return *one;
    throw std::runtime_error("nothing to mend");
}

/// Whether everything that takes typing or clicks has a name to be spoken, and Tab comes to it.
inline void expect_named_and_reached_by_tab(QWidget& form) {
    std::set<const QWidget*> wanted;
    for (auto* widget : form.findChildren<QWidget*>()) {
        const bool takes = qobject_cast<QLineEdit*>(widget) || qobject_cast<QPlainTextEdit*>(widget) ||
                           qobject_cast<QAbstractButton*>(widget) || qobject_cast<QComboBox*>(widget) ||
                           qobject_cast<QAbstractItemView*>(widget);
        if (!takes || !widget->isVisible() || !widget->isEnabled()) continue;
        if (qobject_cast<QTabBar*>(widget->parentWidget())) continue;           // its scroll buttons
        if (qobject_cast<QAbstractItemView*>(widget->parentWidget())) continue; // corner button, headers
        if (widget->inherits("QHeaderView")) continue;
        const auto* radio = qobject_cast<QRadioButton*>(widget);
        if (radio && !radio->isChecked()) continue; // arrows lead to it from the chosen one
        const auto* one = qobject_cast<QAbstractButton*>(widget);
        EXPECT_TRUE(!widget->accessibleName().isEmpty() || (one && !one->text().isEmpty()))
            << widget->metaObject()->className();
        wanted.insert(widget);
    }
    form.setFocus();
    for (int step = 0; step < 200; ++step) {
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : &form, Qt::Key_Tab);
        wanted.erase(QApplication::focusWidget());
    }
    for (const QWidget* widget : wanted)
        ADD_FAILURE() << "Tab does not come to " << widget->metaObject()->className() << " "
                      << widget->accessibleName().toStdString();
}

} // namespace drawercast::test
