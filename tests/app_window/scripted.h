// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "application.h"
#include "document/document.h"
#include "document/preferences.h"
#include "window/asking.h"
#include "window/job_acts.h"
#include "window/main_window.h"
#include "window/sheet_area.h"

#include <QTemporaryDir>

namespace drawercast::test {

/// Answers in the maker's place, and counts what it was asked.
class Scripted final : public app::Asking {
  public:
    explicit Scripted(const QString& folder) : folder_(folder) {}

    Unsaved unsaved = Unsaved::discard;
    bool says_yes = true;
    int asked = 0;
    int told = 0;
    int warned = 0;
    std::optional<QString> to_open;
    /// What the maker fills in; nothing set: a form is taken as it came.
    template <class T>
    using Fills = std::function<std::optional<T>(const T&)>;
    Fills<job::Object> to_object;
    Fills<job::Drawer> to_drawer;
    Fills<job::Foam> to_foam;
    Fills<job::Minimums> to_minimums;
    Fills<job::Notch> to_notch;
    Fills<app::PrintOrder> to_print;
    Objects listed;

    std::optional<QString> file_to_open() override { return ++asked, to_open; }
    std::optional<QString> file_to_save(const QString&, const QString& suggested, const QString&,
                                        const QString&) override {
        return ++asked, folder_ + '/' + suggested.section('/', -1);
    }
    std::optional<QString> folder(const QString&) override { return ++asked, folder_; }
    Unsaved about_unsaved(const QString&) override { return ++asked, unsaved; }
    bool yes(const QString&, const QString&) override { return ++asked, says_yes; }
    int chosen_row = 0;
    std::optional<int> choice(const QString&, const QString&, const QStringList&) override {
        return ++asked, chosen_row;
    }
    std::optional<QString> text(const QString&, const QString&, const QString& usual) override {
        return ++asked, usual;
    }
    std::optional<job::DrawerSize> drawer_size(const app::FormContext&) override {
        return ++asked, job::DrawerSize{};
    }
    std::optional<job::Object> object(Purpose, const job::Object& given, const app::FormContext&) override {
        return ++asked, to_object ? to_object(given) : given;
    }
    std::optional<job::Drawer> drawer(Purpose, const job::Drawer& given, const app::FormContext&) override {
        return ++asked, to_drawer ? to_drawer(given) : given;
    }
    std::optional<job::Foam> foam(const job::Foam& given, const job::Shop&,
                                  const app::FormContext&) override {
        return ++asked, to_foam ? to_foam(given) : given;
    }
    std::optional<job::Shop> shop(const job::Shop& given, const app::FormContext&) override {
        return ++asked, given;
    }
    std::optional<job::Notch> notch(const job::Notch& given, const app::FormContext&) override {
        return ++asked, to_notch ? to_notch(given) : given;
    }
    Fills<job::Mold> to_mold;
    std::optional<job::Mold> mold(const job::Mold& given, const job::Shop&,
                                  const app::FormContext&) override {
        return ++asked, to_mold ? to_mold(given) : given;
    }
    std::optional<job::Minimums> minimums(const job::Minimums& given, const app::FormContext&) override {
        return ++asked, to_minimums ? to_minimums(given) : given;
    }
    Objects standard_objects(const app::FormContext&) override { return ++asked, listed; }
    void pasted_list(const app::FormContext&, const std::function<void(const Objects&)>& add) override {
        ++asked;
        if (!listed.empty()) add(listed);
    }
    void show_cost(const plan::CostBasis&, const job::Job&) override { ++told; }
    Fills<job::Job> to_quote; ///< nothing set: only looked at
    std::optional<job::Job> quick_quote(const job::Job& given) override {
        return ++asked, to_quote ? to_quote(given) : std::nullopt;
    }
    std::optional<app::PrintOrder> print_order(const app::PrintOrder& usual, const job::Job&,
                                               const plan::Plan&, const print::Printing&) override {
        return ++asked, to_print ? to_print(usual) : usual;
    }
    std::function<std::optional<job::Foam>(const std::vector<plan::FoamBeside>&)> to_foam_beside;
    std::optional<job::Foam> foam_beside(const std::vector<plan::FoamBeside>& foams,
                                         const job::Job&) override {
        return ++asked, to_foam_beside ? to_foam_beside(foams) : std::nullopt;
    }
    Fills<app::CopyOrder> to_copies;
    std::optional<app::CopyOrder> copies(const app::CopyOrder& usual, const app::CopyRoom&,
                                         const app::FormContext&) override {
        return ++asked, to_copies ? to_copies(usual) : usual;
    }
    std::function<job::Subjects(const std::vector<app::ListedPocket>&)> to_list; ///< chosen of those listed
    std::optional<job::Subjects> pockets_listed(const std::vector<app::ListedPocket>& pockets,
                                                const job::Subjects& chosen,
                                                const app::ChooseDialog::Show&) override {
        return ++asked, to_list ? to_list(pockets) : chosen;
    }
    std::function<std::optional<job::Job>(PourForm, const job::Job&, const std::string&)> to_pour_form;
    std::optional<job::Job> pour_form(PourForm form, const job::Job& job, const plan::Plan&,
                                      const std::string& drawer) override {
        return ++asked, to_pour_form ? to_pour_form(form, job, drawer) : job;
    }
    void tell(const QString&, const QString&) override { ++told; }
    void warn(const QString&, const Problems&) override { ++warned; }

  private:
    QString folder_;
};

/// A window on a folder of its own.
struct Desktop {
    Desktop() {
        window.resize(1366, 740);
        window.show();
        QApplication::processEvents();
    }
    static bool ready() { return application().platformName() == "offscreen"; }
    void open_demo() {
        window.job_acts().open_demo();
        QApplication::processEvents();
    }

    bool application_first = ready();
    QTemporaryDir folder;
    app::Preferences preferences{folder.filePath("settings.ini")};
    Scripted asking{folder.path()};
    app::MainWindow window{preferences, folder.filePath("unsaved"), &asking};
};

} // namespace drawercast::test
