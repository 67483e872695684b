// A value that few of its owners have, and a list that is empty in most. Each takes the room of a
// pointer until it is set, so that a device of a hundred thousand lines fits into memory.
#pragma once

#include <cstddef>
#include <initializer_list>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace matchmark::model {

// What was never set reads as T{}: `if (x)` tells the two apart. A copy has a value of its own.
template <class T> class Seldom {
public:
    Seldom() = default;
    Seldom(T value) : value_(std::make_unique<T>(std::move(value))) {}
    Seldom(std::optional<T> value)
        : value_(value ? std::make_unique<T>(*std::move(value)) : nullptr) {}
    Seldom(const Seldom& other)
        : value_(other.value_ == nullptr ? nullptr : std::make_unique<T>(*other.value_)) {}
    Seldom(Seldom&&) noexcept = default;
    Seldom& operator=(const Seldom& other) {
        if (this != &other)
            value_ = other.value_ == nullptr ? nullptr : std::make_unique<T>(*other.value_);
        return *this;
    }
    Seldom& operator=(Seldom&&) noexcept = default;
    ~Seldom() = default;

    explicit operator bool() const { return value_ != nullptr; }
    const T& operator*() const { return value_ == nullptr ? none() : *value_; }
    const T* operator->() const { return &**this; }
    operator std::optional<T>() const { return value_ ? std::optional<T>(*value_) : std::nullopt; }

    // The value to write to, made when there is none.
    T& edit() {
        if (value_ == nullptr)
            value_ = std::make_unique<T>();
        return *value_;
    }

private:
    static const T& none() {
        static const T value{};
        return value;
    }

    std::unique_ptr<T> value_;
};

// Read like a vector; `edit` gives the one to write to.
template <class Entry> class SeldomList {
public:
    using value_type = Entry;
    using const_iterator = typename std::vector<Entry>::const_iterator;

    SeldomList() = default;
    SeldomList(std::vector<Entry> entries) {
        if (!entries.empty())
            entries_ = std::move(entries);
    }
    SeldomList(std::initializer_list<Entry> entries) : SeldomList(std::vector<Entry>(entries)) {}

    [[nodiscard]] const std::vector<Entry>& all() const { return *entries_; }
    operator const std::vector<Entry>&() const { return all(); }
    [[nodiscard]] std::size_t size() const { return all().size(); }
    [[nodiscard]] bool empty() const { return all().empty(); }
    [[nodiscard]] const_iterator begin() const { return all().begin(); }
    [[nodiscard]] const_iterator end() const { return all().end(); }
    [[nodiscard]] const Entry& front() const { return all().front(); }
    [[nodiscard]] const Entry& back() const { return all().back(); }
    const Entry& operator[](std::size_t at) const { return all()[at]; }

    std::vector<Entry>& edit() { return entries_.edit(); }
    void push_back(Entry entry) { edit().push_back(std::move(entry)); }
    void append(const std::vector<Entry>& more) {
        if (!more.empty())
            edit().insert(edit().end(), more.begin(), more.end());
    }
    void clear() { entries_ = {}; }

    friend bool operator==(const SeldomList& left, const SeldomList& right) {
        return left.all() == right.all();
    }

private:
    Seldom<std::vector<Entry>> entries_;
};

} // namespace matchmark::model
