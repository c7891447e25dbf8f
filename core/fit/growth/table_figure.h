// TableFigure: a figure of a published table, kept as the whole number that it is printed as.
#pragma once

#include <cstdint>

namespace saddlerule {

/// A figure of at most five decimals, in hundred thousandths: the same double comes out that would have been written down,
/// and it packs into two bytes where a double takes seven.
class TableFigure {
public:
    constexpr TableFigure(double figure)
        : hundred_thousandths_(static_cast<std::int32_t>(figure * parts + (figure < 0.0 ? -0.5 : 0.5))) {
        if (*this != figure)
            has_more_decimals();
    }

    constexpr operator double() const { return hundred_thousandths_ / parts; }

private:
    static constexpr double parts = 100'000.0;

    /// No constant expression, so that a table with such a figure does not compile.
    static void has_more_decimals() {}

    std::int32_t hundred_thousandths_;
};

} // namespace saddlerule
