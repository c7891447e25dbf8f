// Taped bikes: those that a request hands over beside the loaded list, in the form of a catalogue entry.
#pragma once

#include "core/exchange/request_fields.h"
#include "core/lists/catalogue/catalogue.h"

#include <string_view>
#include <vector>

namespace saddlerule {

struct TapedBikes {
    std::vector<Bike> bikes;
    std::vector<std::vector<Problem>> notes; ///< of each bike: figures that look like a slip of the hand
    std::vector<SetAside> set_aside;
};

/// Reads the fields `taped` and `taped_units` (cm where it is absent). Prices count in the currency of
/// `list`, which may be null. A taped bike that cannot be used, or whose id the list has already, is set
/// aside like one in a file, with its path instead of a position; it does not spoil the request.
/// `request_text` is what `fields` was read from.
TapedBikes taped_bikes(RequestFields& fields, std::string_view request_text, const Catalogue* list);

} // namespace saddlerule
