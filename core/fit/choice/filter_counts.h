// Filter counts: for every value of every filter, how many bikes would be left if it were chosen beside the other filters.
#pragma once

#include "core/fit/bike/bike.h"
#include "core/fit/choice/wants.h"

#include <array>
#include <cstddef>
#include <map>
#include <span>
#include <string>
#include <vector>

namespace saddlerule {

/// A figure that is offered, and how many bikes have it or are within it.
struct FigureCount {
    double figure;
    int bikes = 0;
};

struct ColourCount {
    std::string colour; ///< as it is wanted, or as the first bike has it
    int bikes = 0;
    int in_list = 0;            ///< whatever the filters
    const Bike* last = nullptr; ///< that was counted
};

/// What is counted as a value of one filter is counted with all other filters as they are, and without what is chosen in this
/// one. What is chosen is always among the wheels and colours.
struct FilterCounts {
    std::array<int, filter_count> without{}; ///< by Filter: bikes left if nothing were chosen in it
    /// By Filter, of those that have two values or one: two_hand and coaster, pedal and balance, single and several, available.
    std::array<std::array<int, 2>, filter_count> values{};
    std::vector<FigureCount> prices;    ///< round limits in the currency of each bike's own price, ascending
    std::vector<FigureCount> kilograms; ///< round limits of the mass, ascending
    std::vector<FigureCount> pounds;    ///< the same in pounds
    std::vector<FigureCount> wheels;    ///< nominal sizes in inches, the smallest first
    std::vector<ColourCount> colours;   ///< the most frequent first
    std::size_t more_colours = 0;       ///< that are too rare to be offered
};

/// Counts while the bikes are looked at one by one.
class FilterCounter {
public:
    /// All bikes that will be counted, of which the limits are made, what is wanted, and where the counts go; all of them must
    /// outlive this.
    FilterCounter(std::span<const Bike> list, std::span<const Bike> taped, const Wants& wants,
                  FilterCounts& counts);

    /// `because`: what reasons_against() says of the bike.
    void count(const Bike& bike, const std::vector<Unwanted>& because);

    /// Once all are counted.
    void finish();

private:
    void count_wheel(double nominal_inches, bool counts);
    void count_colours(const Bike& bike, bool counts);
    std::size_t colour_place(const std::string& name);

    const Wants& wants_;
    FilterCounts& counts_;
    std::map<std::string, std::size_t> colour_numbers_; ///< by the colour in lower case, from 1
};

} // namespace saddlerule
