// List view: the window of a list that a page shows, with what surrounds it.
#pragma once

#include "core/exchange/json_writer.h"
#include "core/exchange/request_fields.h"
#include "core/exchange/rows_request.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/keeping/list_slips.h"

#include <optional>
#include <string>
#include <vector>

namespace saddlerule {

enum class ListShow { all, bikes, set_aside, slips };

struct ListView {
    Rows rows;
    ListShow show = ListShow::all;
    std::string find; ///< only entries that contain this, in whatever case
};

/// Reads `rows`, `show` and `find`; nothing without `rows`.
std::optional<ListView> optional_list_view(RequestFields& fields);

/// `list`: what it says of itself, and how many entries it has.
void list_summary_field(JsonWriter& json, const KeptList& list);

/// The members `offers`, `heights_mm`, `notes` and `slip_kinds` of an answer, without braces: the same for every
/// window on a list that does not change.
std::string list_surroundings(const KeptList& list, const std::vector<SlipMark>& slips);

/// The members of an answer that tell of the window: `list`, `counts`, the surroundings, `entries`.
void list_view_fields(JsonWriter& json, const KeptList& list, const std::vector<SlipMark>& slips,
                      const std::string& surroundings, const ListView& view);

/// The same while there is no list.
void no_list_fields(JsonWriter& json);

/// `counts`: entries, bikes, set_aside, slips, and shown where it is given.
void list_counts_field(JsonWriter& json, const KeptList& list, const std::vector<SlipMark>& slips,
                       std::optional<std::size_t> shown);
/// `offers`: the wheel sizes and colours that usable bikes have, with how often.
void list_offers_field(JsonWriter& json, const KeptList& list);

/// An array of slips, each with the changes that would mend it. `number` is that of the
/// entry, or 0 for one that is not in the list yet.
void write_slips(JsonWriter& json, const std::vector<Slip>& slips, std::size_t number);

} // namespace saddlerule
