// `reckon`: the compiler's own computations, for somebody at the bench who has no guide before
// them.
#include "drive/commands.hpp"
#include "drive/inputs.hpp"
#include "drive/library.hpp"
#include "drive/reckoning.hpp"
#include "model/describe.hpp"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <ostream>

namespace matchmark::drive {

namespace {

constexpr const char* reckon_command = "reckon";

// A sort of computation, and the options that it takes.
struct Sort {
    std::string_view name;
    bool preload = false;
    bool torque = false;
    bool to = false;
    bool at = false;
    bool passes = false;
    bool in = false;
};

constexpr auto sorts = std::to_array<Sort>({
    {"torque", true, true, false, false, false, true},
    {"discharge", false, false, true, false, false, false},
    {"energy", false, false, false, false, false, false},
    {"order", false, true, false, true, true, false},
});

std::vector<std::string> sort_names() {
    std::vector<std::string> names;
    for (const Sort& sort : sorts)
        names.emplace_back(sort.name);
    return names;
}

// The first option that was given and is not this sort's; empty when there is none.
std::string out_of_place(const Sort& sort, const ReckonOptions& options) {
    if (!options.preload.empty() && !sort.preload)
        return "--preload";
    if (!options.torque.empty() && !sort.torque)
        return "--torque";
    if (!options.to.empty() && !sort.to)
        return "--to";
    if (!options.at.empty() && !sort.at)
        return "--at";
    if (!options.passes.empty() && !sort.passes)
        return "--passes";
    if (!options.in.empty() && !sort.in)
        return "--in";
    return {};
}

// Columns as wide as what stands in them; behind each number its formula, then whose that is.
void write_reckoned_text(const Reckoning& done, std::ostream& out) {
    std::size_t names = 0;
    std::size_t widest = 0;
    for (const Figure& figure : done.figures) {
        names = std::max(names, fmt::formatted_size("{}", figure.name));
        if (figure.quantity)
            widest = std::max(widest, figure.shown.size());
    }
    out << done.about << '\n';
    if (!done.caution.empty())
        out << done.caution << '\n';
    for (const Figure& figure : done.figures) {
        const std::string by =
            figure.formula.empty() ? figure.source : figure.formula + "; " + figure.source;
        out << fmt::format("  {:<{}}  {:<{}}  {}\n", figure.name, names, figure.shown, widest, by);
    }
}

void write_reckoned_json(const std::string& sort, const Reckoning& done, std::ostream& out) {
    nlohmann::ordered_json object;
    object["reckoned"] = sort;
    object["about"] = done.about;
    object["caution"] = done.caution;
    object["figures"] = nlohmann::ordered_json::array();
    for (const Figure& figure : done.figures) {
        nlohmann::ordered_json entry;
        entry["name"] = figure.name;
        if (figure.quantity) {
            entry["value"] = figure.quantity->value;
            entry["unit"] = figure.quantity->unit;
        }
        entry["shown"] = figure.shown;
        entry["formula"] = figure.formula;
        entry["source"] = figure.source;
        object["figures"].push_back(std::move(entry));
    }
    if (!done.order.empty())
        object["order"] = done.order;
    out << object.dump(2) << '\n';
}

Reckoned reckoned(const ReckonOptions& options, const model::Model& model) {
    if (options.sort == "torque")
        return reckon_torque(options, model);
    if (options.sort == "discharge")
        return reckon_discharge(options);
    if (options.sort == "energy")
        return reckon_energy(options);
    return reckon_order(options);
}

} // namespace

int reckon(const ReckonOptions& options, Terminal& terminal) {
    const auto* const sort = std::find_if(
        sorts.begin(), sorts.end(), [&](const Sort& one) { return one.name == options.sort; });
    if (sort == sorts.end()) {
        return fail(terminal, reckon_command,
                    fmt::format("say what to reckon: {}{}", model::list(sort_names(), "or"),
                                did_you_mean(options.sort, sort_names())));
    }
    if (const std::string option = out_of_place(*sort, options); !option.empty())
        return fail(terminal, reckon_command, fmt::format("{} takes no {}", sort->name, option));
    model::Model model;
    if (sort->in) {
        const auto done = compile_library(reckon_command, options.in, terminal);
        if (!done)
            return exit_failed;
        model = done->model;
    }
    const Reckoned done = reckoned(options, model);
    if (const auto* wrong = std::get_if<std::string>(&done))
        return fail(terminal, reckon_command, fmt::format("{}: {}", sort->name, *wrong));
    const auto& reckoning = std::get<Reckoning>(done);
    if (options.json) {
        write_reckoned_json(options.sort, reckoning, terminal.out);
    } else {
        write_reckoned_text(reckoning, terminal.out);
    }
    return exit_clean;
}

} // namespace matchmark::drive
