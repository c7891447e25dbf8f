#include "core/lists/keeping/free_ids.h"

namespace saddlerule {

void FreeIds::look_through() {
    if (!taken_.empty())
        return;
    for (const Bike& bike : list_.catalogue.bikes)
        taken_.insert(bike.id);
    for (const SetAside& entry : list_.catalogue.set_aside)
        taken_.insert(entry.id);
}

std::string FreeIds::like(const std::string& id) {
    look_through();
    std::size_t& last = given_[id];
    std::string candidate;
    do {
        last = last == 0 ? 2 : last + 1;
        candidate = id + " (" + std::to_string(last) + ')';
    } while (!taken_.insert(candidate).second);
    return candidate;
}

std::string FreeIds::after(std::string id) {
    const auto is_digit = [](char character) { return character >= '0' && character <= '9'; };
    std::size_t figure = id.size();
    while (figure > 0 && is_digit(id[figure - 1]))
        --figure;
    if (figure == id.size())
        return {};
    look_through();
    do {
        std::size_t place = id.size();
        while (place > figure && id[place - 1] == '9')
            id[--place] = '0';
        if (place == figure)
            id.insert(figure, 1, '1');
        else
            ++id[place - 1];
    } while (!taken_.insert(id).second);
    return id;
}

} // namespace saddlerule
