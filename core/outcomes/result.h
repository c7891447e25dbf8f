// Result: a value or the problem that stood in its way. The toolchain has no std::expected, and the engine is
// built without exceptions.
#pragma once

#include "core/outcomes/problem.h"

#include <type_traits>
#include <utility>
#include <variant>

namespace saddlerule {

/// Either a `Value` or a `Problem`. Whoever gets one looks before taking the value.
template <typename Value>
class [[nodiscard]] Result {
    static_assert(!std::is_same_v<Value, Problem>);

public:
    Result(Value value) : content_(std::in_place_index<0>, std::move(value)) {}
    Result(Problem problem) : content_(std::in_place_index<1>, std::move(problem)) {}

    bool ok() const { return content_.index() == 0; }
    explicit operator bool() const { return ok(); }

    /// Only when ok().
    const Value& value() const& { return *std::get_if<0>(&content_); }
    Value& value() & { return *std::get_if<0>(&content_); }
    Value&& value() && { return std::move(*std::get_if<0>(&content_)); }
    const Value& operator*() const& { return value(); }
    const Value* operator->() const { return std::get_if<0>(&content_); }

    /// Only when not ok().
    const Problem& problem() const& { return *std::get_if<1>(&content_); }
    Problem&& problem() && { return std::move(*std::get_if<1>(&content_)); }

private:
    std::variant<Value, Problem> content_;
};

} // namespace saddlerule
