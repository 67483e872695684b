// `kinds`: the parts library, so that nobody has to open its files to know what can be written.
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/kind_words.hpp"
#include "drive/report.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <ostream>

namespace matchmark::drive {

namespace {

// What is to be shown; pointers into the model.
struct Selection {
    std::vector<const model::Kind*> kinds;
    std::vector<const model::Drive*> drives;
    std::vector<const model::Thread*> threads;
    std::vector<const model::Hazard*> hazards;

    [[nodiscard]] std::size_t size() const {
        return kinds.size() + drives.size() + threads.size() + hazards.size();
    }
};

template <class T, class Wanted>
void select(std::vector<const T*>& into, const std::vector<T>& from, Wanted wanted) {
    for (const T& entry : from) {
        if (wanted(entry)) {
            into.push_back(&entry);
        }
    }
}

template <class Wanted> Selection selection(const model::Model& model, Wanted wanted) {
    Selection selected;
    select(selected.kinds, model.kinds, wanted);
    select(selected.drives, model.drives, wanted);
    select(selected.threads, model.threads, wanted);
    select(selected.hazards, model.hazards, wanted);
    return selected;
}

bool is_plural_of(const std::string& word, std::string_view singular) {
    return word == singular || word == std::string(singular) + "s" ||
           (singular == "energy" && word == "energies");
}

// A whole shelf of the library: "fasteners", "drives".
Selection shelf(const model::Model& model, const std::string& word) {
    Selection selected;
    const auto all = [](const auto&) { return true; };
    if (is_plural_of(word, "drive")) {
        select(selected.drives, model.drives, all);
    } else if (is_plural_of(word, "thread")) {
        select(selected.threads, model.threads, all);
    } else if (is_plural_of(word, "hazard")) {
        select(selected.hazards, model.hazards, all);
    }
    select(selected.kinds, model.kinds,
           [&](const model::Kind& kind) { return is_plural_of(word, role_word(kind.role)); });
    return selected;
}

struct MentionsWord {
    const std::string& word;

    bool operator()(const model::Thread& thread) const {
        return thread.name.find(word) != std::string::npos;
    }
    template <class T> bool operator()(const T& entry) const {
        return entry.name.find(word) != std::string::npos ||
               entry.title.find(word) != std::string::npos;
    }
};

void append_json(nlohmann::ordered_json& list, const std::string& object) {
    list.push_back(nlohmann::ordered_json::parse(object));
}

void write_json(const model::Model& model, const Selection& selected, std::ostream& out) {
    nlohmann::ordered_json object;
    for (const char* key : {"kinds", "drives", "threads", "hazards"}) {
        object[key] = nlohmann::ordered_json::array();
    }
    for (const model::Kind* kind : selected.kinds) {
        append_json(object["kinds"], kind_as_json(model, *kind));
    }
    for (const model::Drive* drive : selected.drives) {
        append_json(object["drives"], drive_as_json(*drive));
    }
    for (const model::Thread* thread : selected.threads) {
        append_json(object["threads"], thread_as_json(*thread));
    }
    for (const model::Hazard* hazard : selected.hazards) {
        append_json(object["hazards"], hazard_as_json(*hazard));
    }
    out << object.dump(2) << '\n';
}

// A line for each, by role.
void write_list(const Selection& selected, std::ostream& out) {
    for (const model::Role role : {model::Role::part, model::Role::fastener, model::Role::connector,
                                   model::Role::bond, model::Role::fluid, model::Role::energy}) {
        bool headed = false;
        for (const model::Kind* kind : selected.kinds) {
            if (kind->role == role) {
                out << (headed ? "" : std::string(role_word(role)) + "\n");
                headed = true;
                out << fmt::format("  {:<24} {}\n", kind->name, kind->title);
            }
        }
    }
    out << (selected.drives.empty() ? "" : "drive\n");
    for (const model::Drive* drive : selected.drives) {
        out << fmt::format("  {:<24} {}\n", drive->name, drive->title);
    }
    out << (selected.threads.empty() ? "" : "thread\n");
    for (const model::Thread* thread : selected.threads) {
        out << fmt::format("  {:<24} {}\n", thread->name,
                           thread->pitch ? "pitch " + model::to_text(*thread->pitch) : "");
    }
    out << (selected.hazards.empty() ? "" : "hazard\n");
    for (const model::Hazard* hazard : selected.hazards) {
        out << fmt::format("  {:<24} {}\n", hazard->name, hazard->title);
    }
}

void write_pages(const model::Model& model, const Selection& selected, std::ostream& out) {
    const char* between = "";
    const auto write = [&](const std::string& page) {
        out << between << page;
        between = "\n";
    };
    for (const model::Kind* kind : selected.kinds) {
        write(describe_kind(model, *kind));
    }
    for (const model::Drive* drive : selected.drives) {
        write(describe_drive(*drive));
    }
    for (const model::Thread* thread : selected.threads) {
        write(describe_thread(*thread));
    }
    for (const model::Hazard* hazard : selected.hazards) {
        write(describe_hazard(model, *hazard));
    }
}

std::vector<std::string> all_names(const model::Model& model) {
    std::vector<std::string> names = {"parts",    "fasteners", "connectors", "bonds",  "fluids",
                                      "energies", "drives",    "threads",    "hazards"};
    const Selection all = selection(model, [](const auto&) { return true; });
    for (const model::Kind* kind : all.kinds) {
        names.push_back(kind->name);
    }
    for (const model::Drive* drive : all.drives) {
        names.push_back(drive->name);
    }
    for (const model::Thread* thread : all.threads) {
        names.push_back(thread->name);
    }
    for (const model::Hazard* hazard : all.hazards) {
        names.push_back(hazard->name);
    }
    return names;
}

int show(const KindsOptions& options, const model::Model& model, Terminal& terminal) {
    const std::string& word = options.word;
    Selection selected;
    bool whole_pages = false;
    if (word.empty()) {
        selected = selection(model, [](const auto&) { return true; });
    } else {
        selected = selection(model, [&](const auto& entry) { return entry.name == word; });
        whole_pages = selected.size() != 0;
        if (selected.size() == 0) {
            selected = shelf(model, word);
        }
        if (selected.size() == 0) {
            selected = selection(model, MentionsWord{word});
        }
    }
    if (selected.size() == 0) {
        return fail(terminal, "kinds",
                    fmt::format("there is no kind, drive, thread or hazard `{}`{}", word,
                                did_you_mean(word, all_names(model))));
    }
    if (options.json) {
        write_json(model, selected, terminal.out);
    } else if (whole_pages) {
        write_pages(model, selected, terminal.out);
    } else {
        write_list(selected, terminal.out);
        terminal.out << "\nmatchmark kinds NAME shows one of these in full\n";
    }
    return exit_clean;
}

} // namespace

int kinds(const KindsOptions& options, Terminal& terminal) {
    Input input{"library", "", ""}; // an empty file sees the parts library and nothing else
    if (!options.in.empty()) {
        auto files = inputs("kinds", {options.in}, terminal);
        if (!files) {
            return exit_failed;
        }
        if (files->size() != 1) {
            return fail(terminal, "kinds", "--in asks for one file");
        }
        input = std::move(files->front());
    }
    const Compilation done = compile(terminal.disk, input.path, input.given());
    if (done.unreadable || (any_error(done.findings) && done.model.kinds.empty())) {
        Report report;
        report.add(reported(done.sources, done.findings, false));
        report.write_text(terminal.err);
        return exit_failed;
    }
    return show(options, done.model, terminal);
}

} // namespace matchmark::drive
