#include "core/exchange/club_day_request.h"

#include "core/base/sorting/sorting.h"
#include "core/exchange/rider_request.h"
#include "core/fit/growth/reading_plausibility.h"

#include <algorithm>
#include <string_view>
#include <utility>

namespace saddlerule {
namespace {

/// New at riding alone: both feet flat on the floor.
constexpr Stage careful_stage = Stage::starting;

const auto possible_rounds = *ClosedRange<double>::between(1.0, most_rounds);

/// Places by id; the first of several.
class IdIndex {
public:
    void add(std::string_view id, std::size_t place) { entries_.emplace_back(id, place); }
    void sort() { heap_sort(entries_); }

    std::optional<std::size_t> find(std::string_view id) const {
        const auto at = std::lower_bound(entries_.begin(), entries_.end(), std::pair(id, std::size_t{0}));
        return at != entries_.end() && at->first == id ? std::optional(at->second) : std::nullopt;
    }

private:
    std::vector<std::pair<std::string_view, std::size_t>> entries_;
};

class ClubDayReader {
public:
    ClubDayReader(RequestFields& fields, std::span<const Bike> bikes)
        : fields_(fields), bikes_(bikes), request_{.names = {},
                                                   .riders = {},
                                                   .question = {.today = fields.required_day("today"),
                                                                .riders = {},
                                                                .bikes = {},
                                                                .absent = {},
                                                                .locked = {},
                                                                .never = {},
                                                                .before = {}}} {}

    ClubDayRequest read() {
        ClubQuestion& question = request_.question;
        read_riders();
        for (std::size_t i = 0; i < bikes_.size(); ++i)
            bike_index_.add(bikes_[i].id, i);
        bike_index_.sort();
        question.rounds = static_cast<int>(fields_.optional_number("rounds", possible_rounds).value_or(1.0));
        question.off_road = fields_.optional_flag("off_road").value_or(false);
        read_absent();
        question.locked = read_pairs("locked", true);
        question.never = read_pairs("not", true);
        question.before = read_pairs("before", false);
        hold_against_each_other();
        question.bikes = bikes_;
        return std::move(request_);
    }

private:
    void read_riders() {
        const JsonValue* given = fields_.optional("riders");
        fields_.require(given != nullptr, "riders", ProblemWord::list_of_riders);
        const auto items = fields_.optional_list("riders", ProblemWord::list_of_riders);
        if (items.size() > most_club_riders)
            fields_.report("riders", ProblemCode::club_too_many_riders,
                           {{"count", items.size()}, {"limit", most_club_riders}});
        else
            for (std::size_t i = 0; i < items.size(); ++i)
                read_rider(items[i], i);
        for (std::size_t i = 0; i < request_.names.size(); ++i)
            rider_index_.add(request_.names[i].id, i);
        rider_index_.sort();
        for (std::size_t i = 0; i < request_.names.size(); ++i) {
            const std::size_t first = *rider_index_.find(request_.names[i].id);
            if (first != i)
                fields_.report(with_index("riders", i) + ".id", ProblemCode::club_rider_twice,
                               {{"id", request_.names[i].id}, {"first", with_index("riders", first)}});
        }
    }

    void read_rider(const JsonValue& item, std::size_t index) {
        RequestFields fields(item, fields_.path_of(with_index("riders", index)));
        ClubRider rider{.id = fields.optional_text("id").value_or(""), .stage_assumed = false, .notes = {}};
        fields.require(!rider.id.empty(), "id", ProblemWord::own_name);
        std::optional<Rider> measured;
        if (const JsonValue* value = fields.optional("rider")) {
            const std::string path = fields.path_of("rider");
            auto read = rider_from_request(*value, path, request_.question.today, careful_stage);
            if (read) {
                measured = std::move(read).value();
                const JsonMember* stage = value->find("stage");
                rider.stage_assumed = !stage || stage->value.kind == JsonValue::Kind::null;
                for (Problem& note : rider_notes(*measured, request_.question.today))
                    rider.notes.push_back(std::move(note).within(path));
            } else {
                Problem problem = std::move(read).problem();
                if (problem.code != ProblemCode::rider_without_measure)
                    fields.report(std::move(problem));
            }
        }
        if (auto problem = fields.finish())
            fields_.report(*std::move(problem));
        request_.names.push_back(std::move(rider));
        request_.riders.push_back(std::move(measured));
    }

    void read_absent() {
        std::vector<bool>& absent = request_.question.absent;
        absent.assign(bikes_.size(), false);
        if (fields_.optional_flag("available_only").value_or(false)) {
            for (std::size_t i = 0; i < bikes_.size(); ++i)
                absent[i] = bikes_[i].available == false;
        }
        const auto ids = fields_.optional_texts("absent");
        for (std::size_t i = 0; ids && i < ids->size(); ++i) {
            const auto bike = bike_index_.find((*ids)[i]);
            if (bike)
                absent[*bike] = true;
            else
                fields_.report(with_index("absent", i), ProblemCode::request_bike_unknown,
                               {{"id", (*ids)[i]}});
        }
    }

    /// `strict`: an id that is not known is a problem.
    std::vector<ClubPair> read_pairs(std::string_view name, bool strict) {
        std::vector<ClubPair> pairs;
        const auto items = fields_.optional_list(name, ProblemWord::list_of_pairs);
        for (std::size_t i = 0; i < items.size(); ++i) {
            const std::string place = with_index(name, i);
            RequestFields fields(items[i], fields_.path_of(place));
            const auto rider_id = fields.optional_text("rider");
            const auto bike_id = fields.optional_text("bike");
            fields.require(rider_id.has_value(), "rider", ProblemWord::id_of_rider);
            fields.require(bike_id.has_value(), "bike", ProblemWord::id_of_bike);
            const auto round = fields.optional_number("round", possible_rounds);
            const auto rider = rider_id ? rider_index_.find(*rider_id) : std::nullopt;
            const auto bike = bike_id ? bike_index_.find(*bike_id) : std::nullopt;
            if (strict && rider_id && !rider)
                fields.report("rider", ProblemCode::club_rider_unknown, {{"id", *rider_id}});
            if (strict && bike_id && !bike)
                fields.report("bike", ProblemCode::request_bike_unknown, {{"id", *bike_id}});
            if (auto problem = fields.finish())
                fields_.report(*std::move(problem));
            if (rider && bike)
                pairs.push_back(
                    {.rider = *rider,
                     .bike = *bike,
                     .round = round ? std::optional(static_cast<int>(*round) - 1) : std::nullopt});
        }
        return pairs;
    }

    /// What was settled must not contradict itself.
    void hold_against_each_other() {
        const ClubQuestion& question = request_.question;
        std::vector<std::optional<std::size_t>> pair_of(request_.names.size());
        std::vector<std::vector<std::size_t>> pairs_of(bikes_.size());
        for (std::size_t i = 0; i < question.locked.size(); ++i) {
            const ClubPair& pair = question.locked[i];
            const std::string place = with_index("locked", i);
            const std::string& rider = request_.names[pair.rider].id;
            const std::string& bike = bikes_[pair.bike].id;
            if (pair_of[pair.rider])
                fields_.report(place + ".rider", ProblemCode::club_rider_locked_twice,
                               {{"id", rider}, {"first", with_index("locked", *pair_of[pair.rider])}});
            pair_of[pair.rider] = i;
            if (question.absent[pair.bike])
                fields_.report(place + ".bike", ProblemCode::club_bike_locked_and_absent,
                               {{"id", bike}, {"rider", rider}});
            if (pair.round && *pair.round >= question.rounds)
                fields_.report(place + ".round", ProblemCode::request_value_out_of_range,
                               {{"value", *pair.round + 1}, {"low", 1}, {"high", question.rounds}});
            for (const std::size_t other : pairs_of[pair.bike]) {
                if (pair.round && question.locked[other].round == pair.round)
                    fields_.report(place + ".round", ProblemCode::club_round_locked_twice,
                                   {{"id", bike}, {"round", *pair.round + 1}});
            }
            pairs_of[pair.bike].push_back(i);
            if (pairs_of[pair.bike].size() > static_cast<std::size_t>(question.rounds))
                fields_.report(
                    place + ".bike", ProblemCode::club_bike_locked_too_often,
                    {{"id", bike}, {"count", pairs_of[pair.bike].size()}, {"rounds", question.rounds}});
        }
        for (std::size_t i = 0; i < question.never.size(); ++i) {
            const ClubPair& pair = question.never[i];
            const auto locked = pair_of[pair.rider];
            if (locked && question.locked[*locked].bike == pair.bike)
                fields_.report(with_index("not", i), ProblemCode::club_pair_locked_and_not,
                               {{"rider", request_.names[pair.rider].id}, {"bike", bikes_[pair.bike].id}});
        }
    }

    RequestFields& fields_;
    std::span<const Bike> bikes_;
    ClubDayRequest request_;
    IdIndex rider_index_;
    IdIndex bike_index_;
};

} // namespace

ClubDayRequest club_day_request(RequestFields& fields, std::span<const Bike> bikes) {
    return ClubDayReader(fields, bikes).read();
}

} // namespace saddlerule
