#include "core/lists/catalogue/bike_ids.h"

#include <algorithm>
#include <cstddef>
#include <map>
#include <set>
#include <string>

namespace saddlerule {

void give_missing_ids(std::vector<Bike>& bikes) {
    if (std::none_of(bikes.begin(), bikes.end(), [](const Bike& bike) { return bike.id.empty(); }))
        return;
    std::set<std::string> taken;
    for (const Bike& bike : bikes) {
        if (!bike.id.empty())
            taken.insert(bike.id);
    }
    // How often a name was given out, so that a thousand bikes of one name are numbered in one go.
    std::map<std::string, std::size_t> given;
    for (Bike& bike : bikes) {
        if (!bike.id.empty())
            continue;
        std::size_t& times = given[bike.name];
        do {
            ++times;
            bike.id = times == 1 ? bike.name : bike.name + " (" + std::to_string(times) + ')';
        } while (!taken.insert(bike.id).second);
        bike.id_from_name = true;
    }
}

} // namespace saddlerule
