// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/desk.h"
#include "window/print_order.h"

#include <QObject>

#include <optional>

namespace drawercast::app {

class Actions;

/// The papers that come of a job: printed, or written as files.
class PrintActs final : public QObject {
    Q_OBJECT
  public:
    PrintActs(const Desk& desk, Actions& actions, QObject* parent = nullptr);

  signals:
    void said(const QString& sentence);
    void printed(); ///< all templates, of the job as it is

  private:
    struct Shown { ///< what is printed
        job::Job job;
        plan::Plan plan;
    };
    void print(std::optional<PrintOrder::What>
                   what);       ///< by the dialog, which remembers; none: what was printed last
    print::Paper paper() const; ///< what was last printed on, or the usual
    void carry_out(const PrintOrder& order, const Shown& shown, const std::vector<print::Page>& pages);
    bool write_pdf(const PrintOrder& order, const std::vector<print::Page>& pages);
    void write_lists();
    /// To a file that is asked for; whether it was written.
    bool write_sheet(const std::vector<print::Page>& pages, const QString& title, const QString& ending);
    void write_drawings(const Shown& shown, const std::vector<std::size_t>& which);
    bool send(const QString& printer, const std::vector<print::Page>& pages);
    bool written(const QString& path, const QByteArray& bytes); ///< says why not

    Desk desk_;
};

} // namespace drawercast::app
