// Two states of a device and its guides: their difference is told, and a state does not differ from
// itself.
#include "fuzz/device_text.hpp"

#include "compare/compare.hpp"
#include "plan/reader/guide.hpp"

#include <algorithm>
#include <utility>

using namespace matchmark;

namespace {

drive::Compilation compiled(std::string_view bytes) {
    MapDisk disk;
    const std::string text = fuzz::DeviceText(bytes).written();
    return drive::compile(disk, "thing.mmk", &text);
}

guide::Document document(const drive::Compilation& done, std::size_t at) {
    return plan::reader_guide(done.sources, done.model, done.procedures[at]);
}

} // namespace

// The first byte says how many bytes of the first state the second one has in common with it.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size < 2)
        return 0;
    const std::string_view bytes = fuzz::text_of(data + 1, size - 1);
    const std::size_t half = bytes.size() / 2;
    const std::size_t shared = std::min<std::size_t>(data[0], half);
    drive::Compilation before = compiled(bytes.substr(0, half));
    drive::Compilation after =
        compiled(std::string(bytes.substr(0, shared)) + std::string(bytes.substr(half + shared)));
    if (before.model.kinds.empty() || after.model.kinds.empty())
        return 0;
    compare::compare_devices(before.model, after.model);
    fuzz::demand(compare::compare_devices(before.model, before.model).changes.empty(),
                 "a device does not differ from itself");
    const std::size_t guides = std::min(before.procedures.size(), after.procedures.size());
    for (std::size_t i = 0; i < guides; ++i) {
        const guide::Document old = document(before, i);
        const guide::Document now = document(after, i);
        const compare::Side left{before.model, before.procedures[i], old};
        compare::compare_guides(left, {after.model, after.procedures[i], now});
        fuzz::demand(compare::compare_guides(left, left).changes.empty(),
                     "a guide does not differ from itself");
    }
    return 0;
}
