// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/catalog.h"
#include "job/job.h"
#include "plan/cost.h"
#include "plan/foams_beside.h"

#include "forms/copies_form.h"
#include "window/choose_dialog.h"
#include "window/print_order.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <optional>

class QWidget;

namespace drawercast::app {

/// What the window asks the maker in dialogs. Tests answer in the maker's place.
class Asking {
  public:
    virtual ~Asking() = default;

    enum class Unsaved { save, discard, cancel };

    virtual std::optional<QString> file_to_open() = 0;
    /// `filter` as a file dialog takes it; the answer ends in `ending`.
    virtual std::optional<QString> file_to_save(const QString& title, const QString& suggested,
                                                const QString& filter, const QString& ending) = 0;
    virtual std::optional<QString> folder(const QString& title) = 0;
    virtual Unsaved about_unsaved(const QString& name) = 0;
    virtual bool yes(const QString& title, const QString& question) = 0;
    virtual std::optional<int> choice(const QString& title, const QString& label, const QStringList& of) = 0;
    virtual std::optional<QString> text(const QString& title, const QString& label, const QString& usual) = 0;
    virtual std::optional<job::DrawerSize> drawer_size(const FormContext& context) = 0;

    /// Forms: each is given a value and gives the filled in one back; nothing where the maker took it back.
    enum class Purpose { add, change };
    using Objects = std::vector<job::Object>;
    virtual std::optional<job::Object> object(Purpose purpose, const job::Object& object,
                                              const FormContext& context) = 0;
    virtual std::optional<job::Drawer> drawer(Purpose purpose, const job::Drawer& drawer,
                                              const FormContext& context) = 0;
    virtual std::optional<job::Foam> foam(const job::Foam& foam, const job::Shop& shop,
                                          const FormContext& context) = 0;
    virtual std::optional<job::Shop> shop(const job::Shop& shop, const FormContext& context) = 0;
    virtual std::optional<job::Notch> notch(const job::Notch& notch, const FormContext& context) = 0;
    virtual std::optional<job::Mold> mold(const job::Mold& mold, const job::Shop& shop,
                                          const FormContext& context) = 0;
    virtual std::optional<job::Minimums> minimums(const job::Minimums& minimums,
                                                  const FormContext& context) = 0;
    virtual Objects standard_objects(const FormContext& context) = 0; ///< those chosen, without ids
    /// `add` is told each lot of objects that is taken, without ids; rows to put right stay in the form.
    virtual void pasted_list(const FormContext& context, const std::function<void(const Objects&)>& add) = 0;

    virtual std::optional<job::Foam> foam_beside(const std::vector<plan::FoamBeside>& foams,
                                                 const job::Job& job) = 0; ///< the one taken
    virtual std::optional<CopyOrder> copies(const CopyOrder& usual, const CopyRoom& room,
                                            const FormContext& context) = 0;
    /// `show` is told the choice as it is made; nothing where the maker took it back.
    virtual std::optional<job::Subjects> pockets_listed(const std::vector<ListedPocket>& pockets,
                                                        const job::Subjects& chosen,
                                                        const ChooseDialog::Show& show) = 0;

    /// Forms of the pour day, each of which gives a changed job back.
    enum class PourForm { cup, as_built, as_cast };
    virtual std::optional<job::Job> pour_form(PourForm form, const job::Job& job, const plan::Plan& plan,
                                              const std::string& drawer) = 0;

    virtual void show_cost(const plan::CostBasis& basis, const job::Job& job) = 0;
    /// A job to start with what was quoted, priced as `job` is; nothing: only looked at.
    virtual std::optional<job::Job> quick_quote(const job::Job& job) = 0;

    virtual std::optional<PrintOrder> print_order(const PrintOrder& usual, const job::Job& job,
                                                  const plan::Plan& plan,
                                                  const print::Printing& printing) = 0;

    virtual void tell(const QString& title, const QString& rich_text) = 0;
    virtual void warn(const QString& title, const Problems& problems) = 0;
};

/// By dialogs over `parent`.
class Dialogs final : public Asking {
  public:
    explicit Dialogs(QWidget* parent) : parent_(parent) {}

    std::optional<QString> file_to_open() override;
    std::optional<QString> file_to_save(const QString& title, const QString& suggested, const QString& filter,
                                        const QString& ending) override;
    std::optional<QString> folder(const QString& title) override;
    Unsaved about_unsaved(const QString& name) override;
    bool yes(const QString& title, const QString& question) override;
    std::optional<int> choice(const QString& title, const QString& label, const QStringList& of) override;
    std::optional<QString> text(const QString& title, const QString& label, const QString& usual) override;
    std::optional<job::DrawerSize> drawer_size(const FormContext& context) override;
    std::optional<job::Object> object(Purpose purpose, const job::Object& object,
                                      const FormContext& context) override;
    std::optional<job::Drawer> drawer(Purpose purpose, const job::Drawer& drawer,
                                      const FormContext& context) override;
    std::optional<job::Foam> foam(const job::Foam& foam, const job::Shop& shop,
                                  const FormContext& context) override;
    std::optional<job::Shop> shop(const job::Shop& shop, const FormContext& context) override;
    std::optional<job::Notch> notch(const job::Notch& notch, const FormContext& context) override;
    std::optional<job::Mold> mold(const job::Mold& mold, const job::Shop& shop,
                                  const FormContext& context) override;
    std::optional<job::Minimums> minimums(const job::Minimums& minimums, const FormContext& context) override;
    Objects standard_objects(const FormContext& context) override;
    void pasted_list(const FormContext& context, const std::function<void(const Objects&)>& add) override;
    std::optional<job::Foam> foam_beside(const std::vector<plan::FoamBeside>& foams,
                                         const job::Job& job) override;
    std::optional<CopyOrder> copies(const CopyOrder& usual, const CopyRoom& room,
                                    const FormContext& context) override;
    std::optional<job::Subjects> pockets_listed(const std::vector<ListedPocket>& pockets,
                                                const job::Subjects& chosen,
                                                const ChooseDialog::Show& show) override;
    std::optional<job::Job> pour_form(PourForm form, const job::Job& job, const plan::Plan& plan,
                                      const std::string& drawer) override;
    void show_cost(const plan::CostBasis& basis, const job::Job& job) override;
    std::optional<job::Job> quick_quote(const job::Job& job) override;
    std::optional<PrintOrder> print_order(const PrintOrder& usual, const job::Job& job,
                                          const plan::Plan& plan, const print::Printing& printing) override;
    void tell(const QString& title, const QString& rich_text) override;
    void warn(const QString& title, const Problems& problems) override;

  private:
    QWidget* parent_;
};

} // namespace drawercast::app
