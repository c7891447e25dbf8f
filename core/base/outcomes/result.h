// Result: a value or the problem that prevented it. The toolchain has no std::expected, and the engine is
// built without exceptions.
#pragma once

#include "core/base/outcomes/problem.h"

#include <optional>
#include <type_traits>
#include <utility>

namespace saddlerule {

/// Either a `Value` or a `Problem`. Whoever gets one looks before taking the value. Problems are rare and large, so they
/// are kept apart: a result is hardly larger than its value, and is moved and destroyed in a few instructions.
template <typename Value>
class [[nodiscard]] Result {
    static_assert(!std::is_same_v<Value, Problem>);

public:
    Result(Value value) : value_(std::move(value)) {}
    Result(Problem problem) : problem_(apart(std::move(problem))) {}

    bool ok() const { return value_.has_value(); }
    explicit operator bool() const { return ok(); }

    /// Only when ok().
    const Value& value() const& { return *value_; }
    Value& value() & { return *value_; }
    Value&& value() && { return *std::move(value_); }
    const Value& operator*() const& { return value(); }
    const Value* operator->() const { return &*value_; }

    /// Only when not ok().
    const Problem& problem() const& { return *problem_; }
    Problem&& problem() && { return std::move(*problem_); }

private:
    std::optional<Value> value_;
    ProblemApart problem_;
};

} // namespace saddlerule
