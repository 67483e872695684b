// A list whose copies are one until somebody writes to one of them: thousands of guides stand upon
// the same parts library, nine upon the same device, and what a guide says is most of its
// procedure.
#pragma once

#include <cstddef>
#include <memory>
#include <utility>
#include <vector>

namespace matchmark::model {

// Copies may be read by several threads at a time. To write is to ask for `edit`: a reference kept
// from before is to the old list from then on.
template <class Entry> class SharedList {
public:
    using value_type = Entry;
    using const_iterator = typename std::vector<Entry>::const_iterator;

    SharedList() = default;
    SharedList(std::vector<Entry> entries)
        : entries_(std::make_shared<std::vector<Entry>>(std::move(entries))) {}

    [[nodiscard]] const std::vector<Entry>& all() const {
        static const std::vector<Entry> none;
        return entries_ == nullptr ? none : *entries_;
    }
    operator const std::vector<Entry>&() const { return all(); }
    [[nodiscard]] std::size_t size() const { return all().size(); }
    [[nodiscard]] bool empty() const { return all().empty(); }
    [[nodiscard]] const_iterator begin() const { return all().begin(); }
    [[nodiscard]] const_iterator end() const { return all().end(); }
    [[nodiscard]] auto rbegin() const { return all().rbegin(); }
    [[nodiscard]] auto rend() const { return all().rend(); }
    [[nodiscard]] const Entry& front() const { return all().front(); }
    [[nodiscard]] const Entry& back() const { return all().back(); }
    const Entry& operator[](std::size_t at) const { return (*entries_)[at]; }

    // The list to write to, and nobody else's.
    std::vector<Entry>& edit() {
        if (entries_ == nullptr)
            entries_ = std::make_shared<std::vector<Entry>>();
        else if (entries_.use_count() > 1)
            entries_ = std::make_shared<std::vector<Entry>>(*entries_);
        return *entries_;
    }
    Entry& edit(std::size_t at) { return edit()[at]; }

private:
    std::shared_ptr<std::vector<Entry>> entries_;
};

} // namespace matchmark::model
