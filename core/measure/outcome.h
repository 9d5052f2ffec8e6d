#pragma once

#include <utility>
#include <variant>

namespace riband {

/// Either a value or the reason why there is none. For outcomes that are to be expected (text that is no
/// width); broken rules of a type throw instead.
template <class Value, class Reason>
class Outcome {
public:
    Outcome(Value value) : either_{std::in_place_index<0>, std::move(value)} {} // NOLINT: returned as it is
    Outcome(Reason reason)
        : either_{std::in_place_index<1>, std::move(reason)} {} // NOLINT: returned as it is
    bool ok() const { return either_.index() == 0; }
    explicit operator bool() const { return ok(); }
    /// Throws std::bad_variant_access if there is none.
    const Value& value() const { return std::get<0>(either_); }
    Value& value() { return std::get<0>(either_); }
    const Reason& reason() const { return std::get<1>(either_); }
    const Value& operator*() const { return value(); }
    const Value* operator->() const { return &value(); }

private:
    std::variant<Value, Reason> either_;
};

} // namespace riband
