// Sorting in few bytes. std::sort and std::stable_sort are compiled anew for every type and order, in 3 to 9 kB of
// wasm each time; these take well under one.
#pragma once

#include <algorithm>
#include <functional>

namespace saddlerule {

/// For any number of items: about half as fast as std::sort. Equal items may change places.
template <typename Items, typename Less = std::less<>>
void heap_sort(Items& items, Less less = {}) {
    std::make_heap(items.begin(), items.end(), less);
    std::sort_heap(items.begin(), items.end(), less);
}

/// For a few items, or many that are nearly in order; equal items stay as they are. The time grows with the square of
/// their number.
template <typename Items, typename Less = std::less<>>
void insertion_sort(Items& items, Less less = {}) {
    for (auto item = items.begin(); item != items.end(); ++item)
        std::rotate(std::upper_bound(items.begin(), item, *item, less), item, item + 1);
}

} // namespace saddlerule
