// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/print_acts.h"

#include "job/store.h"

#include "document/document.h"
#include "document/preferences.h"
#include "print/drawing_files.h"
#include "print/object_sheets.h"
#include "print/pdf.h"
#include "print/photo_sheet.h"
#include "summary/csv_lists.h"
#include "window/actions.h"
#include "window/asking.h"
#include "window/file_words.h"
#include "window/printed.h"
#include "window/to_printer.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QPrinter>
#include <QPrinterInfo>

#include <utility>

namespace drawercast::app {

namespace {

print::Printing printing_now() { return print::printing_at(QDateTime::currentDateTime()); }

} // namespace

PrintActs::PrintActs(const Desk& desk, Actions& actions, QObject* parent) : QObject(parent), desk_(desk) {
    using What = PrintOrder::What;
    actions.on("job.print", [this] { print({}); });
    for (const auto& [name, what] : {std::pair{"job.templates", What::templates},
                                     {"job.summary", What::summary},
                                     {"job.cards", What::cards},
                                     {"job.drawings", What::drawings}})
        actions.on(name, [this, what = what] { print(what); });
    actions.on("job.lists", [this] { write_lists(); });
    actions.on("job.object_sheets", [this] {
        const auto& job = desk_.document.job();
        write_sheet(print::object_sheets(job, paper(), printing_now()), tr("Object sheets, true size"),
                    QStringLiteral("-objects.pdf"));
    });
    actions.on("job.measuring_sheet", [this] {
        const auto units = desk_.document.job().display_units;
        write_sheet(print::measuring_sheet(units, paper(), printing_now()), tr("Form to write measures on"),
                    QStringLiteral("-measuring.pdf"));
    });
    actions.on("job.photo_sheet", [this] {
        write_sheet({print::photo_sheet(paper(), printing_now())}, tr("Measuring sheet for photos"),
                    QStringLiteral("-pictures.pdf"));
    });
}

print::Paper PrintActs::paper() const {
    return remembered_order(desk_.preferences, desk_.document.job().display_units).choice.paper;
}

/// What was shown is printed: job and plan are kept as they are now, though the long answer may come or the
/// file change while a dialog is open.
void PrintActs::print(std::optional<PrintOrder::What> what) {
    const Shown shown{desk_.document.job(), desk_.document.plan()};
    const auto& job = shown.job;
    auto usual = remembered_order(desk_.preferences, job.display_units);
    if (what) usual.what = *what, usual.choice.only.reset(); // nobody means a part who says no more
    usual.changed = changed_since_printed(desk_.document.path(), job, desk_.preferences);
    const auto now = printing_now();
    const auto order = desk_.asking.print_order(usual, job, shown.plan, now);
    if (!order) return;
    remember(*order, desk_.preferences);
    carry_out(*order, shown, order_pages(*order, job, shown.plan, now));
}

void PrintActs::carry_out(const PrintOrder& order, const Shown& shown, const std::vector<print::Page>& all) {
    const auto pages = chosen_pages(order, all);
    if (pages.empty())
        return emit said(tr("No pages: no drawer of this job can be drawn yet. The checks say why."));
    if (order.to == PrintOrder::To::svg) return write_drawings(shown, order.pages);
    const bool done = order.to == PrintOrder::To::pdf ? write_pdf(order, pages) : send(order.printer, pages);
    const bool whole = !order.choice.only && pages.size() == all.size(); // of a part the rest may be older
    if (!done || !whole || order.what != PrintOrder::What::templates) return;
    remember_printed(desk_.document.path(), shown.job, desk_.preferences);
    emit printed();
}

bool PrintActs::written(const QString& path, const QByteArray& bytes) {
    const auto done =
        job::write_file(path.toStdString(), {bytes.constData(), static_cast<std::size_t>(bytes.size())});
    if (!done) desk_.asking.warn(tr("It was not written"), {done.error()});
    return done.has_value();
}

bool PrintActs::write_pdf(const PrintOrder& order, const std::vector<print::Page>& pages) {
    const auto [title, ending] = [&]() -> std::pair<QString, QString> {
        switch (order.what) {
        case PrintOrder::What::templates:
            return {tr("Templates, true size"), QStringLiteral("-templates.pdf")};
        case PrintOrder::What::cards:
            return {tr("Pour cards and rescue card"), QStringLiteral("-cards.pdf")};
        default:
            return {tr("Summary"), QStringLiteral("-summary.pdf")};
        }
    }();
    return write_sheet(pages, title, ending);
}

void PrintActs::write_drawings(const Shown& shown, const std::vector<std::size_t>& which) {
    const auto folder = desk_.asking.folder(tr("Folder for the drawings"));
    if (!folder) return;
    const auto files = print::drawing_files(shown.job, shown.plan);
    for (const std::size_t i : which)
        if (!written(QDir(*folder).filePath(QString::fromStdString(files.at(i).name)), files.at(i).bytes))
            return;
    emit said(tr("Written to “%1”; drawings: %2.").arg(*folder).arg(which.size()));
}

bool PrintActs::write_sheet(const std::vector<print::Page>& pages, const QString& title,
                            const QString& ending) {
    const auto path = desk_.asking.file_to_save(title, file_words(desk_.document.display_name()) + ending,
                                                tr("PDF (*.pdf)"), QStringLiteral("pdf"));
    if (!path || !written(*path, print::pdf_of(pages, desk_.document.display_name(), printing_now().program)))
        return false;
    emit said(tr("Written to “%1”; pages: %2.").arg(QFileInfo(*path).fileName()).arg(pages.size()));
    return true;
}

void PrintActs::write_lists() {
    const auto folder = desk_.asking.folder(tr("Folder for the lists"));
    if (!folder) return;
    const auto lists = summary::csv_lists(desk_.document.job(), desk_.document.plan());
    const QString job = file_words(desk_.document.display_name());
    for (const auto& list : lists)
        if (!written(QDir(*folder).filePath(QStringLiteral("%1-%2.csv").arg(job, list.name)), list.bytes))
            return;
    emit said(desk_.document.plan().stock
                  ? tr("Written to “%1”; lists: %2.").arg(*folder).arg(lists.size())
                  : tr("Written to “%1”; lists: %2. What to cut and buy is still being worked out.")
                        .arg(*folder)
                        .arg(lists.size()));
}

bool PrintActs::send(const QString& name, const std::vector<print::Page>& pages) {
    const auto info = QPrinterInfo::printerInfo(name);
    const auto refused = [&](const Phrase& why, const Phrase& fix) {
        desk_.asking.warn(tr("It was not printed"), {Problem{"printer", name.toStdString(), why, fix}});
        return false;
    };
    if (info.isNull())
        return refused(phrase("there is no such printer now"), phrase("Switch it on, or write a PDF"));
    QPrinter printer(info, QPrinter::HighResolution);
    printer.setDocName(desk_.document.display_name());
    printer.setCreator(printing_now().program);
    if (!print_pages(pages, printer))
        return refused(phrase("the printer took no pages"), phrase("See what its queue says"));
    emit said(tr("Sent to “%1”; pages: %2. Hold a ruler to the scales before you cut.")
                  .arg(name)
                  .arg(pages.size()));
    return true;
}

} // namespace drawercast::app
