#include "core/base/json/json_figure.h"

namespace saddlerule {
namespace {

std::size_t digits_at(std::string_view text, std::size_t offset) {
    std::size_t end = offset;
    while (end < text.size() && text[end] >= '0' && text[end] <= '9')
        ++end;
    return end - offset;
}

bool stands_at(std::string_view text, std::size_t offset, std::string_view any_of) {
    return offset < text.size() && any_of.find(text[offset]) != std::string_view::npos;
}

} // namespace

std::size_t json_figure_length(std::string_view text) {
    std::size_t end = stands_at(text, 0, "-") ? 1 : 0;
    const std::size_t whole = stands_at(text, end, "0") ? 1 : digits_at(text, end);
    if (whole == 0)
        return 0;
    end += whole;
    if (stands_at(text, end, ".")) {
        const std::size_t decimals = digits_at(text, end + 1);
        end += decimals > 0 ? 1 + decimals : 0;
    }
    if (stands_at(text, end, "eE")) {
        const std::size_t sign = stands_at(text, end + 1, "+-") ? 1 : 0;
        const std::size_t exponent = digits_at(text, end + 1 + sign);
        end += exponent > 0 ? 1 + sign + exponent : 0;
    }
    return end;
}

} // namespace saddlerule
