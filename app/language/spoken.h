// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <QTranslator>

#include <optional>
#include <string_view>

namespace drawercast::language {

enum class Language { english, german };

/// "en" or "de"; anything else is none.
std::optional<Language> named(QStringView code);
QString code_of(Language language); ///< the other way around

/// Of the languages a system lists ("de-AT", "en"), the best first, the first that the program speaks;
/// English where there is none.
Language first_spoken(const QStringList& listed);

/// Looks up by text and comment alone, wherever it stands in the code: the same words are translated once.
class FlatTable : public QTranslator {
  public:
    bool isEmpty() const override;
    QString translate(const char* context, const char* source, const char* comment, int n) const override;
};

/// As long as this lives, texts are asked for in `language`, Qt's own too where the system has them. What was
/// made before keeps its words. There must be an application object.
class Spoken {
  public:
    explicit Spoken(Language language);
    ~Spoken();
    Spoken(const Spoken&) = delete;
    Spoken& operator=(const Spoken&) = delete;

  private:
    FlatTable words_;
    QTranslator toolkit_;
};

Language spoken_now();

/// A text where there is no widget to ask, on paper and beside the window: lupdate finds it by the name.
QString tr(const char* text, const char* comment = nullptr);

/// What core says with its figures, for the window and for paper: with the language's decimal mark. What goes
/// into files that programs read does not pass here.
QString figures(std::string_view said);

} // namespace drawercast::language
