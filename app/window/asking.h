// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/catalog.h"
#include "job/job.h"

#include <QString>
#include <QStringList>

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
    virtual std::optional<int> number(const QString& title, const QString& label, int usual, int least,
                                      int most) = 0;
    virtual std::optional<int> choice(const QString& title, const QString& label, const QStringList& of) = 0;
    virtual std::optional<job::DrawerSize> drawer_size(job::DisplayUnits units) = 0;
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
    std::optional<int> number(const QString& title, const QString& label, int usual, int least,
                              int most) override;
    std::optional<int> choice(const QString& title, const QString& label, const QStringList& of) override;
    std::optional<job::DrawerSize> drawer_size(job::DisplayUnits units) override;
    void tell(const QString& title, const QString& rich_text) override;
    void warn(const QString& title, const Problems& problems) override;

  private:
    QWidget* parent_;
};

} // namespace drawercast::app
