// Compares the words of listed tools with those of the drives that the work meets.
#include "check/driver_sizes.hpp"

#include "model/describe.hpp"
#include "model/fitting.hpp"
#include "model/spelling.hpp"

#include <algorithm>

namespace matchmark::check {

namespace {

const model::Drive* drive_of(const Walk& walk, const model::Item& item) {
    for (const model::Drive& drive : walk.model.drives) {
        if (drive.name == item.bolt->drive)
            return &drive;
    }
    return nullptr;
}

} // namespace

std::string driver_for(const Walk& walk, const model::Item& item) {
    const model::Drive* drive = drive_of(walk, item);
    return model::spaced(drive != nullptr && !drive->driven_by.empty()
                             ? drive->driven_by.front()
                             : item.bolt->drive + "-driver");
}

std::optional<model::ResourceId> in_another_size(const Walk& walk, const model::Item& item,
                                                 const model::Verb& verb,
                                                 const std::set<std::uint32_t>& used) {
    const auto& list = walk.procedure.resources;
    const model::Drive* drive = drive_of(walk, item);
    if (drive == nullptr || !verb.by_driver || item.bolt->drive_size.empty() ||
        !model::fitting_tools(walk.model, list, item, verb).empty())
        return std::nullopt;
    for (std::uint32_t i = 0; i < walk.guide().resources.size(); ++i) {
        const bool turns = std::any_of(
            drive->driven_by.begin(), drive->driven_by.end(), [&](const std::string& tool) {
                return model::has_words(list[i].text, model::spaced(tool));
            });
        if (list[i].sort == model::ResourceSort::tool && turns && used.count(i) == 0)
            return model::ResourceId{i};
    }
    return std::nullopt;
}

} // namespace matchmark::check
