// A value that few of its owners have. It takes the room of a pointer until it is set, so that a
// device of a hundred thousand lines fits into memory.
#pragma once

#include <memory>
#include <optional>
#include <utility>

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

} // namespace matchmark::model
