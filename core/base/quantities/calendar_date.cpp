#include "core/base/quantities/calendar_date.h"

#include <cmath>

namespace saddlerule {
namespace {

/// A run of exactly `text.size()` digits, or nothing.
std::optional<int> digits(std::string_view text) {
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

std::string padded(unsigned value, std::size_t width) {
    std::string text = std::to_string(value);
    return std::string(width - std::min(width, text.size()), '0') + text;
}

} // namespace

std::optional<CalendarDate> CalendarDate::from_iso(std::string_view text) {
    if (text.size() != 10 || text[7] != '-')
        return std::nullopt;
    const auto month = CalendarMonth::from_iso(text.substr(0, 7));
    const auto day = digits(text.substr(8));
    if (!month || !day)
        return std::nullopt;
    return from_ymd(month->year, month->month, static_cast<unsigned>(*day));
}

std::string CalendarDate::to_iso() const {
    return padded(static_cast<unsigned>(year()), 4) + '-' + padded(month(), 2) + '-' + padded(day(), 2);
}

CalendarDate CalendarDate::plus(Days distance) const {
    return CalendarDate(day_ + std::chrono::days(std::lround(distance.count())));
}

CalendarDate CalendarDate::plus_months(int months) const {
    const std::chrono::year_month_day from{day_};
    const auto month = std::chrono::year_month{from.year(), from.month()} + std::chrono::months(months);
    const std::chrono::year_month_day wanted{month.year(), month.month(), from.day()};
    if (wanted.ok())
        return CalendarDate(std::chrono::sys_days{wanted});
    return CalendarDate(std::chrono::sys_days{month / std::chrono::last});
}

std::optional<CalendarMonth> CalendarMonth::from_iso(std::string_view text) {
    if (text.size() != 7 || text[4] != '-')
        return std::nullopt;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5));
    if (!year || !month || !CalendarDate::from_ymd(*year, static_cast<unsigned>(*month), 1))
        return std::nullopt;
    return CalendarMonth{*year, static_cast<unsigned>(*month)};
}

CalendarDate CalendarMonth::middle() const {
    return *CalendarDate::from_ymd(year, month, 15);
}

} // namespace saddlerule
