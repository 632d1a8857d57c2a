// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/actions.h"

#include "base/demand.h"

#include "canvas/sheet_table.h"
#include "language/spoken.h"
#include "theme/icons.h"

#include <QCoreApplication>

#include <algorithm>

namespace drawercast::app {

namespace {

bool build_up(const Situation& s) { return s.build_up; }
bool always(const Situation&) { return true; }
bool drawer(const Situation& s) { return s.drawer; }
bool pockets(const Situation& s) { return s.pockets > 0; }
bool pockets_or_vent(const Situation& s) { return s.pockets > 0 || s.vent; }
bool to_lock(const Situation& s) { return s.free > 0 || (s.vent && !s.vent_kept); }
bool free_pockets(const Situation& s) { return s.free > 0; }
bool to_align(const Situation& s) { return s.pockets > 1 && s.free > 0; }
bool to_spread(const Situation& s) { return s.free > 2; }
bool one_pocket(const Situation& s) { return s.pockets == 1; }
bool two_free(const Situation& s) { return s.pockets == 2 && s.free == 2; }

} // namespace

#define TEXT(words) QT_TRANSLATE_NOOP("Actions", words)

namespace {

std::vector<ActionSpec> listed() {
    return {
        {"job.new", TEXT("&New job…"), "new", "Ctrl+N", always},
        {"job.open", TEXT("&Open…"), "open", "Ctrl+O", always},
        {"job.save", TEXT("&Save"), "save", "Ctrl+S", always},
        {"job.save_as", TEXT("Save &as…"), "", "Ctrl+Shift+S", always},
        {"job.title", TEXT("Tit&le…"), "", "", always},
        {"job.revision", TEXT("Start a new re&vision"), "", "", drawer},
        {"job.foam", TEXT("&Foam…"), "foam", "Ctrl+Shift+F", always},
        {"job.foams", TEXT("Foams side &by side…"), "kits", "Ctrl+Alt+F", drawer},
        {"job.mold", TEXT("How the molds are &built…"), "box", "Ctrl+Shift+O", always},
        {"job.minimums", TEXT("Shop &minimums…"), "", "Ctrl+Shift+M", always},
        {"job.shop", TEXT("S&hop and day of the pour…"), "settings", "Ctrl+Shift+P", always},
        {"job.cost", TEXT("&Cost and quote…"), "cost", "Ctrl+Shift+K", drawer},
        {"job.quick_quote", TEXT("Rou&gh estimate…"), "cost", "Ctrl+Shift+E", always},
        {"job.print", TEXT("&Print…"), "print", "Ctrl+P", drawer},
        {"job.templates", TEXT("&Templates…"), "templates", "Ctrl+T", drawer},
        {"job.summary", TEXT("S&ummary…"), "summary", "Ctrl+U", drawer},
        {"job.drawings", TEXT("&Drawings…"), "drawings", "Ctrl+Shift+D", drawer},
        {"job.cards", TEXT("Pour cards and &rescue card…"), "pour-day", "Ctrl+Shift+G", drawer},
        {"job.object_sheets", TEXT("Object sheets, true si&ze…"), "templates", "Ctrl+Alt+O",
         [](const Situation& s) { return s.objects; }},
        {"job.measuring_sheet", TEXT("Form to write measures on…"), "file", "", always},
        {"job.photo_sheet", TEXT("Measuring sheet for photos…"), "file", "", always},
        {"job.lists", TEXT("L&ists as CSV…"), "rows", "Ctrl+Shift+I", drawer},
        {"job.demo", TEXT("Open the demo jo&b: field service"), "open", "", always},
        {"job.demo_standard", TEXT("Open the demo &job: standard objects"), "open", "", always},
        {"job.quit", TEXT("&Quit"), "", "Ctrl+Q", always},

        {"edit.undo", TEXT("&Undo"), "undo", "Ctrl+Z", [](const Situation& s) { return s.can_undo; }},
        {"edit.redo", TEXT("&Redo"), "redo", "Ctrl+Shift+Z, Ctrl+Y",
         [](const Situation& s) { return s.can_redo; }},
        {"edit.cut", TEXT("Cu&t"), "", "Ctrl+X", free_pockets},
        {"edit.copy", TEXT("&Copy"), "copy", "Ctrl+C",
         [](const Situation& s) { return s.pockets > 0 || s.object; }},
        {"edit.paste", TEXT("P&aste"), "paste", "Ctrl+V", always},
        {"edit.duplicate", TEXT("Dupl&icate"), "duplicate", "Ctrl+D", pockets},
        {"edit.delete", TEXT("D&elete"), "delete", "Del", pockets_or_vent},
        {"edit.select_all", TEXT("&Select all"), "", "Ctrl+A",
         [](const Situation& s) { return s.plan_sheet && s.drawer_pockets; }},
        {"edit.select_listed", TEXT("C&hoose pockets from a list…"), "rows", "Ctrl+Shift+L",
         [](const Situation& s) { return s.plan_sheet && s.drawer_pockets; }},
        {"edit.lock", TEXT("&Lock"), "lock", "L", to_lock},
        {"edit.unlock", TEXT("Unl&ock"), "unlock", "Shift+L",
         [](const Situation& s) { return s.pockets > s.free || s.vent_kept; }},

        {"objects.add", TEXT("Add an &object…"), "object", "Ins", always},
        {"objects.change", TEXT("Change the o&bject…"), "measure", "F2",
         [](const Situation& s) { return s.object; }},
        {"objects.standard", TEXT("Objects of published &size…"), "standard-library", "Ctrl+Ins", always},
        {"objects.paste_list", TEXT("Paste a &list…"), "paste", "Ctrl+Shift+V", always},
        {"objects.photo", TEXT("Measure from a p&hoto…"), "from-above", "Ctrl+Shift+Ins", always},
        {"objects.place", TEXT("&Place in the drawer"), "rectangle", "Ctrl+Return",
         [](const Situation& s) { return s.object && s.drawer && s.plan_sheet; }},
        {"objects.select", TEXT("Choose its poc&kets"), "", "Shift+A",
         [](const Situation& s) { return s.object && s.drawer && s.plan_sheet; }},
        {"objects.duplicate", TEXT("&Duplicate object"), "", "", [](const Situation& s) { return s.object; }},
        {"objects.delete", TEXT("D&elete object"), "", "", [](const Situation& s) { return s.object; }},
        {"objects.find", TEXT("&Find an object"), "", "Ctrl+F", always},

        {"drawers.add", TEXT("Add a d&rawer…"), "drawer", "Shift+Ins", always},
        {"drawers.change", TEXT("Chan&ge the drawer…"), "settings", "Shift+F2", drawer},
        {"drawers.delete", TEXT("Delete the dra&wer"), "", "", drawer},

        {"place.turn", TEXT("T&urn 90° counterclockwise"), "turn", "T", free_pockets},
        {"place.turn_back", TEXT("Turn 90° &clockwise"), "", "Shift+T", free_pockets},
        {"place.turn_15", TEXT("&Turn 15°"), "", "Ctrl+Shift+T", free_pockets},
        {"place.align_left", TEXT("Align &left edges"), "align-left", "Shift+Home", to_align},
        {"place.align_right", TEXT("Align &right edges"), "align-right", "Shift+End", to_align},
        {"place.align_front", TEXT("Align &front edges"), "align-front", "Shift+PgDown", to_align},
        {"place.align_back", TEXT("Align &back edges"), "align-back", "Shift+PgUp", to_align},
        {"place.center_x", TEXT("Centers in line, front to back"), "align-center-x", "Ctrl+Alt+X", to_align},
        {"place.center_y", TEXT("Centers in line, left to right"), "align-center-y", "Ctrl+Alt+Y", to_align},
        {"place.spread_x", TEXT("Spread evenly, left to right"), "", "E", to_spread},
        {"place.spread_y", TEXT("Spread evenly, front to back"), "", "Shift+E", to_spread},
        {"place.walls_x", TEXT("&Equal walls, left to right"), "equal-walls", "W", free_pockets},
        {"place.walls_y", TEXT("Equal walls, front to back"), "", "Shift+W", free_pockets},
        {"place.row", TEXT("Copies in ro&ws…"), "row-of-copies", "R", one_pocket},
        {"place.grid", TEXT("Onto the &grid"), "grid", "Shift+G", free_pockets},
        {"place.typed", TEXT("T&ype place and turn…"), "drawer-frame", "P", free_pockets},
        {"place.swap", TEXT("Swa&p the two"), "swap", "X", two_free},
        {"place.replace", TEXT("&Replace by another object…"), "object", "Shift+R", free_pockets},
        {"place.notch", TEXT("Finger &notch"), "finger-notch", "N", one_pocket},
        {"place.notch_sizes", TEXT("Si&zes of the finger notch…"), "measure", "Ctrl+Shift+N",
         [](const Situation& s) { return s.pockets == 1 && s.notches; }},
        {"place.no_notch", TEXT("Take &finger notch away"), "", "Shift+N",
         [](const Situation& s) { return s.pockets == 1 && s.notches; }},
        {"place.other_drawer", TEXT("To another &drawer…"), "drawer", "Shift+D",
         [](const Situation& s) { return s.pockets > 0 && s.other_drawers; }},

        {"place.measure", TEXT("&Measure a distance"), "measure", "D",
         [](const Situation& s) { return s.drawer && s.plan_sheet; }, true},
        {"arrange.unplaced", TEXT("P&lace the rest"), "arrange", "Ctrl+R",
         [](const Situation& s) { return s.drawer && s.plan_sheet && s.unplaced; }},
        {"arrange.unlocked", TEXT("&Rearrange what is not locked"), "arrange", "Ctrl+Shift+R",
         [](const Situation& s) { return s.drawer && s.plan_sheet && (s.unplaced || s.loose); }},
        {"arrange.drawers", TEXT("Place the rest over all &drawers"), "arrange", "Ctrl+Alt+R",
         [](const Situation& s) { return s.other_drawers && s.plan_sheet && s.unplaced; }},
        {"arrange.which", TEXT("&Which drawer would do…"), "drawer", "",
         [](const Situation& s) { return s.other_drawers && s.plan_sheet && s.unplaced; }},
        {"arrange.tidy", TEXT("&Tidy, and what changes"), "equal-walls", "Ctrl+Shift+Y",
         [](const Situation& s) { return s.drawer && s.plan_sheet && s.loose; }},

        {"vents.add", TEXT("&Add a vent"), "vent", "V", [](const Situation& s) { return s.vent_sheet; }},
        {"vents.drill", TEXT("&Drill of the vent"), "measure", "Shift+V",
         [](const Situation& s) { return s.vent; }},
        {"vents.rest", TEXT("&Place the other vents"), "", "",
         [](const Situation& s) { return s.vent_sheet; }, true},
        {"vents.automatic", TEXT("All &vents automatic"), "clear", "",
         [](const Situation& s) { return s.vent_sheet && s.own_vents; }},

        {"mold.turn_left", TEXT("Turn the build-up to the le&ft"), "back", "Alt+Left", build_up},
        {"mold.turn_right", TEXT("Turn the build-up to the ri&ght"), "forward", "Alt+Right", build_up},
        {"mold.apart", TEXT("Take the build-up apa&rt"), "build-up", "Alt+Up", build_up},
        {"mold.together", TEXT("Put the build-&up together"), "box", "Alt+Down", build_up},

        {"check.next", TEXT("Next c&heck"), "to-check", "F4", [](const Situation& s) { return s.checks; }},
        {"check.mend", TEXT("Way&s to mend it"), "mend", "M", [](const Situation& s) { return s.check; }},
        {"check.leave", TEXT("Leave as &is"), "left-as-is", "Ctrl+L",
         [](const Situation& s) { return s.look; }},
        {"check.guide", TEXT("M&ore in the guide"), "explain", "Shift+F1",
         [](const Situation& s) { return s.any_check; }},
        {"check.take_back", TEXT("Take &back"), "clear", "", [](const Situation& s) { return s.left_as_is; }},

        {"pour.cup", TEXT("Test &cup…"), "foam", "Ctrl+Shift+C", always},
        {"pour.as_built", TEXT("&As built…"), "box", "Ctrl+Shift+B", drawer},
        {"pour.as_cast", TEXT("As ca&st…"), "as-cast", "Ctrl+Shift+A", drawer},
        {"pour.rehearse", TEXT("&Dry run with a stopwatch"), "run-sheet", "Shift+F9", drawer},
        {"pour.day", TEXT("&Pour day"), "pour-day", "F9", drawer},
        {"pour.depths", TEXT("Depths from boards at &hand"), "depth", "", drawer},

        {"view.next_drawer", TEXT("Ne&xt drawer"), "", "Ctrl+PgDown",
         [](const Situation& s) { return s.other_drawers; }},
        {"view.zoom_in", TEXT("Zoom &in"), "", "Ctrl++, Ctrl+=", drawer},
        {"view.zoom_out", TEXT("&Zoom out"), "", "Ctrl+-", drawer},
        {"view.fit", TEXT("Fit th&e sheet"), "fit", "Ctrl+0", drawer},
        {"view.to_choice", TEXT("Zoom &to what is chosen"), "", "Z",
         [](const Situation& s) { return s.pockets > 0 && s.plan_sheet; }},
        {"view.to_check", TEXT("Zoom to the chec&k"), "to-check", "Shift+Z",
         [](const Situation& s) { return s.check || s.left_as_is; }},
        {"view.grid", TEXT("&Grid"), "grid", "G", always, true},
        {"view.snap", TEXT("S&nap"), "snap", "S", always, true},
        {"view.left_pane", TEXT("Drawers and obje&cts"), "pane-left", "F7", always, true},
        {"view.right_pane", TEXT("Checks and &foam"), "pane-right", "F8", always, true},
        {"view.mm", TEXT("&Millimeters"), "", "", always, true},
        {"view.inch", TEXT("&Inches, decimal"), "", "", always, true},
        {"view.inch_32", TEXT("Inches, &fractions"), "", "", always, true},
        {"view.language_system", TEXT("As the &system"), "", "", always, true},
        {"view.english", TEXT("&English"), "", "", always, true},
        {"view.german", TEXT("&Deutsch"), "", "", always, true},
        {"view.system", TEXT("As the &desktop"), "", "", always, true},
        {"view.light", TEXT("&Light"), "", "", always, true},
        {"view.dark", TEXT("D&ark"), "", "", always, true},
        {"view.contrast_light", TEXT("High contrast, &black on white"), "", "", always, true},
        {"view.contrast_dark", TEXT("High contrast, &white on black"), "", "", always, true},
        {"view.larger", TEXT("&Larger text"), "", "Ctrl+Alt+.", always},
        {"view.smaller", TEXT("S&maller text"), "", "Ctrl+Alt+,", always},
        {"view.usual", TEXT("&Usual text size"), "", "", always},

        {"help.guide", TEXT("&Guide"), "explain", "F1", always},
        {"help.keys", TEXT("&Keys"), "", "Ctrl+F1", always},
        {"help.cautions", TEXT("&Cautions"), "", "", always},
        {"help.about", TEXT("&About Drawercast"), "", "", always},
    };
}

/// Each sheet's own action stands before the others of the View menu.
std::vector<ActionSpec> with_sheets() {
    auto specs = listed();
    auto at = std::find_if(specs.begin(), specs.end(),
                           [](const auto& spec) { return spec.id == "view.next_drawer"; });
    for (const auto& sheet : sheet_specs())
        at = specs.insert(at, ActionSpec{sheet.action, sheet.text, sheet.icon, sheet.key, always, true}) + 1;
    return specs;
}

} // namespace

const std::vector<ActionSpec>& action_specs() {
    static const std::vector<ActionSpec> specs = with_sheets();
    return specs;
}

#undef TEXT

Actions::Actions(QObject* parent) : QObject(parent) {
    for (const auto& spec : action_specs()) {
        auto* action = new QAction(QCoreApplication::translate("Actions", spec.text), this);
        action->setObjectName(QString::fromLatin1(spec.id.data(), static_cast<int>(spec.id.size())));
        if (*spec.icon != '\0') action->setIcon(theme::icon(QString::fromLatin1(spec.icon)));
        QList<QKeySequence> keys;
        for (const auto& one : QString::fromLatin1(spec.keys).split(QStringLiteral(", "), Qt::SkipEmptyParts))
            keys << QKeySequence(one, QKeySequence::PortableText);
        action->setShortcuts(keys);
        const QString words = action->text().remove(QLatin1Char('&')).remove(QStringLiteral("…"));
        action->setToolTip(keys.isEmpty() ? words
                                          : language::tr("%1 (%2)").arg(
                                                words, keys.front().toString(QKeySequence::NativeText)));
        action->setCheckable(spec.checkable);
        action->setEnabled(spec.enabled(Situation{}));
        const std::string id(spec.id);
        connect(action, &QAction::triggered, this, [this, id] {
            const auto act = acts_.find(id);
            if (act != acts_.end()) act->second();
        });
        actions_.emplace(id, action);
    }
}

QAction* Actions::operator[](std::string_view id) const {
    const auto found = actions_.find(id);
    DRAWERCAST_DEMAND(found != actions_.end(), "an action of that id");
    return found->second;
}

void Actions::on(std::string_view id, std::function<void()> act) {
    DRAWERCAST_DEMAND(actions_.count(id) == 1, "an action of that id");
    acts_[std::string(id)] = std::move(act);
}

void Actions::first(std::string_view id, std::function<bool()> act) {
    auto& known = acts_[std::string(id)];
    known = [act = std::move(act), otherwise = std::move(known)] {
        if (!act() && otherwise) otherwise();
    };
}

void Actions::update(const Situation& situation) {
    for (const auto& spec : action_specs())
        actions_.find(spec.id)->second->setEnabled(spec.enabled(situation));
}

std::vector<QAction*> Actions::all() const {
    std::vector<QAction*> list;
    for (const auto& spec : action_specs()) list.push_back(actions_.find(spec.id)->second);
    return list;
}

} // namespace drawercast::app
