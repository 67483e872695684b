// A verb of the parts library stands in a sentence before its item, "Turn off the gas": so its name
// is a verb, or a verb and what belongs to it, and no verb with its object ("Close tap the gas").
#include "drive/compilation.hpp"
#include "language/spoken.hpp"

#include <algorithm>
#include <array>
#include <doctest/doctest.h>
#include <set>
#include <string>
#include <string_view>

using namespace matchmark;

namespace {

// The words after the first that an item may follow: the particle of the verb, or what it stops.
bool item_may_follow(std::string_view verb) {
    constexpr auto particles = std::to_array<std::string_view>(
        {"off", "on", "out", "in", "up", "down", "back", "good", "wipe"});
    const std::size_t cut = verb.rfind('-');
    if (cut == std::string_view::npos || verb.starts_with("stop-"))
        return true;
    return std::find(particles.begin(), particles.end(), verb.substr(cut + 1)) != particles.end();
}

std::set<std::string> library_verbs() {
    MapDisk disk;
    const std::string empty;
    const model::Model library = drive::compile(disk, "library", &empty).model;
    std::set<std::string> verbs;
    for (const model::Kind& kind : library.kinds) {
        for (const model::Verb& verb : kind.verbs)
            verbs.insert(verb.name);
    }
    return verbs;
}

} // namespace

TEST_CASE("no verb of the library has its object in its name") {
    CHECK_FALSE(item_may_follow("close-tap"));
    CHECK_FALSE(item_may_follow("set-stands"));
    const auto verbs = library_verbs();
    CHECK(verbs.size() > 150);
    for (const std::string& verb : verbs)
        CHECK_MESSAGE(item_may_follow(verb), language::verb_key(verb));
}

TEST_CASE("an action that begins with any verb of the library can be read") {
    for (const std::string& verb : library_verbs()) {
        MapDisk disk;
        disk.files["job.mmk"] =
            "guide job \"Job\"\ntake-apart\nstep one \"One\"\n  " + verb + " thing\n";
        for (const Diagnostic& finding : drive::compile(disk, "job.mmk").findings)
            CHECK_MESSAGE(finding.rule != "syntax", verb << ": " << finding.message);
    }
}
