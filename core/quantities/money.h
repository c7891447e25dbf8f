// Money: an amount of one currency. Amounts of different currencies are never compared, added or converted.
#pragma once

#include <array>
#include <cmath>
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

/// An amount in thousandths of the currency's main unit, which is exact for every ISO 4217 currency in daily
/// use (they have none, two or three decimals).
class Money {
public:
    /// Rounds to the nearest thousandth. `amount` must be finite and below 1e12.
    static Money amount(double amount, Currency currency) {
        return Money(static_cast<std::int64_t>(std::llround(amount * 1000.0)), currency);
    }

    double in_main_units() const { return static_cast<double>(thousandths_) / 1000.0; }
    Currency currency() const { return currency_; }

    friend bool operator==(const Money&, const Money&) = default;

private:
    Money(std::int64_t thousandths, Currency currency) : thousandths_(thousandths), currency_(currency) {}

    std::int64_t thousandths_;
    Currency currency_;
};

} // namespace saddlerule
