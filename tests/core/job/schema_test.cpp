// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "job/ranges.h"
#include "job/store.h"
#include "job/words.h"

#include "core/job/full_job.h"
#include "core/job/random_job.h"
#include "source_dir.h"

#include <gtest/gtest.h>

#include <charconv>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace drawercast::job {
namespace {

const std::string schema_path = DRAWERCAST_SOURCE_DIR "/resources/schema/job.schema.json";

/// The schema, and walks through it that follow "$ref".
class Schema : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto bytes = read_file(schema_path, most_json_bytes);
        ASSERT_TRUE(bytes);
        text_ = *bytes;
        auto tree = parse_json(text_);
        ASSERT_TRUE(tree);
        tree_.emplace(std::move(*tree));
        ASSERT_TRUE(tree_->repeated_keys().empty());
    }

    JsonValue resolved(JsonValue schema) const {
        const auto ref = schema.find("$ref");
        return ref ? *testing::value_at(tree_->root(), ref->text().substr(1)) : schema;
    }

    /// Every number the schema allows, by the path of its range.
    void gather_numbers(JsonValue at, const std::string& path) {
        const auto ref = at.find("$ref");
        if (ref && (ref->text() == "#/$defs/outline" || ref->text() == "#/$defs/point"))
            return gather_numbers(resolved(at), ref->text() == "#/$defs/point" ? "/point" : "/outline");
        const JsonValue schema = resolved(at);
        const auto type = schema.find("type");
        if (type && (type->text() == "number" || type->text() == "integer")) return add_number(schema, path);
        if (const auto alternatives = schema.find("anyOf"))
            alternatives->each_item([&](JsonValue one) { gather_numbers(one, path); });
        if (const auto items = schema.find("items")) {
            const auto item_type = resolved(*items).find("type");
            gather_numbers(*items, item_type && item_type->text() == "number" ? path : path + "/*");
        }
        if (const auto several = schema.find("prefixItems")) {
            int index = 0;
            several->each_item(
                [&](JsonValue one) { gather_numbers(one, path + "/" + std::to_string(index++)); });
        }
        if (const auto properties = schema.find("properties"))
            properties->each_member([&](std::string_view key, JsonValue one) {
                gather_numbers(one, path + "/" + std::string(key));
            });
    }

    void add_number(JsonValue schema, const std::string& path) {
        static const std::map<std::string, std::string> names{
            {"/point", "/point/coordinate_mm"},
            {"/outline/rect/0", "/outline/size_mm"},
            {"/outline/rect/1", "/outline/size_mm"},
            {"/outline/rect/2", "/outline/corner_mm"},
            {"/outline/circle", "/outline/size_mm"},
            {"/outline/capsule", "/outline/size_mm"},
            {"/outline/polygon/*/0", "/outline/coordinate_mm"},
            {"/outline/polygon/*/1", "/outline/coordinate_mm"},
            {"/outline/polygon/*/2", "/outline/sagitta_mm"},
            {"/objects/*/levels/*/lying/*/0", "/objects/*/levels/*/lying/*/length_mm"},
            {"/objects/*/levels/*/lying/*/1", "/objects/*/levels/*/lying/*/diameter_mm"}};
        const auto name = names.find(path);
        numbers_.emplace(name == names.end() ? path : name->second, schema);
    }

    std::string text_;
    std::optional<JsonTree> tree_;
    std::multimap<std::string, JsonValue> numbers_;
};

double number_at(const JsonValue& schema, const char* key) {
    const auto value = schema.find(key);
    return value ? parse_number(value->raw()).value() : NAN;
}

TEST_F(Schema, states_the_ranges_that_the_reader_keeps_and_no_others) {
    gather_numbers(tree_->root(), "");
    std::set<std::string> stated;
    for (const auto& [path, schema] : numbers_) {
        SCOPED_TRACE(path);
        stated.insert(path);
        const Range& range = range_of(path); // stops where there is none
        EXPECT_EQ(number_at(schema, "maximum"), range.most);
        EXPECT_EQ(number_at(schema, range.open_least ? "exclusiveMinimum" : "minimum"), range.least);
        EXPECT_EQ(schema.find("type")->text(), range.whole ? "integer" : "number");
    }
    for (const auto& range : ranges()) EXPECT_EQ(stated.count(std::string(range.path)), 1u) << range.path;
}

/// What the reader refuses and JSON Schema has no keyword for, where a maker looks for it.
TEST_F(Schema, says_in_words_what_it_cannot_demand) {
    const std::pair<const char*, const char*> rows[] = {
        {"/description", "stand twice in one object"},
        {"/description", "kept in millionths of a mm"},
        {"/description", "deeper than 64 levels"},
        {"/properties/objects/description", "no two with the same id"},
        {"/properties/drawers/description", "no two with the same id"},
        {"/properties/drawers/description", "no object's n-th pocket twice"},
        {"/$defs/shop/properties/supplies/description", "each supply at most once"},
        {"/$defs/shop/properties/start/description", "nothing is reckoned from it"},
        {"/$defs/pocket/properties/object/description", "there must be one of that id"},
        {"/$defs/outline/properties/polygon/description", "enclosing an area"}};
    for (const auto& [place, words] : rows) {
        const auto description = testing::value_at(tree_->root(), place);
        ASSERT_TRUE(description) << place;
        EXPECT_NE(description->text().find(words), std::string_view::npos) << place << ": " << words;
    }
}

/// The members that are written, in order; of a list's items those of each, without repeats.
std::vector<std::string> keys_of(const JsonValue& object) {
    std::vector<std::string> keys;
    object.each_member([&](std::string_view key, JsonValue) { keys.emplace_back(key); });
    return keys;
}

TEST_F(Schema, names_every_key_that_is_written_in_the_order_it_is_written) {
    const std::string text = write_job(testing::full_job());
    const auto job = parse_json(text);
    ASSERT_TRUE(job);
    const std::pair<const char*, const char*> parts[] = {
        {"", ""},
        {"/shop", "/$defs/shop"},
        {"/shop/boards/*", "/$defs/board"},
        {"/shop/stiffeners/*", "/$defs/stiffener"},
        {"/shop/closures/*", "/$defs/closure"},
        {"/shop/tubes/*", "/$defs/tube"},
        {"/shop/supplies/*", "/$defs/supply_pack"},
        {"/as_built/*", "/$defs/as_built"},
        {"/as_built/*/blocks/*", "/$defs/built_block"},
        {"/foam", "/$defs/foam"},
        {"/foam/kits/*", "/$defs/kit"},
        {"/foam/cup", "/$defs/cup"},
        {"/foam/cups/*", "/$defs/cup"},
        {"/casts/*", "/$defs/cast"},
        {"/casts/*/fits/*", "/$defs/cast_fit"},
        {"/log/*", "/$defs/mark"},
        {"/mold", "/$defs/mold"},
        {"/mold/stiffeners", "/$defs/stiffener_choice"},
        {"/minimums", "/$defs/minimums"},
        {"/objects/*", "/$defs/object"},
        {"/drawers/*", "/$defs/drawer"},
        {"/drawers/*/obstructions/*", "/$defs/obstruction"},
        {"/drawers/*/pockets/*", "/$defs/pocket"},
        {"/drawers/*/pockets/*/notches/*", "/$defs/notch"},
        {"/drawers/*/vents", "/$defs/vents"},
        {"/drawers/*/vents/keep/*", "/$defs/kept_vent"},
        {"/drawers/*/pours/*", "/$defs/pour"},
        {"/left_as_is/*", "/$defs/left_as_is"},
    };
    for (const auto& [written, stated] : parts) {
        SCOPED_TRACE(written);
        const auto part = testing::value_at(job->root(), written);
        ASSERT_TRUE(part);
        EXPECT_EQ(keys_of(*part),
                  keys_of(*testing::value_at(tree_->root(), stated + std::string("/properties"))));
    }
    std::set<std::string> level_keys; // no level has them all
    testing::value_at(job->root(), "/objects/*/levels")->each_item([&](JsonValue level) {
        for (const auto& key : keys_of(level)) level_keys.insert(key);
    });
    std::set<std::string> stated;
    for (const auto& key : keys_of(*testing::value_at(tree_->root(), "/$defs/level/properties")))
        stated.insert(key);
    EXPECT_EQ(level_keys, stated);
}

/// The same value, whatever the blanks.
std::string plain(std::string_view raw) {
    std::string text;
    for (const char c : raw)
        if (c != ' ' && c != '\n') text += c;
    return text;
}

/// Keys added later are written only where they are not the usual: older files stay as they are.
void expect_usual(std::string_view key, std::string_view stated) {
    const Shop usual;
    if (key == "turns") {
        EXPECT_EQ(stated, '"' + std::string(word_of(Object{}.turns, turn_words())) + '"');
        return;
    }
    const std::map<std::string_view, double> left_out{{"scale_step_g", usual.scale_step_g},
                                                      {"margin", usual.margin},
                                                      {"opens_h", usual.opens_h},
                                                      {"closes_h", usual.closes_h},
                                                      {"hour_price", usual.hour_price}};
    const auto found = left_out.find(key);
    ASSERT_NE(found, left_out.end());
    double value = -1;
    std::from_chars(stated.data(), stated.data() + stated.size(), value);
    EXPECT_EQ(value, found->second);
}

TEST_F(Schema, states_the_defaults_that_keys_left_out_take) {
    Job job; // everything at its default, one of each part
    job.shop.edit([](Shop& shop) {
        shop.boards = {Board{}};
        shop.stiffeners = {Stiffener{}};
        shop.closures = {Closure{}};
        shop.tubes = {Tube{}};
        shop.supplies = {SupplyPack{}};
    });
    job.foam.edit([](Foam& foam) {
        foam.kits = {Kit{}};
        foam.cup = Cup{};
    });
    job.objects = {Shared<Object>(Object{})};
    Drawer drawer;
    drawer.obstructions = {Obstruction{}};
    drawer.pockets = {Pocket{}};
    drawer.pockets[0].notches = {Notch{}};
    job.drawers = {Shared<Drawer>(Drawer{}), Shared<Drawer>(drawer)};
    job.left_as_is = {LeftAsIs{}};
    job.as_built = {AsBuilt{}};
    job.as_built[0].blocks = {BuiltBlock{}};
    Job set = job; // what is set by the maker, at its default
    set.mold.stiffeners = StiffenerChoice{};
    set.drawers[1].edit([](Drawer& d) { d.vents = Vents{{KeptVent{}}, true, {}}; });

    const std::string texts[] = {write_job(job), write_job(set)};
    const std::tuple<int, const char*, const char*> parts[] = {
        {0, "", ""},
        {0, "/shop", "shop"},
        {0, "/shop/boards/*", "board"},
        {0, "/shop/stiffeners/*", "stiffener"},
        {0, "/shop/closures/*", "closure"},
        {0, "/shop/tubes/*", "tube"},
        {0, "/shop/supplies/*", "supply_pack"},
        {0, "/as_built/*", "as_built"},
        {0, "/as_built/*/blocks/*", "built_block"},
        {0, "/foam", "foam"},
        {0, "/foam/kits/*", "kit"},
        {0, "/foam/cup", "cup"},
        {0, "/mold", "mold"},
        {1, "/mold/stiffeners", "stiffener_choice"},
        {0, "/minimums", "minimums"},
        {0, "/objects/*", "object"},
        {0, "/drawers/*", "drawer"},
        {0, "/drawers/1/obstructions/*", "obstruction"},
        {0, "/drawers/1/pockets/*", "pocket"},
        {0, "/drawers/1/pockets/*/notches/*", "notch"},
        {1, "/drawers/1/vents", "vents"},
        {1, "/drawers/1/vents/keep/*", "kept_vent"},
        {0, "/left_as_is/*", "left_as_is"},
    };
    for (const auto& [which, whose, stated] : parts) {
        const auto& written = whose; // named anew: clang++ before 16 lets no lambda have a structured binding
        const auto tree = parse_json(texts[which]);
        const auto part = testing::value_at(tree->root(), written);
        ASSERT_TRUE(part) << written;
        const std::string schema = *stated == 0 ? "" : "/$defs/" + std::string(stated);
        testing::value_at(tree_->root(), schema + "/properties")
            ->each_member([&](std::string_view key, JsonValue value) {
                const auto fallback = value.find("default");
                if (!fallback) return;
                SCOPED_TRACE(std::string(written) + "/" + std::string(key));
                if (fallback->raw() == "[]" || key == "cup") return; // filled above, to see into them
                if (const auto said = part->find(key))
                    EXPECT_EQ(plain(said->raw()), plain(fallback->raw()));
                else
                    expect_usual(key, fallback->raw());
            });
    }
}

/// An independent validator's word: what is written is valid, what is out of range is not.
TEST_F(Schema, a_validator_agrees_with_the_reader) {
    if (std::system("python3 -c 'import jsonschema' 2>/dev/null") != 0) GTEST_SKIP() << "no validator here";
    namespace fs = std::filesystem;
    std::string pattern = (fs::temp_directory_path() / "drawercast-schema-XXXXXX").string();
    ASSERT_NE(::mkdtemp(pattern.data()), nullptr);
    const fs::path folder = pattern;
    const std::string full = write_job(testing::full_job());
    ASSERT_TRUE(write_file((folder / "valid-full.json").string(), full));
    for (unsigned seed = 0; seed < 20; ++seed)
        ASSERT_TRUE(write_file((folder / ("valid-" + std::to_string(seed) + ".json")).string(),
                               write_job(testing::RandomJob(seed).make())));
    int count = 0;
    for (const auto& range : ranges())
        for (const double value : {range.least - 1, range.most + 1})
            ASSERT_TRUE(write_file(
                (folder / ("refused-" + std::to_string(count++) + ".json")).string(),
                testing::with_value(full, testing::place_of_range(range.path), number_text(value))));
    const std::string command =
        "python3 " DRAWERCAST_SOURCE_DIR "/tests/core/job/validate.py " + schema_path + " " + folder.string();
    EXPECT_EQ(std::system(command.c_str()), 0);
    fs::remove_all(folder);
}

} // namespace
} // namespace drawercast::job
