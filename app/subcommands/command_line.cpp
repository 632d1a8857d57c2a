// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/command_line.h"

#include "base/number.h"

#include "subcommands/usage.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string_view>
#include <system_error>

namespace drawercast::subcommands {

namespace {

struct VerbKind {
    std::string_view name;
    Verb verb;
    bool writes = false; ///< needs --out
    bool on_paper = false;
    bool by_sheet = false;
    bool needs_job = true;
};
constexpr std::array verbs{
    VerbKind{.name = "check", .verb = Verb::check},
    VerbKind{.name = "figures", .verb = Verb::figures},
    VerbKind{
        .name = "templates", .verb = Verb::templates, .writes = true, .on_paper = true, .by_sheet = true},
    VerbKind{.name = "summary", .verb = Verb::summary, .writes = true, .on_paper = true},
    VerbKind{.name = "drawings", .verb = Verb::drawings, .writes = true},
    VerbKind{.name = "arrange", .verb = Verb::arrange, .writes = true},
    VerbKind{.name = "quote", .verb = Verb::quote, .needs_job = false},
    VerbKind{.name = "measuring-sheet",
             .verb = Verb::measuring_sheet,
             .writes = true,
             .on_paper = true,
             .needs_job = false},
    VerbKind{.name = "capture", .verb = Verb::capture, .writes = true}};

constexpr std::string_view one_drawer = "--one-drawer"; ///< the only option without a value

/// Options as pairs, the rest in order.
struct Split {
    std::vector<std::pair<std::string, std::string>> options;
    std::vector<std::string> rest;
};

Expected<Split> split(const std::vector<std::string>& arguments) {
    Split out;
    bool options_end = false;
    for (std::size_t i = 1; i < arguments.size(); ++i) {
        const std::string& argument = arguments[i];
        if (options_end || argument.rfind("--", 0) != 0) {
            out.rest.push_back(argument);
            continue;
        }
        if (argument == "--") {
            options_end = true;
            continue;
        }
        if (argument == one_drawer) {
            out.options.emplace_back(argument, std::string());
            continue;
        }
        const auto equals = argument.find('=');
        if (equals != std::string::npos)
            out.options.emplace_back(argument.substr(0, equals), argument.substr(equals + 1));
        else if (i + 1 < arguments.size())
            out.options.emplace_back(argument, arguments[++i]);
        else
            return usage(argument + " needs a value");
    }
    return out;
}

/// A number that fills `text` and lies above `least` and at most at `most`.
std::optional<double> number_in(std::string_view text, double least, double most) {
    const auto value = parse_number(text);
    return value && *value > least && *value <= most ? value : std::nullopt;
}

/// "480x360x60", mm.
std::optional<plan::QuickDrawer> quick_drawer(std::string_view text) {
    std::array<double, 3> sizes{};
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        const auto end = i + 1 < sizes.size() ? text.find('x') : text.size();
        if (end == std::string_view::npos) return std::nullopt;
        const auto size = number_in(text.substr(0, end), 0, 10000);
        if (!size) return std::nullopt;
        sizes[i] = *size;
        text.remove_prefix(std::min(text.size(), end + 1));
    }
    return plan::QuickDrawer{sizes[0], sizes[1], sizes[2]};
}

std::optional<Problem> take_quick(const std::string& name, const std::string& value, plan::QuickIn& quick) {
    if (name == "--drawer") {
        const auto drawer = quick_drawer(value);
        if (!drawer)
            return usage("\"" + value + "\" is no drawer",
                         "Say width, depth and the insert's thickness in mm, such as 480x360x60");
        quick.drawers.push_back(*drawer);
        return std::nullopt;
    }
    if (name == "--objects") {
        const auto count = number_in(value, -1, 10000);
        if (!count || *count != std::floor(*count) || *count < 0)
            return usage("\"" + value + "\" is no number of objects", "Say a whole number");
        quick.objects = static_cast<int>(*count);
        return std::nullopt;
    }
    const auto percent = number_in(value, 0, 90);
    if (!percent) return usage("\"" + value + "\" is no part of the inserts", "Say percent, up to 90");
    quick.area_share = *percent / 100;
    return std::nullopt;
}

/// Of arrange: a drawer by its id, or whichever would do.
std::optional<Problem> take_where(const std::string& name, const std::string& value, Command& command) {
    if (name == one_drawer) {
        if (!value.empty()) return usage(name + " takes no value", "Name a drawer with --into");
        command.one_drawer = true;
    } else {
        if (value.empty()) return usage(name + " needs a value");
        command.into = value;
    }
    if (command.one_drawer && !command.into.empty())
        return usage("one drawer is named, or the one that would do is looked for",
                     "Give --into or --one-drawer");
    return std::nullopt;
}

/// Puts one option into the command, or says why not.
std::optional<Problem> take(const VerbKind& kind, const std::string& name, const std::string& value,
                            Command& command) {
    if (name == "--out" && kind.writes) {
        command.out = value;
        return value.empty() ? std::optional(usage("--out needs a value")) : std::nullopt;
    }
    if (name == "--paper" && kind.on_paper) {
        const auto paper = print::paper_named(value);
        if (!paper) return usage("there is no paper \"" + value + "\"", "Choose a4, letter, a3 or tabloid");
        if (kind.verb == Verb::measuring_sheet && *paper != print::Paper::a4 &&
            *paper != print::Paper::letter)
            return usage("there is no measuring sheet on " + value, "Choose a4 or letter");
        command.paper = *paper;
        return std::nullopt;
    }
    if (name == "--language" && (kind.on_paper || kind.verb == Verb::drawings)) {
        const auto language = language::named(QString::fromStdString(value));
        if (!language) return usage("there is no language \"" + value + "\"", "Choose en or de");
        command.language = *language;
        return std::nullopt;
    }
    if (name == "--orientation" && kind.by_sheet) {
        command.orientation = print::orientation_named(value);
        if (!command.orientation)
            return usage("there is no orientation \"" + value + "\"", "Choose portrait or landscape");
        return std::nullopt;
    }
    if (name == "--sheet" && kind.by_sheet) {
        command.sheet = print::template_named(value);
        if (!command.sheet)
            return usage("there is no sheet \"" + value + "\"", "Choose " + print::template_names());
        return std::nullopt;
    }
    if (name == "--seconds" && kind.verb == Verb::arrange) {
        const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), command.seconds);
        const bool whole = error == std::errc() && end == value.data() + value.size();
        if (whole && command.seconds >= 1 && command.seconds <= 3600) return std::nullopt;
        return usage("\"" + value + "\" is no time to arrange in", "Say whole seconds from 1 to 3600");
    }
    if ((name == "--into" || name == one_drawer) && kind.verb == Verb::arrange)
        return take_where(name, value, command);
    if (kind.verb == Verb::quote && (name == "--drawer" || name == "--objects" || name == "--area"))
        return take_quick(name, value, command.quick);
    if (kind.verb == Verb::capture && is_capture_option(name))
        return take_capture(name, value, command.capture);
    return usage(std::string(kind.name) + " knows no option " + name);
}

} // namespace

Expected<Command> parsed(const std::vector<std::string>& arguments) {
    Command command;
    if (arguments.empty())
        return usage("there is no display to open the window on",
                     "Say what to do without one: see drawercast --help");
    for (const std::string& argument : arguments) {
        if (argument == "--") break;
        if (argument == "--help" || argument == "-h") return command;
    }
    if (arguments.front() == "--version") {
        command.verb = Verb::version;
        return command;
    }
    const auto kind = std::find_if(verbs.begin(), verbs.end(),
                                   [&](const VerbKind& one) { return one.name == arguments.front(); });
    if (kind == verbs.end()) {
        if (arguments.front().rfind("-", 0) == 0) return usage("there is no option " + arguments.front());
        return usage("\"" + arguments.front() +
                     "\" is no subcommand, and no job that the window could open here");
    }
    command.verb = kind->verb;
    const auto parts = split(arguments);
    if (!parts) return parts.error();
    for (const auto& [name, value] : parts->options)
        if (auto problem = take(*kind, name, value, command)) return *problem;
    if (kind->verb == Verb::quote && command.quick.drawers.empty())
        return usage("quote needs a drawer at least", "Give --drawer 480x360x60");
    if (kind->writes && command.out.empty() && !kind->needs_job)
        return usage(std::string(kind->name) + " needs --out");
    if (kind->verb == Verb::measuring_sheet && !parts->rest.empty())
        return usage("measuring-sheet takes no job: \"" + parts->rest.front() + "\" is too many");
    if (parts->rest.empty() && !kind->needs_job) return command;
    if (parts->rest.empty())
        return usage(std::string(kind->name) +
                     (kind->verb == Verb::capture ? " needs a picture" : " needs a job file"));
    if (parts->rest.size() > 1)
        return usage(std::string(kind->verb == Verb::capture ? "one picture" : "one job") + " at a time: \"" +
                     parts->rest[1] + "\" is too many");
    command.job = parts->rest.front();
    if (command.job.empty()) // an unset variable of a script, and no wish for a new job
        return usage(std::string(kind->verb == Verb::capture ? "the picture's" : "the job's") +
                         " name is empty",
                     "Name the file");
    if (kind->writes && command.out.empty()) return usage(std::string(kind->name) + " needs --out");
    return command;
}

} // namespace drawercast::subcommands
