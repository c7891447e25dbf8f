#include "core/lists/keeping/free_ids.h"

namespace saddlerule {

std::string FreeIds::like(const std::string& id) {
    if (taken_.empty()) {
        for (const Bike& bike : list_.catalogue.bikes)
            taken_.insert(bike.id);
        for (const SetAside& entry : list_.catalogue.set_aside)
            taken_.insert(entry.id);
    }
    std::size_t& last = given_[id];
    std::string candidate;
    do {
        last = last == 0 ? 2 : last + 1;
        candidate = id + " (" + std::to_string(last) + ')';
    } while (!taken_.insert(candidate).second);
    return candidate;
}

} // namespace saddlerule
