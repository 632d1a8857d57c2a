// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/print_order.h"

#include <QDialog>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QListWidget;
class QPushButton;
class QToolButton;

namespace drawercast::app {

class PagePreview;

/// What to print, on what, and where to, beside the pages as they will come out. Makes an order; carrying it
/// out is left to who asked.
class PrintDialog final : public QDialog {
    Q_OBJECT
  public:
    PrintDialog(const PrintOrder& usual, const job::Job& job, const plan::Plan& plan,
                const print::Printing& printing, QWidget* parent = nullptr);

    PrintOrder order() const;

  private:
    QWidget* settings();
    QWidget* page_list();
    void show_order(const PrintOrder& order);
    void renew_pages();        ///< after a change of what, sheet, paper or orientation
    void renew_destinations(); ///< what it can go to
    void renew_list();         ///< the pages, and what is said of them
    void renew_buttons();
    void show_correction(); ///< of what it goes to
    void take_correction();
    void show_current();
    void check_all(bool on);

    const job::Job& job_;
    const plan::Plan& plan_;
    print::Printing printing_;
    std::vector<print::Page> pages_;
    print::Corrections corrections_;
    QString changed_; ///< since the last print-out

    QComboBox *what_, *sheet_, *paper_, *orientation_, *to_;
    QDoubleSpinBox *short_, *long_; ///< what the scales measure
    QLabel* note_;
    QLabel* count_;
    QListWidget* list_;
    QToolButton* all_;
    QToolButton* none_;
    PagePreview* preview_;
    QPushButton* take_ = nullptr;
};

} // namespace drawercast::app
