// Free ids: marks that no bike of a list has yet.
#pragma once

#include "core/lists/catalogue/kept_list.h"

#include <cstddef>
#include <map>
#include <set>
#include <string>

namespace saddlerule {

/// Looks through the list when it is first asked. Gives nothing out twice.
class FreeIds {
public:
    explicit FreeIds(const KeptList& list) : list_(list) {}

    /// "L07 (2)" for "L07", or the first number that is free.
    std::string like(const std::string& id);

    /// "L08" for "L07" and "100" for "99", or the first after that which is free; nothing for an id that ends in no figure.
    std::string after(std::string id);

private:
    void look_through();

    const KeptList& list_;
    std::set<std::string> taken_;
    std::map<std::string, std::size_t> given_; ///< the last number behind each id
};

} // namespace saddlerule
