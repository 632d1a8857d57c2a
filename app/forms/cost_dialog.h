// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/cost.h"

#include "forms/form_context.h"

#include <QDialog>

#include <string>

class QLabel;
class QSpinBox;

namespace drawercast::app {

class RunPlot;

/// What the job costs: one set of its inserts beside a run of several from the same molds.
class CostDialog final : public QDialog {
    Q_OBJECT
  public:
    CostDialog(const plan::CostBasis& basis, const std::string& currency, const FormContext& context,
               QWidget* parent = nullptr);

  private:
    void show_run();
    QString notes() const;

    plan::CostBasis basis_;
    std::string currency_;
    FormContext context_;
    QSpinBox* sets_;
    QLabel* figures_;
    RunPlot* plot_;
};

} // namespace drawercast::app
