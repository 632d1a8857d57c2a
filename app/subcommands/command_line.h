// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "plan/quick_quote.h"

#include "language/spoken.h"
#include "print/paper.h"
#include "print/template_kind.h"
#include "subcommands/capture_options.h"

#include <optional>
#include <string>
#include <vector>

namespace drawercast::subcommands {

enum class Verb {
    help,
    version,
    check,
    figures,
    templates,
    summary,
    drawings,
    arrange,
    quote,
    measuring_sheet,
    capture
};

/// A command line understood.
struct Command {
    Verb verb = Verb::help;
    std::string job;         ///< path (of capture: the picture's); empty where none need be given
    std::string out;         ///< file or folder
    int seconds = 60;        ///< of arrange: at most
    std::string into;        ///< of arrange: a drawer's id; empty: all in turn
    bool one_drawer = false; ///< of arrange: whichever would do
    plan::QuickIn quick;     ///< of quote
    CaptureIn capture;
    language::Language language = language::Language::english; ///< of what goes onto paper
    print::Paper paper = print::Paper::a4;
    std::optional<print::Orientation> orientation; ///< of templates; nothing: the one with fewer tiles
    std::optional<print::TemplateKind> sheet;      ///< nothing: all of them
};

/// The arguments behind the program's name; options may stand anywhere behind the subcommand, as
/// "--out FILE" or "--out=FILE", and "--" ends them. A Problem of code "usage" where they are not understood.
Expected<Command> parsed(const std::vector<std::string>& arguments);

/// What --help prints.
std::string help_text();

} // namespace drawercast::subcommands
