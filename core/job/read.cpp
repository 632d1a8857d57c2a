// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read.h"

#include "base/number.h"
#include "job/read_parts.h"
#include "job/words.h"

#include <map>
#include <set>

namespace drawercast::job {

namespace {

constexpr std::size_t most_objects = 5000;
constexpr std::size_t most_drawers = 500;

/// Whether this is a job of a version that can be read; nothing else is looked at before.
std::optional<Problem> refused(const JsonNode& root, std::string_view text) {
    const auto here = [&](const JsonNode& node, const char* pointer) {
        return std::string(pointer) + " (" + place_text(text, node.begin) + ")";
    };
    const JsonNode* format = root.find("format");
    if (format == nullptr || format->kind != JsonNode::Kind::string || format->text != "drawercast-job")
        return Problem{"format", here(format ? *format : root, "/format"), "this is not a Drawercast job",
                       "Open a file whose \"format\" is \"drawercast-job\""};
    const JsonNode* version = root.find("version");
    const auto number =
        version && version->kind == JsonNode::Kind::number ? parse_number(version->text) : std::nullopt;
    if (!number || *number < 1 || *number != static_cast<double>(static_cast<long long>(*number)))
        return Problem{"version", here(version ? *version : root, "/version"),
                       "the job does not say its version",
                       "Write \"version\": " + std::to_string(format_version)};
    if (*number > format_version)
        return Problem{"version-newer", here(*version, "/version"),
                       "the job is of version " + number_text(*number) +
                           ", this program reads up to version " + std::to_string(format_version),
                       "Open it with a newer Drawercast"};
    return std::nullopt;
}

/// Ids that must be unique, and pockets that must know their object. `spots` of lists hold the places for the
/// reports.
void check_references(Reading& reading, const Job& job, const std::vector<Spot>& objects,
                      const std::vector<Spot>& drawers) {
    std::set<std::string> known;
    for (std::size_t i = 0; i < job.objects.size(); ++i) {
        const auto& id = job.objects[i]->id;
        if (id.empty() || id.find('#') != std::string::npos)
            reading.report("id", objects[i].pointer, objects[i].node->begin, "\"" + id + "\" can't be an id",
                           "Use a word without #");
        else if (!known.insert(id).second)
            reading.report("id-twice", objects[i].pointer, objects[i].node->begin,
                           "the object id \"" + id + "\" is used twice", "Give one of them another id");
    }
    std::set<std::string> drawer_ids;
    std::set<std::pair<std::string, int>> placed;
    for (std::size_t i = 0; i < job.drawers.size(); ++i) {
        const Drawer& drawer = *job.drawers[i];
        if (drawer.id.empty() || !drawer_ids.insert(drawer.id).second)
            reading.report("id-twice", drawers[i].pointer, drawers[i].node->begin,
                           "the drawer id \"" + drawer.id + "\" is empty or used twice",
                           "Give it another id");
        const JsonNode* list = drawers[i].node->find("pockets");
        for (std::size_t p = 0; p < drawer.pockets.size(); ++p) {
            const Pocket& pocket = drawer.pockets[p];
            const Spot spot = drawers[i].at("pockets", *list).item(p, list->items[p]);
            if (known.count(pocket.object) == 0)
                reading.report("object-unknown", spot.pointer, spot.node->begin,
                               "there is no object \"" + pocket.object + "\"",
                               "Add the object, or take the pocket out");
            else if (!placed.insert({pocket.object, pocket.n}).second)
                reading.report("pocket-twice", spot.pointer, spot.node->begin,
                               subject_of(pocket) + " stands twice", "Give one of them another \"n\"");
        }
    }
}

Job read_all(Reading& reading, const JsonNode& root) {
    Job job;
    Fields fields(reading, {&root, "", ""});
    std::string format;
    fields.text("format", format);
    fields.part("version", [](const Spot&) {});
    fields.text("title", job.title);
    fields.whole("revision", job.revision);
    fields.word("display_units", job.display_units, unit_words());
    fields.text("currency", job.currency);
    fields.part("shop", [&](const Spot& part) { job.shop = read_shop(reading, part); });
    fields.part("foam", [&](const Spot& part) { job.foam = read_foam(reading, part); });
    fields.part("mold", [&](const Spot& part) { job.mold = read_mold(reading, part); });
    fields.part("minimums", [&](const Spot& part) { job.minimums = read_minimums(reading, part); });
    std::vector<Spot> objects;
    fields.list("objects", most_objects, [&](const Spot& item) {
        objects.push_back(item);
        job.objects.emplace_back(read_object(reading, item));
    });
    std::vector<Spot> drawers;
    fields.list("drawers", most_drawers, [&](const Spot& item) {
        drawers.push_back(item);
        job.drawers.emplace_back(read_drawer(reading, item));
    });
    fields.list("left_as_is", 100000,
                [&](const Spot& item) { job.left_as_is.push_back(read_left_as_is(reading, item)); });
    fields.kept("as_built", job.as_built);
    fields.kept("casts", job.casts);
    fields.kept("log", job.log);
    job.unknown = fields.rest();
    if (reading.clean()) check_references(reading, job, objects, drawers);
    return job;
}

} // namespace

ExpectedAll<Job> read_job(std::string_view text) {
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3); // a byte order mark some editors leave
    const auto tree = parse_json(text);
    if (!tree) return Problems{tree.error()};
    if (tree->kind != JsonNode::Kind::object)
        return Problems{
            {"format", "/ (line 1, column 1)", "this is not a Drawercast job", "Open another file"}};
    if (auto problem = refused(*tree, text)) return Problems{std::move(*problem)};
    Reading reading(text);
    Job job = read_all(reading, *tree);
    if (!reading.clean()) return reading.take();
    return job;
}

} // namespace drawercast::job
