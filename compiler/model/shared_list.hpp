// A value and a list whose copies are one until somebody writes to one of them: thousands of guides
// stand upon the same parts library, nine upon the same device, what a guide says is most of its
// procedure, and thousands of screws are alike.
#pragma once

#include <cstddef>
#include <memory>
#include <utility>
#include <vector>

namespace matchmark::model {

// What was never set reads as T{}. Copies may be read by several threads at a time. To write is to
// ask for `edit`: a reference kept from before is to the old value from then on.
template <class T> class Shared {
public:
    Shared() = default;
    Shared(T value) : value_(std::make_shared<T>(std::move(value))) {}

    const T& operator*() const {
        static const T none{};
        return value_ == nullptr ? none : *value_;
    }
    const T* operator->() const { return &**this; }

    // Of what was set: asked a hundred times a line, so without looking.
    [[nodiscard]] const T& set_value() const { return *value_; }
    // The value to write to, and nobody else's.
    T& edit() {
        if (value_ == nullptr)
            value_ = std::make_shared<T>();
        else if (value_.use_count() > 1)
            value_ = std::make_shared<T>(*value_);
        return *value_;
    }

private:
    std::shared_ptr<T> value_;
};

template <class Entry> class SharedList {
public:
    using value_type = Entry;
    using const_iterator = typename std::vector<Entry>::const_iterator;

    SharedList() = default;
    SharedList(std::vector<Entry> entries) : entries_(std::move(entries)) {}

    [[nodiscard]] const std::vector<Entry>& all() const { return *entries_; }
    operator const std::vector<Entry>&() const { return all(); }
    [[nodiscard]] std::size_t size() const { return all().size(); }
    [[nodiscard]] bool empty() const { return all().empty(); }
    [[nodiscard]] const_iterator begin() const { return all().begin(); }
    [[nodiscard]] const_iterator end() const { return all().end(); }
    [[nodiscard]] auto rbegin() const { return all().rbegin(); }
    [[nodiscard]] auto rend() const { return all().rend(); }
    [[nodiscard]] const Entry& front() const { return all().front(); }
    [[nodiscard]] const Entry& back() const { return all().back(); }
    const Entry& operator[](std::size_t at) const { return entries_.set_value()[at]; }

    std::vector<Entry>& edit() { return entries_.edit(); }
    Entry& edit(std::size_t at) { return edit()[at]; }

private:
    Shared<std::vector<Entry>> entries_;
};

} // namespace matchmark::model
