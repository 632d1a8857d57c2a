// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read.h"

#include "base/number.h"
#include "job/read_parts.h"
#include "job/references.h"
#include "job/words.h"

#include <algorithm>
#include <cmath>

namespace drawercast::job {

namespace {

constexpr std::size_t most_objects = 5000;
constexpr std::size_t most_drawers = 500;
constexpr std::size_t most_left_as_is = 100000;
constexpr std::size_t most_as_built = 1000;
constexpr std::size_t most_casts = 10000;
constexpr std::size_t most_marks = 100000;

/// Whether this is a job of a version that can be read; nothing else is looked at before.
std::optional<Problem> refused(const JsonValue& root) {
    const auto format = root.find("format");
    if (!format || format->text() != "drawercast-job")
        return Problem{"format", format.value_or(root).where(), phrase("this is not a Drawercast job"),
                       phrase("Open a file whose \"format\" is \"drawercast-job\"")};
    const auto version = root.find("version");
    const auto number =
        version && version->kind() == JsonKind::number ? parse_number(version->raw()) : std::nullopt;
    if (!number || *number < 1 || *number != std::floor(*number))
        return Problem{"version", version.value_or(root).where(), phrase("the job does not say its version"),
                       phrase("Write \"version\": %1", figure(std::to_string(format_version)))};
    if (*number > format_version)
        return Problem{"version-newer", version->where(),
                       phrase("this job needs a newer Drawercast: it is of version %1, and this program "
                              "reads up to version %2",
                              figure(rounded_text(*number, 9)), figure(std::to_string(format_version))),
                       phrase("Open it with a newer Drawercast")};
    return std::nullopt;
}

void report_repeated_keys(Reading& reading, const JsonTree& tree) {
    for (const JsonValue& key : tree.repeated_keys())
        reading.report("key-twice", key,
                       phrase("the key \"%1\" stands twice in one object", verbatim(std::string(key.text()))),
                       phrase("Take one of the two out"));
}

Job read_all(Reading& reading, const JsonTree& tree) {
    Job job;
    References references;
    Fields fields(reading, tree.root(), "");
    fields.part("format", [](JsonValue) {});
    fields.part("version", [](JsonValue) {});
    fields.text("title", job.title);
    fields.whole("revision", job.revision);
    fields.word("display_units", job.display_units, unit_words());
    fields.text("currency", job.currency);
    fields.part("shop", [&](JsonValue part) { job.shop = read_shop(reading, part); });
    fields.part("foam", [&](JsonValue part) { job.foam = read_foam(reading, part); });
    fields.part("mold", [&](JsonValue part) { job.mold = read_mold(reading, part); });
    fields.part("minimums", [&](JsonValue part) { job.minimums = read_minimums(reading, part); });
    fields.list("objects", most_objects, [&](JsonValue item) {
        job.objects.emplace_back(read_object(reading, item));
        references.object(*job.objects.back(), item);
    });
    fields.list("drawers", most_drawers, [&](JsonValue item) {
        job.drawers.emplace_back(read_drawer(reading, item));
        references.drawer(*job.drawers.back(), item);
    });
    fields.list("left_as_is", most_left_as_is,
                [&](JsonValue item) { job.left_as_is.push_back(read_left_as_is(reading, item)); });
    fields.list("as_built", most_as_built,
                [&](JsonValue item) { job.as_built.push_back(read_as_built(reading, item)); });
    fields.list("casts", most_casts, [&](JsonValue item) { job.casts.push_back(read_cast(reading, item)); });
    fields.list("log", most_marks, [&](JsonValue item) { job.log.push_back(read_mark(reading, item)); });
    job.unknown = fields.rest();
    references.check(reading);
    return job;
}

std::string_view without_byte_order_mark(std::string_view text) {
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3); // some editors leave one
    return text;
}

} // namespace

ExpectedAll<Job> read_job(std::string_view text) {
    text = without_byte_order_mark(text);
    const auto tree = parse_json(text);
    if (!tree) return Problems{tree.error()};
    if (auto problem = refused(tree->root())) return Problems{std::move(*problem)};
    Reading reading;
    report_repeated_keys(reading, *tree);
    Job job = read_all(reading, *tree);
    if (!reading.clean()) return reading.take();
    return job;
}

UnknownKeys unknown_keys(std::string_view text) {
    const auto tree = parse_json(without_byte_order_mark(text));
    if (!tree || refused(tree->root())) return {};
    Reading reading;
    read_all(reading, *tree);
    std::vector<JsonValue> unknown = reading.unknown();
    std::sort(unknown.begin(), unknown.end(),
              [](const JsonValue& a, const JsonValue& b) { return a.begin() < b.begin(); });
    UnknownKeys keys;
    for (const JsonValue& at : unknown) keys.paths.push_back(at.path());
    keys.more = reading.more_unknown();
    return keys;
}

} // namespace drawercast::job
