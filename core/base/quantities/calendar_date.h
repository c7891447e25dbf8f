// CalendarDate: a day, and Days: the distance between two of them. The engine has no clock; "today" is always
// given.
#pragma once

#include <chrono>
#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace saddlerule {

/// A number of days between two dates. Years and months are conventions stated by name here.
class Days {
public:
    constexpr Days() = default;
    explicit constexpr Days(double count) : count_(count) {}

    static constexpr double per_year = 365.25;
    static constexpr double per_month = per_year / 12.0;

    static constexpr Days years(double value) { return Days(value * per_year); }
    static constexpr Days months(double value) { return Days(value * per_month); }

    constexpr double count() const { return count_; }
    constexpr double in_years() const { return count_ / per_year; }
    constexpr double in_months() const { return count_ / per_month; }

    friend constexpr auto operator<=>(Days, Days) = default;
    friend constexpr Days operator+(Days a, Days b) { return Days(a.count_ + b.count_); }
    friend constexpr Days operator-(Days a, Days b) { return Days(a.count_ - b.count_); }

private:
    double count_ = 0.0;
};

/// One day of the proleptic Gregorian calendar, years 1900 to 2199.
class CalendarDate {
public:
    static constexpr std::optional<CalendarDate> from_ymd(int year, unsigned month, unsigned day) {
        const std::chrono::year_month_day ymd{std::chrono::year{year}, std::chrono::month{month},
                                              std::chrono::day{day}};
        if (!ymd.ok() || year < 1900 || year > 2199)
            return std::nullopt;
        return CalendarDate(std::chrono::sys_days{ymd});
    }

    /// Reads `YYYY-MM-DD` (ISO 8601) and nothing else.
    static std::optional<CalendarDate> from_iso(std::string_view text);

    std::string to_iso() const;

    constexpr int year() const { return static_cast<int>(std::chrono::year_month_day{day_}.year()); }
    constexpr unsigned month() const {
        return static_cast<unsigned>(std::chrono::year_month_day{day_}.month());
    }
    constexpr unsigned day() const { return static_cast<unsigned>(std::chrono::year_month_day{day_}.day()); }

    /// The nearest whole day.
    CalendarDate plus(Days distance) const;
    /// The same day of a later (or, negative, an earlier) month; the last of that month where it is shorter.
    CalendarDate plus_months(int months) const;

    friend constexpr bool operator==(CalendarDate, CalendarDate) = default;
    friend constexpr std::strong_ordering operator<=>(CalendarDate a, CalendarDate b) {
        // Not defaulted: the wasm compiler's library cannot order time points three ways.
        return a.day_.time_since_epoch().count() <=> b.day_.time_since_epoch().count();
    }
    friend constexpr Days operator-(CalendarDate a, CalendarDate b) {
        return Days(static_cast<double>((a.day_ - b.day_).count()));
    }

private:
    explicit constexpr CalendarDate(std::chrono::sys_days day) : day_(day) {}

    std::chrono::sys_days day_{};
};

/// A calendar month, for birthdays given as `YYYY-MM`.
struct CalendarMonth {
    int year = 0;
    unsigned month = 0;

    /// Reads `YYYY-MM` (ISO 8601) and nothing else.
    static std::optional<CalendarMonth> from_iso(std::string_view text);

    /// Its 15th: half a month off at the most.
    CalendarDate middle() const;
};

} // namespace saddlerule
