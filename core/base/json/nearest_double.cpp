#include "core/base/json/nearest_double.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <string>
#include <vector>

namespace saddlerule {
namespace {

// Powers of ten and whole numbers up to these are doubles themselves, and one step of arithmetic rounds only once.
constexpr int largest_exact_power = 22;
constexpr std::size_t most_exact_digits = 15;

/// A double and the next are told apart by fewer digits; what comes behind these only breaks ties.
constexpr std::size_t most_digits = 800;

// Where the first digit is so high or so low, the double is infinite or zero whatever the others are.
constexpr int first_of_infinite = 310;
constexpr int first_of_zero = -324;

constexpr int mantissa_bits = std::numeric_limits<double>::digits;
constexpr int smallest_exponent = std::numeric_limits<double>::min_exponent - 1;

/// A whole number of any size: 32 bits each, the lowest first, no zeros at the top.
class BigWhole {
public:
    explicit BigWhole(std::uint32_t value) { times_plus(1, value); }

    bool zero() const { return parts_.empty(); }

    int bits() const {
        int count = 32 * static_cast<int>(parts_.size());
        for (std::uint32_t top = parts_.back(); top >> 31U == 0; top <<= 1U)
            --count;
        return count;
    }

    void times_plus(std::uint32_t factor, std::uint32_t summand) {
        std::uint64_t carry = summand;
        for (std::uint32_t& part : parts_) {
            carry += std::uint64_t{part} * factor;
            part = static_cast<std::uint32_t>(carry);
            carry >>= 32U;
        }
        if (carry > 0)
            parts_.push_back(static_cast<std::uint32_t>(carry));
    }

    void times_power_of_ten(int power) {
        for (; power > 0; --power)
            times_plus(10, 0);
    }

    void times_power_of_two(int power) {
        for (; power > 0; power -= std::min(power, 31))
            times_plus(1U << static_cast<unsigned>(std::min(power, 31)), 0);
    }

    bool less_than(const BigWhole& other) const {
        if (parts_.size() != other.parts_.size())
            return parts_.size() < other.parts_.size();
        return std::lexicographical_compare(parts_.rbegin(), parts_.rend(), other.parts_.rbegin(),
                                            other.parts_.rend());
    }

    /// Of one that is not larger.
    void take_away(const BigWhole& other) {
        std::int64_t carry = 0;
        for (std::size_t i = 0; i < parts_.size(); ++i) {
            carry += parts_[i];
            carry -= i < other.parts_.size() ? other.parts_[i] : 0U;
            parts_[i] = static_cast<std::uint32_t>(carry);
            carry = carry < 0 ? -1 : 0;
        }
        while (!zero() && parts_.back() == 0)
            parts_.pop_back();
    }

private:
    std::vector<std::uint32_t> parts_;
};

/// Digits without zeros before them, and the power of ten that the last one stands for.
struct Decimal {
    std::string digits;
    bool more = false; ///< further digits, not all of them zero
    int power = 0;
};

Decimal decimal_of(std::string_view figure) {
    Decimal result;
    std::size_t at = 0;
    bool after_point = false;
    for (; at < figure.size() && figure[at] != 'e' && figure[at] != 'E'; ++at) {
        const char c = figure[at];
        if (c == '.') {
            after_point = true;
            continue;
        }
        const bool counts = result.digits.size() < most_digits;
        if (!counts)
            result.more = result.more || c != '0';
        else if (c != '0' || !result.digits.empty())
            result.digits += c;
        result.power += (counts ? 0 : 1) - (after_point ? 1 : 0);
    }
    if (at == figure.size())
        return result;
    constexpr int beyond_all = 1'000'000'000; // so many zeros fit no text
    int exponent = 0;
    const bool below_one = figure[++at] == '-';
    for (; at < figure.size(); ++at) {
        if (figure[at] >= '0' && figure[at] <= '9')
            exponent = exponent < beyond_all / 10 ? exponent * 10 + (figure[at] - '0') : beyond_all;
    }
    result.power += below_one ? -exponent : exponent;
    return result;
}

double exactly_computed(const Decimal& decimal) {
    double value = 0.0;
    for (const char digit : decimal.digits)
        value = value * 10.0 + (digit - '0');
    double power = 1.0;
    for (int i = std::abs(decimal.power); i > 0; --i)
        power *= 10.0;
    return decimal.power < 0 ? value / power : value * power;
}

/// By long division of whole numbers, which leaves 62 or 63 bits and the knowledge whether anything is left.
double rounded(const Decimal& decimal) {
    BigWhole rest(0);
    for (const char digit : decimal.digits)
        rest.times_plus(10, static_cast<std::uint32_t>(digit - '0'));
    rest.times_power_of_ten(decimal.power);
    BigWhole divisor(1);
    divisor.times_power_of_ten(-decimal.power);

    constexpr int quotient_bits = 63;
    const int shift = quotient_bits - 1 + divisor.bits() - rest.bits();
    rest.times_power_of_two(shift);
    divisor.times_power_of_two(quotient_bits - 1 - std::min(shift, 0));
    std::uint64_t quotient = 0;
    for (int i = 0; i < quotient_bits; ++i) {
        const bool bit = !rest.less_than(divisor);
        if (bit)
            rest.take_away(divisor);
        quotient = quotient << 1U | (bit ? 1U : 0U);
        rest.times_power_of_two(1);
    }

    const int top = quotient >> (quotient_bits - 1U) == 0 ? quotient_bits - 2 : quotient_bits - 1;
    const int below_normal = std::max(smallest_exponent - (top - shift), 0);
    const auto dropped = static_cast<unsigned>(std::min(top + 1 - mantissa_bits + below_normal, 63));
    const std::uint64_t half = std::uint64_t{1} << (dropped - 1U);
    const std::uint64_t behind = quotient & (2 * half - 1);
    std::uint64_t kept = quotient >> dropped;
    const bool tie = behind == half && rest.zero() && !decimal.more;
    if (tie ? (kept & 1U) != 0 : behind >= half)
        ++kept;
    return std::ldexp(static_cast<double>(kept), static_cast<int>(dropped) - shift);
}

double size_of(const Decimal& decimal) {
    const std::size_t count = decimal.digits.size();
    if (count == 0)
        return 0.0;
    if (count <= most_exact_digits && std::abs(decimal.power) <= largest_exact_power)
        return exactly_computed(decimal);
    const int first = static_cast<int>(count) + decimal.power;
    if (first >= first_of_infinite)
        return std::numeric_limits<double>::infinity();
    return first <= first_of_zero ? 0.0 : rounded(decimal);
}

} // namespace

double nearest_double(std::string_view figure) {
    const bool negative = !figure.empty() && figure.front() == '-';
    const double size = size_of(decimal_of(negative ? figure.substr(1) : figure));
    return negative ? -size : size;
}

} // namespace saddlerule
