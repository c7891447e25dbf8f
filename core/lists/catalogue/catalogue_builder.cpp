#include "core/lists/catalogue/catalogue_builder.h"

#include "core/lists/catalogue/list_judgement.h"

#include <string>
#include <utility>

namespace saddlerule {

CatalogueBuilder::CatalogueBuilder(std::unique_ptr<EntryPlaces> places) {
    list_.places = std::move(places);
}

void CatalogueBuilder::read_by(const ReadingFacts& facts) {
    list_.facts = facts;
}

void CatalogueBuilder::take(const JsonValue& entry, std::string_view text, std::size_t origin,
                            std::span<const CatalogueField* const> fields) {
    const std::size_t number = ++count_;
    if (number > most_bikes) {
        if (number == most_bikes + 1)
            first_too_many_ = origin;
        return;
    }
    list_.entries.push_back({.source = entry.written_in(text), .origin = origin, .own = {}});
    judge_entry(list_, number, entry, text, fields);
}

std::optional<Problem> CatalogueBuilder::too_many() {
    if (count_ <= most_bikes)
        return std::nullopt;
    Problem problem{.code = ProblemCode::file_too_many_bikes,
                    .figures = {{"count", count_}, {"limit", most_bikes}},
                    .where = entry_path(most_bikes + 1),
                    .position = {}};
    places().place_in_entry(problem, first_too_many_, 0, {});
    return problem;
}

void CatalogueBuilder::start_again() {
    list_.catalogue = Catalogue();
    list_.entries.clear();
    count_ = 0;
}

Result<KeptList> CatalogueBuilder::finish(std::vector<SetAside>* refused, bool to_mend) {
    settle_ids(list_);
    list_.header_notes = list_.catalogue.notes.size();
    note_remarks(list_);
    list_.catalogue.bikes.shrink_to_fit(); // the room it grew in is as large as half a file
    std::vector<SetAside>& set_aside = list_.catalogue.set_aside;
    if (to_mend || !list_.catalogue.bikes.empty() || set_aside.empty())
        return std::move(list_);
    const Problem& first = set_aside.front().problem;
    Problem cause = first;
    cause.position.reset();
    Problem problem{.code = ProblemCode::file_no_usable_bike,
                    .figures = {{"count", count_}, {"first", cause}},
                    .where = first.where,
                    .position = first.position};
    if (refused)
        *refused = std::move(set_aside);
    return problem;
}

} // namespace saddlerule
