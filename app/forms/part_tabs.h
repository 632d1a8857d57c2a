// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>
#include <QWidget>

#include <vector>

class QHBoxLayout;
class QStackedWidget;
class QTabBar;
class QToolButton;

namespace drawercast::app {

/// Parts of one value (levels, obstructions), each on a page of its own: tabs to choose one, buttons to add
/// and take away.
class PartTabs final : public QWidget {
    Q_OBJECT
  public:
    struct Words {
        QString one;  ///< "Level %1"
        QString add;  ///< "Add a level"
        QString take; ///< "Take this level away"
        QString none; ///< shown where there is no part; may be empty where least > 0
    };
    PartTabs(const Words& words, int least, int most, QWidget* parent = nullptr);

    void add_page(QWidget* page); ///< at the end, without a signal
    QList<QWidget*> pages() const;
    /// Those of `all` whose `widget` is still a page, in the order of the tabs.
    template <class Page>
    std::vector<Page> those_there(const std::vector<Page>& all) const {
        std::vector<Page> there;
        for (const QWidget* widget : pages())
            for (const Page& page : all)
                if (page.widget == widget) there.push_back(page);
        return there;
    }
    void show_page(QWidget* page);
    void take_page(QWidget* page);             ///< away, unless it is one of the least
    void set_to_mend(int index, bool to_mend); ///< marks the tab
    void add_to_head(QWidget* widget);         ///< before what takes a part away

  signals:
    void asked_for_another(); ///< the owner adds a page
    void taken_away();        ///< a page is gone
    void turned();            ///< another page is shown

  private:
    void refresh();
    void take();

    Words words_;
    int least_;
    int most_;
    QHBoxLayout* head_;
    QTabBar* tabs_;
    QToolButton* add_;
    QToolButton* take_;
    QStackedWidget* stack_;
    QWidget* none_ = nullptr;
};

} // namespace drawercast::app
