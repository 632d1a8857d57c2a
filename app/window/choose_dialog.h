// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "plan/plan.h"

#include <QDialog>

#include <functional>

class QLineEdit;
class QListWidget;
class QPushButton;

namespace drawercast::app {

/// A pocket of the shown drawer in words.
struct ListedPocket {
    std::string subject;
    QString words;
};
/// All pockets of a drawer: "Data logger 2, 140 × 90 × 70, zone D6, locked".
std::vector<ListedPocket> listed_pockets(const job::Job& job, const plan::DrawerPlan& drawer);

/// Choosing pockets by name: the sheet shows the choice as it is made.
class ChooseDialog final : public QDialog {
    Q_OBJECT
  public:
    using Show = std::function<void(const job::Subjects&)>;
    ChooseDialog(const std::vector<ListedPocket>& pockets, const job::Subjects& chosen, Show show,
                 QWidget* parent = nullptr);

    job::Subjects chosen() const; ///< in the list's order

  private:
    void find(const QString& words);
    void choose_all();
    void follow();

    Show show_;
    QLineEdit* find_;
    QListWidget* list_;
    QPushButton* take_;
};

} // namespace drawercast::app
