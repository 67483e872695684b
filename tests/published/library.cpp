// Looks up what the rows compare.
#include "published/library.hpp"

#include "diagnostics/render.hpp"
#include "drive/compilation.hpp"
#include "source/disk.hpp"

#include <algorithm>
#include <cstdlib>
#include <fmt/core.h>

namespace matchmark::published {

namespace {

template <class Entry>
const Entry* named(const model::SharedList<Entry>& entries, std::string_view name) {
    for (const Entry& entry : entries) {
        if (entry.name == name)
            return &entry;
    }
    return nullptr;
}

} // namespace

model::Model model_of(const std::string& text) {
    MapDisk disk;
    drive::Compilation done = drive::compile(disk, "published.mmk", &text);
    if (any_error(done.findings)) {
        fmt::print(stderr, "{}", render_text(done.sources, done.findings));
        std::exit(EXIT_FAILURE);
    }
    return std::move(done.model);
}

const model::Thread* find_thread(const model::Model& model, std::string_view name) {
    return named(model.threads, name);
}

const model::Grade* find_grade(const model::Model& model, std::string_view name) {
    return named(model.grades, name);
}

const model::Friction* find_friction(const model::Model& model, std::string_view name) {
    return named(model.frictions, name);
}

const model::Hazard* find_hazard(const model::Model& model, std::string_view name) {
    return named(model.hazards, name);
}

const model::Kind* find_kind(const model::Model& model, std::string_view name) {
    return named(model.kinds, name);
}

const model::Item& item_named(const model::Model& model, std::string_view name) {
    return *named(model.items, name);
}

std::optional<double> drive_size(const model::Model& model, std::string_view drive,
                                 std::string_view thread, std::string_view standard) {
    const model::Drive* found = named(model.drives, drive);
    if (found == nullptr)
        return std::nullopt;
    for (const model::DriveSize& size : found->sizes) {
        const bool noted =
            standard.empty() ? size.note.empty() : size.note.find(standard) != std::string::npos;
        if (!noted)
            continue;
        if (std::find(size.threads.begin(), size.threads.end(), thread) != size.threads.end())
            return std::strtod(size.size.c_str(), nullptr);
    }
    return std::nullopt;
}

std::optional<double> drive_width(const model::Model& model, std::string_view drive,
                                  std::string_view size) {
    const model::Drive* found = named(model.drives, drive);
    if (found == nullptr)
        return std::nullopt;
    for (const model::DriveSize& one : found->sizes) {
        if (one.size == size && one.across)
            return one.across->base * 1e3;
    }
    return std::nullopt;
}

std::optional<double> drive_width_for(const model::Model& model, std::string_view drive,
                                      std::string_view thread) {
    const model::Drive* found = named(model.drives, drive);
    if (found == nullptr)
        return std::nullopt;
    for (const model::DriveSize& one : found->sizes) {
        const auto& threads = one.threads;
        if (std::find(threads.begin(), threads.end(), thread) != threads.end() && one.across)
            return one.across->base * 1e3;
    }
    return std::nullopt;
}

std::optional<double> time_of(const model::Model& model, std::string_view kind,
                              std::string_view verb) {
    const model::Kind* found = find_kind(model, kind);
    const model::Verb* done = found == nullptr ? nullptr : model::find_verb(*found, verb);
    if (done == nullptr || !done->takes)
        return std::nullopt;
    return done->takes->base;
}

} // namespace matchmark::published
