// RangeDecoder: takes what was packed apart into choices. Each choice has a width among all there were, and takes the less room
// the wider it was (range coding, after G. N. N. Martin, "Range encoding", 1979), as 7-Zip lays it out for PPMd.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>

namespace saddlerule::unpacking {

class RangeDecoder {
public:
    explicit RangeDecoder(std::span<const std::uint8_t> packed) : packed_(packed) {
        constexpr int first_bytes = 5; // of which the first is nothing
        for (int i = 0; i < first_bytes; ++i)
            shift();
        range_ = 0xFFFFFFFF;
    }

    /// Where among `total` the next choice lies. To be followed by `take` of the choice that is there.
    std::uint32_t place(std::uint32_t total) {
        range_ /= total;
        return code_ / range_;
    }

    void take(std::uint32_t start, std::uint32_t width) {
        code_ -= start * range_;
        range_ *= width;
        fill();
    }

    /// A choice of two. `chance`: of the first one, in parts of two to the power of `bits`. @returns true for the first one
    bool first_of_two(std::uint32_t chance, unsigned bits) {
        const std::uint32_t bound = (range_ >> bits) * chance;
        const bool first = code_ < bound;
        if (first) {
            range_ = bound;
        } else {
            code_ -= bound;
            range_ -= bound;
        }
        fill();
        return first;
    }

private:
    void fill() {
        constexpr std::uint32_t least = 1U << 24;
        for (; range_ < least; range_ <<= 8)
            shift();
    }

    /// Behind the end there is nothing but zeroes.
    void shift() { code_ = code_ << 8 | (at_ < packed_.size() ? packed_[at_++] : 0U); }

    std::span<const std::uint8_t> packed_;
    std::size_t at_ = 0;
    std::uint32_t code_ = 0;
    std::uint32_t range_ = 0;
};

} // namespace saddlerule::unpacking
