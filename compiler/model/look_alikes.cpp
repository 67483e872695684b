// Fasteners that a bench would mix up, and what it does when they change places.
#include "model/look_alikes.hpp"

#include "model/bolting.hpp"

#include <algorithm>
#include <cmath>

namespace matchmark::model {

namespace {

// Everything that is said of it but thread and length.
std::string rest_of_spec(const Item& item) {
    std::string rest;
    for (const SpecPhrase& phrase : item.spec) {
        const bool sized = std::find(phrase->words.begin(), phrase->words.end(),
                                     item.bolt->thread) != phrase->words.end();
        if (!sized)
            rest += phrase->text + ",";
    }
    return rest;
}

bool same_but_size(const Item& one, const Item& other) {
    return one.kind == other.kind && !one.bolt->thread.empty() && !other.bolt->thread.empty() &&
           rest_of_spec(one) == rest_of_spec(other);
}

// Each pair of screws of a guide is asked about: what is quick to see is looked at first.
bool differ_little(const Item& one, const Item& other) {
    if (one.bolt->length_mm <= 0 || other.bolt->length_mm <= 0)
        return false;
    const double difference = std::abs(one.bolt->length_mm - other.bolt->length_mm);
    return difference < std::max(1.0, 0.1 * std::max(one.bolt->length_mm, other.bolt->length_mm)) &&
           (one.bolt->thread != other.bolt->thread || one.bolt->length_mm != other.bolt->length_mm);
}

} // namespace

bool are_neighbours(const Model& model, const Thread& one, const Thread& other) {
    if (!one.form || !other.form || one.form->name != other.form->name || !one.diameter ||
        !other.diameter || one.name == other.name)
        return false;
    const double smaller = std::min(one.diameter->base, other.diameter->base);
    const double larger = std::max(one.diameter->base, other.diameter->base);
    return std::none_of(model.threads.begin(), model.threads.end(), [&](const Thread& thread) {
        return thread.form && thread.form->name == one.form->name && thread.diameter &&
               thread.diameter->base > smaller && thread.diameter->base < larger;
    });
}

double passes_depth_by(const Item& screw, const Item& hole) {
    if (!hole.rare->depth || screw.bolt->length_mm <= 0)
        return 0;
    constexpr double mm = 1000;
    return std::max(0.0, screw.bolt->length_mm - hole.rare->depth->base * mm);
}

bool goes_into(const Item& screw, const Item& hole) {
    return screw.bolt->thread == hole.bolt->thread && same_but_size(screw, hole);
}

Likeness likeness(const Model& model, const Item& one, const Item& other) {
    if (!differ_little(one, other) || !same_but_size(one, other))
        return Likeness::none;
    if (one.bolt->thread == other.bolt->thread)
        return Likeness::length;
    const Thread* thread = thread_of(model, one);
    const Thread* next = thread_of(model, other);
    return thread != nullptr && next != nullptr && are_neighbours(model, *thread, *next)
               ? Likeness::thread
               : Likeness::none;
}

} // namespace matchmark::model
