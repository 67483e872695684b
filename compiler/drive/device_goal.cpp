// Reads a device for `plan` and `draft`, and looks up what is asked for.
#include "drive/device_goal.hpp"

#include "drive/inputs.hpp"
#include "drive/report.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <ostream>

namespace matchmark::drive {

namespace {

// Nothing when there is no item of the name; that is told.
std::optional<model::ItemId> find_item(const std::string& command, const model::Model& model,
                                       const std::string& name, Terminal& terminal) {
    std::vector<std::string> names;
    for (std::uint32_t i = 0; i < model.items.size(); ++i) {
        if (model.items[i].name == name) {
            return model::ItemId{i};
        }
        names.push_back(model.items[i].name);
    }
    fail(terminal, command,
         fmt::format("`{}` has no `{}`{}", model.device.name, name, did_you_mean(name, names)));
    return std::nullopt;
}

// The one named, or the first that has all the items.
std::optional<unsigned> find_variant(const std::string& command, const model::Model& model,
                                     const plan::WayInGoal& goal, const std::string& name,
                                     Terminal& terminal) {
    const auto& variants = model.device.variants;
    for (unsigned v = 0; v < model::variant_count(model); ++v) {
        const bench::Bench on{&model, v};
        const bool has_all = std::all_of(goal.items.begin(), goal.items.end(),
                                         [&](model::ItemId item) { return on.exists(item); });
        if (name.empty() ? has_all : v < variants.size() && variants[v] == name) {
            if (has_all) {
                return v;
            }
            fail(terminal, command, fmt::format("variant {} has not all of these items", name));
            return std::nullopt;
        }
    }
    fail(terminal, command,
         name.empty() ? std::string("no variant has all of these items")
                      : fmt::format("`{}` has no variant `{}`{}", model.device.name, name,
                                    did_you_mean(name, variants)));
    return std::nullopt;
}

} // namespace

std::variant<DeviceGoal, int> device_goal(const std::string& command, const std::string& path,
                                          const std::vector<std::string>& names, bool expose,
                                          const std::string& variant, Terminal& terminal) {
    const auto files = inputs(command, {path}, terminal);
    if (!files) {
        return exit_failed;
    }
    if (files->size() != 1 || terminal.disk.is_folder(path)) {
        return fail(terminal, command,
                    fmt::format("`{}` is a folder; name one device's file", path));
    }
    DeviceGoal found;
    found.done = compile(terminal.disk, files->front().path, files->front().given());
    if (any_error(found.done.findings)) {
        return fail_with_findings(found.done, terminal);
    }
    const model::Model& model = found.done.model;
    if (!model.device.span.known()) {
        return fail(terminal, command, fmt::format("`{}` declares no device", path));
    }
    found.goal.expose = expose;
    for (const std::string& name : names) {
        const auto item = find_item(command, model, name, terminal);
        if (!item) {
            return exit_failed;
        }
        found.goal.items.push_back(*item);
    }
    const auto on = find_variant(command, model, found.goal, variant, terminal);
    if (!on) {
        return exit_failed;
    }
    found.variant = *on;
    return found;
}

std::variant<Compilation, int> sound_device(const std::string& command, const std::string& path,
                                            Terminal& terminal) {
    Compilation device = compile(terminal.disk, path);
    if (any_error(device.findings) || device.unreadable) {
        const int exit_code = fail_with_findings(device, terminal);
        fail(terminal, command, "the device has errors; mend them first");
        return exit_code;
    }
    if (!device.model.device.span.known()) {
        return fail(terminal, command, fmt::format("`{}` declares no device", path));
    }
    return device;
}

} // namespace matchmark::drive
