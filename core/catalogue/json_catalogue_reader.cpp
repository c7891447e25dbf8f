#include "core/catalogue/json_catalogue_reader.h"

#include "core/catalogue/bike_ids.h"
#include "core/catalogue/bike_reader.h"
#include "core/catalogue/catalogue_fields.h"
#include "core/json/located_json.h"
#include "core/outcomes/figure_text.h"
#include "core/text/text_position.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <optional>
#include <string>
#include <utility>

namespace saddlerule {
namespace {

using Kind = JsonValue::Kind;
using Figures = std::vector<std::pair<std::string, std::string>>;
using Fault = std::optional<Problem>;

constexpr std::string_view format_name = "saddlerule-catalogue";
constexpr int format_version = 1;

constexpr std::array<std::pair<std::string_view, LengthUnit>, 3> unit_names{{
    {"mm", LengthUnit::millimetre},
    {"cm", LengthUnit::centimetre},
    {"in", LengthUnit::inch},
}};

constexpr std::array<std::string_view, 7> file_fields{"format", "version",  "title", "measured_on",
                                                      "units",  "currency", "bikes"};

/// What the bikes of a file are read by.
struct FileFacts {
    std::optional<LengthUnit> units;
    std::optional<Currency> currency;

    friend bool operator==(const FileFacts&, const FileFacts&) = default;
};

const JsonValue* given(const JsonValue& file, std::string_view name) {
    const JsonMember* member = file.find(name);
    return member && member->value.kind != Kind::null ? &member->value : nullptr;
}

FileFacts facts_of(const JsonValue& file) {
    FileFacts facts;
    if (const JsonValue* units = given(file, "units")) {
        for (const auto& [name, unit] : unit_names) {
            if (units->kind == Kind::text && units->text == name)
                facts.units = unit;
        }
    }
    if (const JsonValue* currency = given(file, "currency"))
        facts.currency = Currency::from_code(currency->text);
    return facts;
}

/// Something that is told once, however often it comes up.
struct Remark {
    std::string name;
    std::size_t offset; ///< where it came up first
    std::string where;
    std::size_t times;
};

/// Many names that nobody knows are a file gone wrong; telling the first of them is enough.
constexpr std::size_t most_remarks = 50;

class CatalogueReader {
public:
    explicit CatalogueReader(std::string_view text) : text_(text), positions_(text) {}

    Result<Catalogue> read(std::vector<SetAside>* refused) {
        // Told before reading: what stands in a bare list is nothing to build a tree of.
        const std::size_t begin = text_.find_first_not_of(" \t\r\n");
        if (begin < text_.size() && text_[begin] == '[')
            return not_an_object(begin, "a list");
        auto file = read_file(std::nullopt);
        if (!file)
            return std::move(file).problem();
        if (file->kind != Kind::object)
            return not_an_object(file->begin, file->kind_name());
        if (auto fault = refuse_file(*file))
            return *std::move(fault);
        const FileFacts facts = facts_of(*file);
        if (facts_used_ && facts != *facts_used_) {
            // Units or currency stand behind the bikes: now that they are known, the bikes are read again.
            start_again();
            file = read_file(facts);
        }
        take_file_facts(*file, facts);
        set_aside_taken_ids();
        give_missing_ids(catalogue_.bikes);
        write_notes();
        if (auto fault = nothing_usable()) {
            if (refused)
                *refused = std::move(catalogue_.set_aside);
            return *std::move(fault);
        }
        return std::move(catalogue_);
    }

private:
    /// Where a bike that was read stands in the text.
    struct Origin {
        std::size_t number;
        std::size_t begin;
        std::size_t end;
        std::size_t id_begin;
    };

    Problem problem(ProblemCode code, std::size_t offset, std::string_view where, Figures figures) {
        return {.code = code,
                .figures = std::move(figures),
                .where = std::string(where),
                .position = positions_.at(offset)};
    }

    Problem not_an_object(std::size_t offset, std::string_view found) {
        return problem(ProblemCode::file_not_an_object, offset, {},
                       {{"found", std::string(found)}, {"kind", R"({ "units": "cm", "bikes": [ ... ] })"}});
    }

    static std::string path_of(std::size_t number) { return "bikes[" + std::to_string(number - 1) + ']'; }

    Result<JsonValue> read_file(std::optional<FileFacts> facts) {
        facts_used_ = facts;
        const ElementSink sink{.member = "bikes", .take = [&](JsonValue&& entry, const JsonValue& so_far) {
                                   if (!facts_used_)
                                       facts_used_ = facts_of(so_far);
                                   take_bike(entry);
                               }};
        return read_json(text_, JsonLimits(), &sink);
    }

    void start_again() {
        catalogue_ = Catalogue();
        origins_.clear();
        count_ = 0;
        unknown_fields_.clear();
        further_unknown_fields_ = 0;
        prices_without_currency_.reset();
    }

    void take_bike(const JsonValue& entry) {
        const std::size_t number = ++count_;
        if (number > most_bikes) {
            if (number == most_bikes + 1)
                first_too_many_ = entry.begin;
            return;
        }
        auto bike = read_bike(entry, {.text = text_,
                                      .units = facts_used_->units,
                                      .currency = facts_used_->currency,
                                      .positions = &positions_});
        if (!bike) {
            catalogue_.set_aside.push_back(
                set_aside_entry(entry, number, std::move(bike).problem().within(path_of(number)), text_));
            return;
        }
        const JsonMember* id = entry.find("id");
        origins_.push_back({.number = number,
                            .begin = entry.begin,
                            .end = entry.end,
                            .id_begin = id ? id->value.begin : entry.begin});
        for (const UnknownField& field : bike->unknown_fields)
            remark_on(*entry.find(field.name), number);
        catalogue_.bikes.push_back(std::move(bike).value());
    }

    void remark_on(const JsonMember& member, std::size_t number) {
        const auto first_time = [&] {
            return Remark{.name = member.name,
                          .offset = member.name_begin,
                          .where = path_of(number) + '.' + member.name,
                          .times = 1};
        };
        if (field_named(member.name)) { // the price, which no currency goes with
            if (prices_without_currency_)
                ++prices_without_currency_->times;
            else
                prices_without_currency_ = first_time();
            return;
        }
        const auto known = std::find_if(unknown_fields_.begin(), unknown_fields_.end(),
                                        [&](const Remark& remark) { return remark.name == member.name; });
        if (known != unknown_fields_.end())
            ++known->times;
        else if (unknown_fields_.size() < most_remarks)
            unknown_fields_.push_back(first_time());
        else
            ++further_unknown_fields_;
    }

    /// What makes a file useless as a whole.
    Fault refuse_file(const JsonValue& file) {
        if (auto fault = refuse_format(file))
            return fault;
        for (const JsonMember& member : file.members) {
            if (file.find(member.name) != &member)
                return problem(ProblemCode::file_field_twice, member.name_begin, member.name,
                               {{"field", excerpt(member.name)}});
        }
        const JsonValue* units = given(file, "units");
        if (units && !facts_of(file).units)
            return text_problem(*units, "units", ProblemCode::file_value_unknown, R"("mm", "cm" or "in")");
        const JsonMember* bikes = file.find("bikes");
        if (!bikes)
            return problem(ProblemCode::file_without_bikes, file.begin, {}, {});
        if (bikes->value.kind != Kind::array)
            return wrong_type(bikes->value, "bikes", "a list of bikes in square brackets");
        if (count_ > most_bikes) {
            return problem(ProblemCode::file_too_many_bikes, first_too_many_, path_of(most_bikes + 1),
                           {{"count", std::to_string(count_)}, {"limit", std::to_string(most_bikes)}});
        }
        if (count_ == 0)
            return problem(ProblemCode::file_bikes_empty, bikes->value.begin, "bikes", {});
        return std::nullopt;
    }

    /// Comes first: what a later version means by its other fields is not known here.
    Fault refuse_format(const JsonValue& file) {
        if (file.members.size() > most_fields) {
            return problem(
                ProblemCode::file_too_many_fields, file.begin, {},
                {{"count", std::to_string(file.members.size())}, {"limit", std::to_string(most_fields)}});
        }
        const JsonValue* format = given(file, "format");
        if (format && format->kind != Kind::text)
            return wrong_type(*format, "format", '"' + std::string(format_name) + '"');
        if (format && format->text != format_name) {
            return problem(ProblemCode::file_format_unknown, format->begin, "format",
                           {{"format", excerpt(format->text)}, {"known", std::string(format_name)}});
        }
        const JsonValue* version = given(file, "version");
        if (!version)
            return std::nullopt;
        if (version->kind != Kind::number)
            return wrong_type(*version, "version", "the number " + std::to_string(format_version));
        if (version->number == format_version)
            return std::nullopt;
        const std::string as_written = excerpt(text_.substr(version->begin, version->end - version->begin));
        const std::string known = std::to_string(format_version);
        if (version->number > format_version) {
            return problem(ProblemCode::file_version_too_new, version->begin, "version",
                           {{"version", as_written}, {"known", known}});
        }
        return problem(ProblemCode::file_value_unknown, version->begin, "version",
                       {{"field", "version"}, {"value", as_written}, {"known", known}});
    }

    Problem wrong_type(const JsonValue& value, std::string_view field, std::string_view kind) {
        return problem(ProblemCode::file_field_wrong_type, value.begin, field,
                       {{"field", std::string(field)},
                        {"found", std::string(value.kind_name())},
                        {"kind", std::string(kind)}});
    }

    Problem text_problem(const JsonValue& value, std::string_view field, ProblemCode code,
                         std::string_view known) {
        if (value.kind != Kind::text)
            return wrong_type(value, field, "a text in quotes");
        return problem(
            code, value.begin, field,
            {{"field", std::string(field)}, {"value", excerpt(value.text)}, {"known", std::string(known)}});
    }

    /// Title, day and currency, none of which a list is refused for: what cannot be read is kept and noted.
    void take_file_facts(const JsonValue& file, const FileFacts& facts) {
        catalogue_.units = facts.units.value_or(LengthUnit::centimetre);
        catalogue_.currency = facts.currency;
        const JsonValue* title = given(file, "title");
        if (title && title->kind == Kind::text)
            catalogue_.title = title->text;
        else if (title)
            keep_and_note(*title, "title", wrong_type(*title, "title", "a text in quotes"));
        const JsonValue* day = given(file, "measured_on");
        if (day)
            catalogue_.measured_on = CalendarDate::from_iso(day->text);
        if (day && !catalogue_.measured_on) {
            keep_and_note(*day, "measured_on",
                          text_problem(*day, "measured_on", ProblemCode::file_date_malformed, {}));
        }
        const JsonValue* currency = given(file, "currency");
        if (currency && !facts.currency) {
            keep_and_note(*currency, "currency",
                          text_problem(*currency, "currency", ProblemCode::file_currency_malformed, {}));
        }
        for (const JsonMember& member : file.members) {
            if (std::find(file_fields.begin(), file_fields.end(), member.name) != file_fields.end())
                continue;
            keep_and_note(member.value, member.name,
                          problem(ProblemCode::list_field_unknown, member.name_begin, member.name,
                                  {{"field", excerpt(member.name)}, {"times", times_text(1)}}));
        }
    }

    void keep_and_note(const JsonValue& value, std::string_view name, Problem note) {
        catalogue_.unknown_fields.push_back(
            {.name = std::string(name),
             .json = std::string(text_.substr(value.begin, value.end - value.begin))});
        catalogue_.notes.push_back(std::move(note));
    }

    /// Of two bikes with one id the later one is set aside.
    void set_aside_taken_ids() {
        std::vector<Bike>& bikes = catalogue_.bikes;
        std::vector<std::size_t> by_id(bikes.size());
        std::iota(by_id.begin(), by_id.end(), std::size_t{0});
        std::stable_sort(by_id.begin(), by_id.end(),
                         [&](std::size_t a, std::size_t b) { return bikes[a].id < bikes[b].id; });
        std::vector<bool> taken(bikes.size(), false);
        for (std::size_t i = 1, first = 0; i < by_id.size(); ++i) {
            if (bikes[by_id[i]].id.empty() || bikes[by_id[i]].id != bikes[by_id[first]].id) {
                first = i;
                continue;
            }
            taken[by_id[i]] = true;
            set_aside_taken_id(bikes[by_id[i]], origins_[by_id[i]], origins_[by_id[first]]);
        }
        std::size_t kept = 0;
        for (std::size_t i = 0; i < bikes.size(); ++i) {
            if (taken[i])
                continue;
            if (kept != i)
                bikes[kept] = std::move(bikes[i]);
            ++kept;
        }
        bikes.resize(kept);
        std::sort(catalogue_.set_aside.begin(), catalogue_.set_aside.end(),
                  [](const SetAside& a, const SetAside& b) { return a.number < b.number; });
    }

    void set_aside_taken_id(const Bike& bike, const Origin& origin, const Origin& first) {
        const std::string line = std::to_string(positions_.at(first.id_begin).line);
        catalogue_.set_aside.push_back(
            {.number = origin.number,
             .id = bike.id,
             .name = bike.name,
             .problem = problem(ProblemCode::bike_id_taken, origin.id_begin, path_of(origin.number) + ".id",
                                {{"id", excerpt(bike.id)}, {"line", line}}),
             .source = std::string(text_.substr(origin.begin, origin.end - origin.begin))});
    }

    void write_notes() {
        if (prices_without_currency_) {
            const Remark& price = *prices_without_currency_;
            catalogue_.notes.push_back(problem(ProblemCode::list_price_without_currency, price.offset,
                                               price.where, {{"times", times_text(price.times)}}));
        }
        for (const Remark& remark : unknown_fields_) {
            const CatalogueField* meant = field_meant_by(remark.name);
            catalogue_.notes.push_back(
                problem(ProblemCode::list_field_unknown, remark.offset, remark.where,
                        {{"field", excerpt(remark.name)},
                         {"times", times_text(remark.times)},
                         {"known", meant ? "perhaps \"" + std::string(meant->name) + '"' : std::string()}}));
        }
        if (further_unknown_fields_ > 0) {
            catalogue_.notes.push_back({.code = ProblemCode::list_fields_unknown_more,
                                        .figures = {{"count", std::to_string(further_unknown_fields_)}},
                                        .where = {},
                                        .position = {}});
        }
    }

    Fault nothing_usable() const {
        if (!catalogue_.bikes.empty())
            return std::nullopt;
        const Problem& first = catalogue_.set_aside.front().problem;
        Problem cause = first;
        cause.position.reset();
        return Problem{.code = ProblemCode::file_no_usable_bike,
                       .figures = {{"count", std::to_string(count_)}, {"first", sentence(cause)}},
                       .where = first.where,
                       .position = first.position};
    }

    std::string_view text_;
    TextPositions positions_;
    Catalogue catalogue_;
    std::vector<Origin> origins_; ///< of the bikes, in the same order
    std::size_t count_ = 0;
    std::size_t first_too_many_ = 0;
    std::optional<FileFacts> facts_used_; ///< to read the bikes by

    std::vector<Remark> unknown_fields_;
    std::size_t further_unknown_fields_ = 0;
    std::optional<Remark> prices_without_currency_;
};

} // namespace

Result<Catalogue> read_json_catalogue(std::string_view utf8, std::vector<SetAside>* refused) {
    return CatalogueReader(utf8).read(refused);
}

} // namespace saddlerule
