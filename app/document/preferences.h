// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "language/spoken.h"

#include <QByteArray>
#include <QObject>
#include <QSettings>
#include <QStringList>

#include <optional>

namespace drawercast::app {

/// What the maker likes and the program remembers; never part of a job, never read by core. Behind it stands
/// the settings file it was given, so that tests have their own.
class Preferences : public QObject {
    Q_OBJECT
  public:
    enum class Appearance { system, light, dark, contrast_light, contrast_dark };
    Q_ENUM(Appearance)

    /// `file` empty: the user's own settings.
    explicit Preferences(const QString& file = {}, QObject* parent = nullptr);

    Appearance appearance() const;
    void set_appearance(Appearance appearance);

    std::optional<language::Language> chosen_language() const; ///< none: as the system
    void set_chosen_language(std::optional<language::Language> language);
    language::Language language() const; ///< the chosen one, else the system's

    double text_scale() const; ///< 0.75 … 3
    void set_text_scale(double scale);

    bool snapping() const;
    void set_snapping(bool on);

    bool grid_shown() const;
    void set_grid_shown(bool on);
    /// Over 0; the chosen one, else 10 mm, or half an inch where lengths are shown in inches.
    double grid_mm(job::DisplayUnits units) const;
    void set_grid_mm(double mm);

    static constexpr int most_recent = 9;
    QStringList recent() const; ///< absolute paths, last used first
    void add_recent(const QString& path);

    /// How the maker last printed: "what", "paper", …; empty: never yet.
    QString printing(const QString& key) const;
    void set_printing(const QString& key, const QString& value);

    QByteArray window_state(const QString& name) const;
    void set_window_state(const QString& name, const QByteArray& state);

  signals:
    void changed();

  private:
    void set(const QString& key, const QVariant& value);

    QSettings settings_;
};

} // namespace drawercast::app
