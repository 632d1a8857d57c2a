// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/markup.h"

#include "plan/say.h"

#include "language/spoken.h"

#include <QRegularExpression>

namespace drawercast::app::guide {

namespace {

using Replace = std::function<QString(const QRegularExpressionMatch&)>;

/// Every match replaced by what `by` makes of it.
QString replaced(const QString& text, const QRegularExpression& what, const Replace& by) {
    QString out;
    qsizetype done = 0;
    for (auto matches = what.globalMatch(text); matches.hasNext();) {
        const auto match = matches.next();
        out += text.mid(done, match.capturedStart() - done) + by(match);
        done = match.capturedEnd();
    }
    return out + text.mid(done);
}

const QRegularExpression& bold() {
    static const QRegularExpression it(QStringLiteral("\\*\\*(.+?)\\*\\*"));
    return it;
}
const QRegularExpression& link() {
    static const QRegularExpression it(QStringLiteral("\\[([^\\]]+)\\]\\(#([^)]+)\\)"));
    return it;
}
const QRegularExpression& asked() {
    static const QRegularExpression it(QStringLiteral("\\{(\\w+) ([^}]+)\\}"));
    return it;
}
const QRegularExpression& picture_line() {
    static const QRegularExpression it(QStringLiteral("^!\\[([^\\]]*)\\]\\(([^)]+)\\)$"));
    return it;
}
const QRegularExpression& item() {
    static const QRegularExpression it(QStringLiteral("^(-|\\d+\\.) +(.*)$"));
    return it;
}

/// Lines of one kind that stand together.
struct Block {
    enum class Kind { words, item, numbered, formula, source, picture, list };
    Kind kind = Kind::words;
    QString text;
    QString name; ///< of a picture or list
};

Block block_of(const QString& line) {
    if (line.startsWith(QStringLiteral("    "))) return {Block::Kind::formula, line.trimmed(), {}};
    if (line.startsWith(QStringLiteral("> "))) return {Block::Kind::source, line.mid(2), {}};
    if (const auto found = picture_line().match(line); found.hasMatch())
        return {Block::Kind::picture, found.captured(1), found.captured(2)};
    if (const auto found = asked().match(line); found.hasMatch() && found.capturedLength() == line.size() &&
                                                found.captured(1) == QStringLiteral("list"))
        return {Block::Kind::list, {}, found.captured(2)};
    if (const auto found = item().match(line); found.hasMatch())
        return {found.captured(1) == QStringLiteral("-") ? Block::Kind::item : Block::Kind::numbered,
                found.captured(2),
                {}};
    return {Block::Kind::words, line, {}};
}

/// A line that goes on with the one before it.
bool goes_on(const Block& block, const Block& before) {
    if (block.kind == Block::Kind::source) return before.kind == Block::Kind::source;
    return block.kind == Block::Kind::words && before.kind != Block::Kind::picture &&
           before.kind != Block::Kind::list && before.kind != Block::Kind::formula;
}

std::vector<Block> blocks_of(const QStringList& lines) {
    std::vector<Block> blocks;
    bool apart = true;
    for (const QString& line : lines) {
        if (line.trimmed().isEmpty()) {
            apart = true;
            continue;
        }
        Block block = block_of(line);
        if (!apart && !blocks.empty() && goes_on(block, blocks.back()))
            blocks.back().text += u' ' + block.text.trimmed();
        else
            blocks.push_back(std::move(block));
        apart = false;
    }
    return blocks;
}

class Setting {
  public:
    Setting(const Book& book, const Answers& answers) : book_(book), answers_(answers) {}

    QString of(const Section& section) const {
        QString html = heading(section);
        auto before = Block::Kind::words;
        for (const auto& block : blocks_of(section.lines)) {
            html += list_tags(before, block.kind) + of(block);
            before = block.kind;
        }
        return html + list_tags(before, Block::Kind::words);
    }

  private:
    static QString heading(const Section& section) {
        QString names;
        for (const QString& id : section.ids)
            names += QStringLiteral("<a name='%1'></a>").arg(id.toHtmlEscaped());
        return QStringLiteral("<h%1>%2%3</h%1>").arg(section.level).arg(names, section.title.toHtmlEscaped());
    }

    /// Lists end and begin where the kind of block changes.
    static QString list_tags(Block::Kind from, Block::Kind to) {
        const auto tag = [](Block::Kind kind) {
            return kind == Block::Kind::item       ? QStringLiteral("ul")
                   : kind == Block::Kind::numbered ? QStringLiteral("ol")
                                                   : QString();
        };
        if (from == to) return {};
        QString tags;
        if (!tag(from).isEmpty()) tags += QStringLiteral("</%1>").arg(tag(from));
        if (!tag(to).isEmpty()) tags += QStringLiteral("<%1>").arg(tag(to));
        return tags;
    }

    QString of(const Block& block) const {
        switch (block.kind) {
        case Block::Kind::words:
            return QStringLiteral("<p>%1</p>").arg(set(block.text));
        case Block::Kind::item:
        case Block::Kind::numbered:
            return QStringLiteral("<li>%1</li>").arg(set(block.text));
        case Block::Kind::formula:
            return QStringLiteral("<table width='100%' cellpadding='6' style='margin-top:4px; "
                                  "margin-bottom:8px' bgcolor='%1'><tr><td>%2</td></tr></table>")
                .arg(answers_.plate_color, set(block.text));
        case Block::Kind::source:
            return QStringLiteral("<p style='margin-left:14px; color:%1'>%2</p>")
                .arg(answers_.quiet_color, set(block.text));
        case Block::Kind::picture:
            return picture(block);
        case Block::Kind::list:
            return answers_.list ? answers_.list(block.name) : QString();
        }
        return {};
    }

    QString picture(const Block& block) const {
        const QSize size = answers_.picture ? answers_.picture(block.name) : QSize();
        if (size.isEmpty()) return {};
        return QStringLiteral("<p style='margin-top:10px'><img src='picture:%1' width='%2' "
                              "height='%3'></p><p style='color:%4'>%5</p>")
            .arg(block.name.toHtmlEscaped())
            .arg(size.width())
            .arg(size.height())
            .arg(answers_.quiet_color, set(block.text));
    }

    QString set(const QString& words) const {
        QString html = words.toHtmlEscaped();
        html = replaced(html, bold(),
                        [](const auto& match) { return QStringLiteral("<b>%1</b>").arg(match.captured(1)); });
        html = replaced(html, link(), [this](const auto& match) {
            const QString id = match.captured(2);
            const auto place = book_.find(id);
            if (place.chapter == nullptr) return match.captured(1);
            return QStringLiteral("<a href='guide:%1#%2'>%3</a>")
                .arg(place.chapter->name, id, match.captured(1));
        });
        return replaced(html, asked(), [this](const auto& match) {
            if (match.captured(1) == QStringLiteral("do")) return action(match.captured(2));
            return quantity(match.captured(1) + u' ' + match.captured(2), answers_.units)
                .toHtmlEscaped()
                .replace(u' ', QStringLiteral("&nbsp;"));
        });
    }

    QString action(const QString& id) const {
        const QString words = answers_.action ? answers_.action(id) : QString();
        return words.isEmpty() ? QString()
                               : QStringLiteral("<a href='action:%1'>%2</a>").arg(id, words.toHtmlEscaped());
    }

    const Book& book_;
    const Answers& answers_;
};

} // namespace

QString quantity(const QString& words, job::DisplayUnits units) {
    const QString unit = words.section(u' ', 0, 0);
    bool number = false;
    const double value = words.section(u' ', 1).toDouble(&number);
    if (!number) return {};
    const auto said = [&](auto say, double amount) { return language::figures(say(amount, units)); };
    if (unit == u"mm") return said(plan::say_length, value);
    if (unit == u"ml") return said(plan::say_volume_ml, value);
    if (unit == u"g") return said(plan::say_mass_g, value);
    if (unit == u"kg") return said(plan::say_mass_g, 1000 * value);
    if (unit == u"kpa") return said(plan::say_pressure_kpa, value);
    if (unit == u"n") return said(plan::say_force_n, value);
    if (unit == u"c") return said(plan::say_temperature_c, value);
    if (unit == u"m") return said(plan::say_altitude_m, value);
    return {};
}

QString html_of(const Chapter& chapter, const Book& book, const Answers& answers) {
    const Setting setting(book, answers);
    QString html;
    for (const auto& section : chapter.sections) html += setting.of(section);
    return html;
}

References references_of(const Chapter& chapter) {
    References found;
    for (const auto& section : chapter.sections)
        for (const auto& block : blocks_of(section.lines)) {
            if (block.kind == Block::Kind::picture) found.pictures << block.name;
            if (block.kind == Block::Kind::list) found.lists << block.name;
            for (auto links = link().globalMatch(block.text); links.hasNext();)
                found.links << links.next().captured(2);
            for (auto all = asked().globalMatch(block.text); all.hasNext();) {
                const auto match = all.next();
                if (match.captured(1) == QStringLiteral("do"))
                    found.actions << match.captured(2);
                else
                    found.quantities << match.captured(1) + u' ' + match.captured(2);
            }
        }
    return found;
}

} // namespace drawercast::app::guide
