// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/asking.h"

#include "forms/as_built_form.h"
#include "forms/as_cast_form.h"
#include "forms/cost_dialog.h"
#include "forms/cup_form.h"
#include "forms/dialog_buttons.h"
#include "forms/drawer_form.h"
#include "forms/foam_form.h"
#include "forms/foams_dialog.h"
#include "forms/minimums_form.h"
#include "forms/mold_form.h"
#include "forms/new_job_form.h"
#include "forms/notch_form.h"
#include "forms/object_form.h"
#include "forms/paste_dialog.h"
#include "forms/quick_quote_form.h"
#include "forms/shop_form.h"
#include "forms/small_screen.h"
#include "forms/standard_dialog.h"
#include "language/in_words.h"
#include "language/spoken.h"
#include "window/print_dialog.h"

#include <QDate>
#include <QFileDialog>
#include <QInputDialog>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTextBrowser>
#include <QTextDocument>
#include <QVBoxLayout>

#include <algorithm>

namespace drawercast::app {

namespace {

using language::tr;
const char* const job_files =
    QT_TRANSLATE_NOOP("Dialogs", "Drawercast jobs (*.drawercast.json);;All files (*)");

std::optional<QString> if_named(const QString& path) {
    return path.isEmpty() ? std::nullopt : std::optional(path);
}

/// A small question, wide enough for its title to be read.
bool asked(QInputDialog& dialog, const QString& title, const QString& label) {
    constexpr int frame_px = 200; ///< of the program's name and the frame's buttons beside it
    dialog.setWindowTitle(title);
    dialog.setLabelText(label);
    dialog.sizeHint(); // its parts are made by the first who asks
    for (auto* words : dialog.findChildren<QLabel*>())
        words->setMinimumWidth(dialog.fontMetrics().horizontalAdvance(title) + frame_px);
    return dialog.exec() == QDialog::Accepted;
}

/// What a form holds once it is taken.
template <class Form>
auto taken(Form& form) -> decltype(form.value()) {
    if (form.exec() != QDialog::Accepted) return std::nullopt;
    return form.value();
}

} // namespace

std::optional<QString> Dialogs::file_to_open() {
    return if_named(QFileDialog::getOpenFileName(parent_, tr("Open a job"), {}, tr(job_files)));
}

std::optional<QString> Dialogs::file_to_save(const QString& title, const QString& suggested,
                                             const QString& filter, const QString& ending) {
    QFileDialog dialog(parent_, title, suggested, filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(ending); // before the dialog asks whether to replace a file
    dialog.selectFile(suggested);
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    return if_named(dialog.selectedFiles().value(0));
}

std::optional<QString> Dialogs::folder(const QString& title) {
    return if_named(QFileDialog::getExistingDirectory(parent_, title));
}

Asking::Unsaved Dialogs::about_unsaved(const QString& name) {
    QMessageBox box(QMessageBox::NoIcon, tr("Save the work?"),
                    tr("“%1” has changes that are not saved.").arg(name), QMessageBox::NoButton, parent_);
    auto* save = box.addButton(tr("&Save"), QMessageBox::AcceptRole);
    auto* discard = box.addButton(tr("&Don’t save"), QMessageBox::DestructiveRole);
    box.addButton(QMessageBox::Cancel);
    box.setDefaultButton(save);
    box.exec();
    if (box.clickedButton() == save) return Unsaved::save;
    return box.clickedButton() == discard ? Unsaved::discard : Unsaved::cancel;
}

bool Dialogs::yes(const QString& title, const QString& question) {
    QMessageBox box(QMessageBox::NoIcon, title, question, QMessageBox::Yes | QMessageBox::No, parent_);
    return box.exec() == QMessageBox::Yes;
}

std::optional<int> Dialogs::choice(const QString& title, const QString& label, const QStringList& of) {
    QInputDialog dialog(parent_);
    dialog.setComboBoxItems(of);
    if (!asked(dialog, title, label)) return std::nullopt;
    return static_cast<int>(of.indexOf(dialog.textValue()));
}

std::optional<QString> Dialogs::text(const QString& title, const QString& label, const QString& usual) {
    QInputDialog dialog(parent_);
    dialog.setTextValue(usual);
    return asked(dialog, title, label) ? std::optional(dialog.textValue()) : std::nullopt;
}

std::optional<job::DrawerSize> Dialogs::drawer_size(const FormContext& context) {
    NewJobForm form({}, context, parent_);
    return taken(form);
}

std::optional<job::Object> Dialogs::object(Purpose purpose, const job::Object& object,
                                           const FormContext& context) {
    ObjectForm form(purpose == Purpose::add ? ObjectForm::Purpose::add : ObjectForm::Purpose::change, object,
                    context, parent_);
    return taken(form);
}

std::optional<job::Drawer> Dialogs::drawer(Purpose purpose, const job::Drawer& drawer,
                                           const FormContext& context) {
    DrawerForm form(purpose == Purpose::add ? DrawerForm::Purpose::add : DrawerForm::Purpose::change, drawer,
                    context, parent_);
    return taken(form);
}

std::optional<job::Foam> Dialogs::foam(const job::Foam& foam, const job::Shop& shop,
                                       const FormContext& context) {
    FoamForm form(foam, shop, context, parent_);
    return taken(form);
}

std::optional<job::Shop> Dialogs::shop(const job::Shop& shop, const FormContext& context) {
    ShopForm form(shop, context, parent_);
    return taken(form);
}

std::optional<job::Notch> Dialogs::notch(const job::Notch& notch, const FormContext& context) {
    NotchForm form(notch, context, parent_);
    return taken(form);
}

std::optional<job::Mold> Dialogs::mold(const job::Mold& mold, const job::Shop& shop,
                                       const FormContext& context) {
    MoldForm form(mold, shop, context, parent_);
    return taken(form);
}

std::optional<job::Minimums> Dialogs::minimums(const job::Minimums& minimums, const FormContext& context) {
    MinimumsForm form(minimums, context, parent_);
    return taken(form);
}

Asking::Objects Dialogs::standard_objects(const FormContext& context) {
    StandardDialog dialog(context, parent_);
    return dialog.exec() == QDialog::Accepted ? dialog.objects() : Objects();
}

void Dialogs::pasted_list(const FormContext& context, const std::function<void(const Objects&)>& add) {
    PasteDialog dialog(context, parent_);
    dialog.take_copied();
    QObject::connect(&dialog, &PasteDialog::added, &dialog, add);
    dialog.exec();
}

std::optional<job::Foam> Dialogs::foam_beside(const std::vector<plan::FoamBeside>& foams,
                                              const job::Job& job) {
    FoamsDialog dialog(foams, job, parent_);
    dialog.exec();
    return dialog.taken();
}

std::optional<CopyOrder> Dialogs::copies(const CopyOrder& usual, const CopyRoom& room,
                                         const FormContext& context) {
    CopiesForm form(usual, room, context, parent_);
    return taken(form);
}

std::optional<job::Subjects> Dialogs::pockets_listed(const std::vector<ListedPocket>& pockets,
                                                     const job::Subjects& chosen,
                                                     const ChooseDialog::Show& show) {
    ChooseDialog dialog(pockets, chosen, show, parent_);
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    return dialog.chosen();
}

std::optional<job::Job> Dialogs::pour_form(PourForm which, const job::Job& job, const plan::Plan& plan,
                                           const std::string& drawer) {
    const auto context = form_context(job, drawer);
    auto changed = job;
    switch (which) {
    case PourForm::cup: {
        CupForm form(job, plan, context, parent_);
        const auto foam = taken(form);
        if (!foam) return std::nullopt;
        changed.foam = *foam;
        break;
    }
    case PourForm::as_built:
        for (const auto& one : plan.drawers) {
            if (one.id != drawer) continue;
            AsBuiltForm form(job, one, context, parent_);
            const auto built = taken(form);
            if (!built) return std::nullopt;
            std::erase_if(changed.as_built, [&](const auto& old) { return old.drawer == drawer; });
            changed.as_built.push_back(*built);
        }
        break;
    case PourForm::as_cast: {
        AsCastForm form(job, plan, drawer, QDate::currentDate().toString(Qt::ISODate), context, parent_);
        return taken(form);
    }
    }
    return changed;
}

void Dialogs::show_cost(const plan::CostBasis& basis, const job::Job& job) {
    CostDialog(basis, job.currency, form_context(job), parent_).exec();
}

std::optional<job::Job> Dialogs::quick_quote(const job::Job& job) {
    QuickQuoteForm form(job, form_context(job), parent_);
    return taken(form);
}

std::optional<PrintOrder> Dialogs::print_order(const PrintOrder& usual, const job::Job& job,
                                               const plan::Plan& plan, const print::Printing& printing) {
    PrintDialog dialog(usual, job, plan, printing, parent_);
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    return dialog.order();
}

void Dialogs::tell(const QString& title, const QString& rich_text) {
    QDialog dialog(parent_);
    dialog.setWindowTitle(title);
    auto* text = new QTextBrowser(&dialog);
    text->setFrameShape(QFrame::NoFrame);
    text->setAccessibleName(title);
    text->setHtml(rich_text);
    auto* buttons = dialog_buttons(dialog, QDialogButtonBox::Close, &dialog);
    auto* column = new QVBoxLayout(&dialog);
    column->addWidget(text, 1);
    column->addWidget(buttons);
    constexpr int table_px = 760, words_px = 520, most_px = 640, around_px = 80;
    const int wide = rich_text.contains(QLatin1String("<table")) ? table_px : words_px;
    QTextDocument paper; // the browser's own is as wide as its view, which has no size yet
    paper.setDefaultFont(dialog.font());
    paper.setHtml(rich_text);
    paper.setTextWidth(wide - around_px);
    const int high = static_cast<int>(paper.size().height()) + 2 * around_px;
    fit_screen(dialog, {wide, std::min(high, most_px)});
    dialog.exec();
}

void Dialogs::warn(const QString& title, const Problems& problems) {
    QStringList lines;
    constexpr qsizetype most = 12;
    for (const auto& problem : problems) {
        if (lines.size() == most) {
            lines << tr("… and %1 more").arg(static_cast<qsizetype>(problems.size()) - most);
            break;
        }
        lines << problem_line(problem);
    }
    QMessageBox box(QMessageBox::Warning, title, lines.join(QLatin1Char('\n')), QMessageBox::Close, parent_);
    box.setTextFormat(Qt::PlainText);
    box.exec();
}

} // namespace drawercast::app
