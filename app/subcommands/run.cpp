// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/run.h"

#include "base/demand.h"
#include "capture/picture_header.h"
#include "job/catalog.h"
#include "job/store.h"
#include "job/write.h"
#include "plan/figures.h"
#include "plan/plan.h"

#include "print/drawing_files.h"
#include "print/pdf.h"
#include "print/photo_sheet.h"
#include "print/templates.h"
#include "subcommands/arrange_report.h"
#include "subcommands/captured_job.h"
#include "subcommands/check_report.h"
#include "subcommands/command_line.h"
#include "subcommands/kept_files.h"
#include "subcommands/output.h"
#include "subcommands/quote_report.h"
#include "subcommands/worked_out.h"
#include "summary/summary.h"

#include <QDateTime>
#include <QGuiApplication>

#include <array>
#include <filesystem>
#include <system_error>

namespace drawercast::subcommands {

namespace {

const std::string program = "Drawercast " DRAWERCAST_VERSION;

/// Letters need Qt's fonts, fonts need an application object; the offscreen platform needs no display.
class Lettering {
  public:
    explicit Lettering(language::Language language)
        : quiet_(qInstallMessageHandler(ignore)), application_(count_, arguments_.data()), spoken_(language) {
        DRAWERCAST_DEMAND(theme::load_fonts(), "the embedded fonts are there");
    }

  private:
    /// Standard error is for what a script must know; what Qt thinks of the session it runs in is not.
    static void ignore(QtMsgType, const QMessageLogContext&, const QString&) {}

    QtMessageHandler quiet_;
    std::array<char, 11> name_{"drawercast"};
    std::array<char, 10> platform_{"-platform"};
    std::array<char, 10> offscreen_{"offscreen"};
    std::array<char*, 4> arguments_{name_.data(), platform_.data(), offscreen_.data(), nullptr};
    int count_ = 3;
    QGuiApplication application_;
    language::Spoken spoken_;
};

print::Printing printing_now() { return print::printing_at(QDateTime::currentDateTime()); }

Exit said(std::string_view text) {
    const auto done = say(text);
    if (done) return Exit::fine;
    complain(one_line(done.error()));
    return Exit::unwritable;
}

Exit written(const std::string& path, const QByteArray& bytes) {
    const auto done = job::write_file(path, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
    if (done) return Exit::fine;
    complain(one_line(done.error()));
    return Exit::unwritable;
}

Exit write_pages(const std::vector<print::Page>& pages, const QString& title, const std::string& path) {
    if (pages.empty()) {
        complain("nothing could be drawn: see drawercast check");
        return Exit::mend;
    }
    const QByteArray pdf = print::pdf_of(pages, title, QString::fromStdString(program));
    DRAWERCAST_DEMAND(!pdf.isEmpty(), "a PDF can be made in memory");
    return written(path, pdf);
}

/// A job may lie in the folder, under the name of one of its drawings: then nothing is written.
Exit write_drawings(const Command& command, const job::Job& job, const plan::Plan& plan) {
    const std::string& folder = command.out;
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error) {
        complain(folder + ": the folder can't be made: " + error.message());
        return Exit::unwritable;
    }
    const auto files = print::drawing_files(job, plan);
    const auto path_of = [&](const print::DrawingFile& file) {
        return (std::filesystem::path(folder) / file.name).string();
    };
    for (const auto& file : files) {
        if (!same_file(path_of(file), command.job)) continue;
        complain(one_line(input_lost(path_of(file))));
        return Exit::unwritable;
    }
    for (const auto& file : files) {
        const Exit exit = written(path_of(file), file.bytes);
        if (exit != Exit::fine) return exit;
    }
    return Exit::fine;
}

/// The long parts take seconds: they are left out where nothing of them is drawn.
WorkedOut plan_for(const Command& command, const job::Job& job) {
    const bool quick = command.verb == Verb::templates && command.sheet && !print::shows_cuts(*command.sheet);
    return quick ? WorkedOut{plan::compute(job), true} : worked_out(job);
}

/// As the window saves: read back first, and the job that was there stays beside it. A device or a pipe gets
/// the text alone.
Exit saved(const job::Job& job, const std::string& path) {
    const auto refused = [](const Problem& problem) {
        complain(one_line(problem));
        return problem.code == "unsavable" ? Exit::mend : Exit::unwritable;
    };
    std::error_code error;
    if (std::filesystem::is_other(path, error)) {
        const auto text = job::checked_text(job);
        if (!text) return refused(text.error().front());
        return written(path, QByteArray::fromStdString(*text));
    }
    const auto done = job::save_job(job, path);
    if (!done) return refused(done.error());
    if (done->backup_problem) complain(one_line(*done->backup_problem));
    return Exit::fine;
}

Exit arrange_into(const Command& command, const job::Job& job) {
    const auto report = arrange_report(command, job);
    if (!report) {
        complain(one_line(report.error()));
        return Exit::usage;
    }
    const Exit exit = saved(report->job, command.out);
    if (exit != Exit::fine) return exit;
    const Exit told = said(report->text);
    return told == Exit::fine && !report->all ? Exit::mend : told;
}

/// With the foam, shop and currency of `job`.
Exit quote(const Command& command, const job::Job& job) {
    const auto quote = plan::quick_quote(job, command.quick);
    if (!quote) {
        complain(one_line(quote.error()));
        return Exit::mend;
    }
    return said(quote_report(job, *quote));
}

/// A file that is no picture is unreadable; a picture that gives no outline wants mending.
Exit capture_into(const Command& command) {
    const auto refused = [&](const Problem& problem, Exit exit) {
        complain(problem.where.empty() ? command.job + ": " + one_line(problem) : one_line(problem));
        return exit;
    };
    if (!capture::available()) return refused(capture::flattened({}, {}).error(), Exit::mend);
    const auto picture = job::read_file(command.job, capture::picture_bytes_most);
    if (!picture) return refused(picture.error(), Exit::unreadable);
    if (const auto header = capture::picture_header(*picture); !header)
        return refused(header.error(), Exit::unreadable);
    const auto captured =
        captured_job(*picture, command.capture, std::filesystem::path(command.job).stem().string());
    if (!captured) {
        const bool torn = captured.error().code.rfind("picture-", 0) == 0;
        return refused(captured.error(), torn ? Exit::unreadable : Exit::mend);
    }
    const Exit exit = saved(captured->job, command.out);
    return exit == Exit::fine ? said(captured->report) : exit;
}

/// What is drawn for the bench is cut by: a script hears of it even where it has not asked for the checks.
Exit if_cut_by(Exit exit, const Command& command, const plan::Plan& plan) {
    const int mends = plan::count_to_mend(plan);
    if (exit != Exit::fine || mends == 0) return exit;
    complain(std::to_string(mends) + " to mend before it is cut: see drawercast check " + command.job);
    return Exit::mend;
}

Exit answer_of(const Command& command, const job::Job& job, const plan::Plan& plan) {
    switch (command.verb) {
    case Verb::check: {
        const Exit exit = said(check_report(job, plan));
        return exit == Exit::fine && plan::anything_to_mend(plan) ? Exit::mend : exit;
    }
    case Verb::figures:
        return said(plan::figures_json(job, plan, program));
    case Verb::templates: {
        const Lettering lettering(command.language);
        const auto pages = print::template_pages(
            job, plan, {command.paper, command.orientation, command.sheet}, printing_now());
        return if_cut_by(write_pages(pages, QString::fromStdString(job.title), command.out), command, plan);
    }
    case Verb::summary: {
        const Lettering lettering(command.language);
        return write_pages(summary::summary_pages(job, plan, command.paper, printing_now()),
                           QString::fromStdString(job.title), command.out);
    }
    case Verb::drawings: {
        const Lettering lettering(command.language);
        return if_cut_by(write_drawings(command, job, plan), command, plan);
    }
    case Verb::arrange:
    case Verb::quote:
    case Verb::measuring_sheet:
    case Verb::capture:
    case Verb::help:
    case Verb::version:
        break;
    }
    return Exit::usage;
}

Exit answer(const Command& command, const job::Job& job) {
    if (command.verb == Verb::arrange) return arrange_into(command, job);
    if (command.verb == Verb::quote) return quote(command, job);
    const WorkedOut worked = plan_for(command, job);
    const Exit exit = answer_of(command, job, worked.plan);
    return exit == Exit::fine && !worked.whole ? Exit::mend : exit; // half an answer lets nothing through
}

} // namespace

Exit run(const std::vector<std::string>& arguments) {
    const auto command = parsed(arguments);
    if (!command) {
        complain(one_line(command.error()));
        return Exit::usage;
    }
    if (command->verb == Verb::help) return said(help_text());
    if (command->verb == Verb::version) return said(program + "\n");
    if (const auto lost = loses_a_file(*command)) {
        complain(one_line(*lost));
        return Exit::unwritable;
    }
    if (command->verb == Verb::measuring_sheet) {
        const Lettering lettering(command->language);
        return write_pages({print::photo_sheet(command->paper, printing_now())},
                           QStringLiteral("Measuring sheet"), command->out);
    }
    if (command->verb == Verb::capture) return capture_into(*command);
    if (command->job.empty()) return answer(*command, job::new_job({}));
    const auto job = job::load_job(command->job);
    if (!job) {
        const Problems& problems = job.error();
        std::string line = one_line(problems.front());
        if (problems.size() > 1) line += " (and " + std::to_string(problems.size() - 1) + " more)";
        const bool named = problems.front().where.name.rfind(command->job, 0) == 0;
        complain(named ? line : command->job + ": " + line);
        return Exit::unreadable;
    }
    return answer(*command, *job);
}

} // namespace drawercast::subcommands
