// Ids of bikes: every bike in a list has one, and no two the same.
#pragma once

#include "core/fit/bike/bike.h"

#include <vector>

namespace saddlerule {

/// Gives each bike without an id its name as id, with " (2)", " (3)" and so on where that is taken. Ids that
/// were given are never changed, wherever they are in the list.
void give_missing_ids(std::vector<Bike>& bikes);

} // namespace saddlerule
