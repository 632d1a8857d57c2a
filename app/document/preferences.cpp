// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/preferences.h"

#include "base/units.h"

#include <QFileInfo>
#include <QLocale>
#include <QMetaEnum>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr double least_text_scale = 0.75;
constexpr double most_text_scale = 3;
constexpr double usual_grid_mm = 10;
constexpr double usual_grid_inches = units::mm_per_inch / 2; ///< mm
constexpr double least_grid_mm = 0.1;
constexpr double most_grid_mm = 1000;

} // namespace

Preferences::Preferences(const QString& file, QObject* parent)
    : QObject(parent), settings_(file.isEmpty() ? QSettings().fileName() : file, QSettings::IniFormat) {}

void Preferences::set(const QString& key, const QVariant& value) {
    if (settings_.value(key) == value) return;
    settings_.setValue(key, value);
    emit changed();
}

Preferences::Appearance Preferences::appearance() const {
    const auto words = QMetaEnum::fromType<Appearance>();
    bool known = false;
    const int value = words.keyToValue(settings_.value("appearance", "system").toString().toLatin1(), &known);
    return known ? static_cast<Appearance>(value) : Appearance::system;
}

void Preferences::set_appearance(Appearance appearance) {
    set("appearance", QMetaEnum::fromType<Appearance>().valueToKey(static_cast<int>(appearance)));
}

std::optional<language::Language> Preferences::chosen_language() const {
    return language::named(settings_.value("language").toString());
}

void Preferences::set_chosen_language(std::optional<language::Language> language) {
    set("language", language ? language::code_of(*language) : QStringLiteral("system"));
}

language::Language Preferences::language() const {
    return chosen_language().value_or(language::first_spoken(QLocale::system().uiLanguages()));
}

double Preferences::text_scale() const {
    return std::clamp(settings_.value("text_scale", 1.0).toDouble(), least_text_scale, most_text_scale);
}

void Preferences::set_text_scale(double scale) {
    set("text_scale", std::clamp(scale, least_text_scale, most_text_scale));
}

bool Preferences::snapping() const { return settings_.value("snapping", true).toBool(); }
void Preferences::set_snapping(bool on) { set("snapping", on); }

bool Preferences::grid_shown() const { return settings_.value("grid_shown", true).toBool(); }
void Preferences::set_grid_shown(bool on) { set("grid_shown", on); }

double Preferences::grid_mm(job::DisplayUnits units) const {
    const double usual = units == job::DisplayUnits::mm ? usual_grid_mm : usual_grid_inches;
    return std::clamp(settings_.value("grid_mm", usual).toDouble(), least_grid_mm, most_grid_mm);
}

void Preferences::set_grid_mm(double mm) { set("grid_mm", std::clamp(mm, least_grid_mm, most_grid_mm)); }

QStringList Preferences::recent() const { return settings_.value("recent").toStringList(); }

void Preferences::add_recent(const QString& path) {
    const QString absolute = QFileInfo(path).absoluteFilePath();
    QStringList list = recent();
    list.removeAll(absolute);
    list.prepend(absolute);
    while (list.size() > most_recent) list.removeLast();
    set("recent", list);
}

QString Preferences::printing(const QString& key) const {
    return settings_.value("printing/" + key).toString();
}

void Preferences::set_printing(const QString& key, const QString& value) {
    settings_.setValue("printing/" + key, value); // nobody draws by it: no changed()
}

QByteArray Preferences::window_state(const QString& name) const {
    return settings_.value("window/" + name).toByteArray();
}

void Preferences::set_window_state(const QString& name, const QByteArray& state) {
    settings_.setValue("window/" + name, state); // nobody draws by it: no changed()
}

} // namespace drawercast::app
