#include "core/exchange/merge_request.h"

#include "core/base/typed_text/length_text.h"
#include "core/exchange/entry_answer.h"
#include "core/exchange/json_writer.h"
#include "core/lists/catalogue/list_judgement.h"

#include <algorithm>
#include <utility>

namespace saddlerule {
namespace {

constexpr WireName<Keep> keep_names[] = {
    {"here", Keep::here},   {"there", Keep::there}, {"both", Keep::both},
    {"newer", Keep::newer}, {"fill", Keep::fill},
};

bool is_conflict(const BikePair& pair) {
    return pair.here != 0 && !pair.differs.empty();
}

struct Version {
    const KeptList& list;
    std::size_t number;
    std::string_view source; ///< as it means the same in the list here
};

void version_field(JsonWriter& json, std::string_view name, const KeptList& here, const Version& shown) {
    json.key(name).object([&] {
        field(json, "number", shown.number);
        field(json, "measured_on", measured_on(shown.list, shown.number));
        cells_field(json, here, shown.source);
    });
}

} // namespace

std::string compare_answer(const KeptList& here, const KeptList& there) {
    const std::vector<BikePair> pairs = compared(here, there);
    const auto count = [&](auto condition) {
        return static_cast<std::size_t>(std::count_if(pairs.begin(), pairs.end(), condition));
    };
    const std::size_t matched = count([](const BikePair& pair) { return pair.here != 0; });
    JsonWriter json;
    json.object([&] {
        json.key("there").object([&] {
            text_field(json, "title", there.catalogue.title);
            field(json, "units", unit_name(there.catalogue.units));
            text_field(json, "currency",
                       there.catalogue.currency ? there.catalogue.currency->code() : std::string_view());
            field(json, "entries", there.entries.size());
        });
        field(json, "same", matched - count(is_conflict));
        field(json, "only_here", here.entries.size() - matched);
        json.key("only_there").array([&] {
            for (const BikePair& pair : pairs) {
                if (pair.here != 0)
                    continue;
                json.object([&] {
                    field(json, "number", pair.there);
                    text_field(json, "id", pair.id);
                    text_field(json, "name", judged_entry(there.catalogue, pair.there).name());
                });
            }
        });
        json.key("conflicts").array([&] {
            for (const BikePair& pair : pairs) {
                if (!is_conflict(pair))
                    continue;
                json.object([&] {
                    field(json, "id", pair.id);
                    version_field(json, "here", here, {here, pair.here, here.entries[pair.here - 1].source});
                    version_field(json, "there", here,
                                  {there, pair.there, entry_for(here, there, pair.there)});
                    json.key("differs").array_of(pair.differs,
                                                 [&](const std::string& name) { json.text(name); });
                    json.key("newer");
                    if (pair.newer)
                        json.text(*pair.newer == Keep::here ? "here" : "there");
                    else
                        json.null();
                    json.key("fills").array_of(pair.gaps, [&](const FieldCell& gap) { json.text(gap.name); });
                });
            }
        });
        field(json, "set_aside", there.catalogue.set_aside.size());
    });
    return json.take();
}

MergeWishes merge_wishes(RequestFields& fields) {
    MergeWishes wishes;
    if (const JsonValue* take = fields.optional("take")) {
        RequestFields by_id(*take, fields.path_of("take"));
        for (const JsonMember& member : take->members) {
            if (const auto keep = by_id.optional_choice(member.name, keep_names))
                wishes.take.emplace_back(member.name, *keep);
        }
        if (auto problem = by_id.finish())
            fields.report(*std::move(problem));
    }
    wishes.add = fields.optional_flag("add").value_or(true);
    return wishes;
}

void apply_merge(RequestFields& fields, const KeptList& here, const KeptList& there,
                 const MergeWishes& wishes, ListEditor& editor) {
    std::vector<BikePair> pairs = compared(here, there);
    for (const auto& [id, keep] : wishes.take) {
        const bool known = std::any_of(pairs.begin(), pairs.end(), [&id = id](const BikePair& pair) {
            return is_conflict(pair) && pair.id == id;
        });
        if (!known)
            fields.report("take", ProblemCode::request_bike_unknown, {{"id", id}});
    }
    for (BikePair& pair : pairs) {
        const auto wish = std::find_if(wishes.take.begin(), wishes.take.end(),
                                       [&](const auto& wanted) { return wanted.first == pair.id; });
        if (pair.here == 0)
            pair.keep = wishes.add ? Keep::there : Keep::here;
        else if (wish != wishes.take.end())
            pair.keep = wish->second;
    }
    ListMerger(here, there, editor).take(pairs);
}

} // namespace saddlerule
