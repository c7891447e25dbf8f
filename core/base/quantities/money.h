// Money: an amount of one currency. Amounts of different currencies are never compared, added or converted.
#pragma once

#include <array>
#include <cmath>
#include <compare>
#include <cstdint>
#include <optional>
#include <string_view>

namespace saddlerule {

/// An ISO 4217 currency code: three capital letters. Holding one does not mean that the code is in use.
class Currency {
public:
    static constexpr std::optional<Currency> from_code(std::string_view code) {
        if (code.size() != 3)
            return std::nullopt;
        Currency currency;
        for (std::size_t i = 0; i < 3; ++i) {
            if (code[i] < 'A' || code[i] > 'Z')
                return std::nullopt;
            currency.letters_[i] = code[i];
        }
        return currency;
    }

    constexpr std::string_view code() const { return {letters_.data(), letters_.size()}; }

    friend constexpr bool operator==(const Currency&, const Currency&) = default;

private:
    constexpr Currency() = default;

    std::array<char, 3> letters_{};
};

/// An amount of some currency that the context names, in thousandths of its main unit: exact for every ISO 4217
/// currency in daily use (they have none, two or three decimals).
class Amount {
public:
    /// Rounds to the nearest thousandth. `value` must be finite and below 1e12 in size.
    static Amount main_units(double value) {
        return Amount(static_cast<std::int64_t>(std::llround(value * 1000.0)));
    }

    double in_main_units() const { return static_cast<double>(thousandths_) / 1000.0; }

    friend auto operator<=>(const Amount&, const Amount&) = default;

private:
    explicit Amount(std::int64_t thousandths) : thousandths_(thousandths) {}

    std::int64_t thousandths_;
};

/// An amount and its currency. Equality is the only comparison: which of two currencies is dearer changes daily.
class Money {
public:
    Money(Amount amount, Currency currency) : amount_(amount), currency_(currency) {}

    /// See Amount::main_units.
    static Money amount(double value, Currency currency) { return {Amount::main_units(value), currency}; }

    Amount without_currency() const { return amount_; }
    double in_main_units() const { return amount_.in_main_units(); }
    Currency currency() const { return currency_; }

    friend bool operator==(const Money&, const Money&) = default;

private:
    Amount amount_;
    Currency currency_;
};

} // namespace saddlerule
