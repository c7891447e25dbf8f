#include "core/exchange/years_answer.h"

#include "core/base/sorting/sorting.h"
#include "core/exchange/catalogue_answer.h"
#include "core/exchange/check_json.h"
#include "core/exchange/json_writer.h"
#include "core/exchange/problem_answer.h"
#include "core/exchange/rider_request.h"
#include "core/exchange/taped_bikes.h"
#include "core/fit/cost/cost_of_fit.h"
#include "core/planning/years/family_plan.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>
#include <vector>

namespace saddlerule {
namespace {

const auto possible_months = *ClosedRange<double>::between(1.0, longest_horizon_months);
const auto possible_resale = *ClosedRange<double>::between(0.0, 1.0);
const auto possible_chance = *ClosedRange<double>::between(0.01, 0.999);
const auto possible_money = *ClosedRange<double>::between(0.0, 1e6);
const auto possible_bikes = *ClosedRange<double>::between(0.0, 20'000.0);
const auto possible_limit = *ClosedRange<double>::between(0.0, 3'600'000.0);

constexpr int usual_plan_months = 72;
constexpr double plan_holds_for = 0.8;
constexpr int months_between_measurements = 6;

/// Bikes by their id, in the order of `FamilyQuestion::bikes`.
class BikeNames {
public:
    explicit BikeNames(const std::vector<FamilyBike>& bikes) {
        for (std::size_t i = 0; i < bikes.size(); ++i)
            names_.emplace_back(bikes[i].bike->id, i);
        heap_sort(names_);
    }

    std::optional<std::size_t> find(std::string_view id) const {
        const auto found = std::lower_bound(names_.begin(), names_.end(), std::pair(id, std::size_t{0}));
        if (found == names_.end() || found->first != id)
            return std::nullopt;
        return found->second;
    }

private:
    std::vector<std::pair<std::string_view, std::size_t>> names_;
};

/// The currency that plans count in: the request's, the list's, or the one that most bikes are priced in.
std::optional<Currency> currency_of(RequestFields& fields, const Catalogue* list,
                                    const std::vector<FamilyBike>& bikes) {
    if (const auto code = fields.optional_text("currency")) {
        const auto currency = Currency::from_code(*code);
        if (!currency)
            fields.report("currency", ProblemCode::request_value_unknown,
                          {{"value", *code}, {"known", ProblemWord::currency_codes}});
        return currency;
    }
    if (list != nullptr && list->currency)
        return list->currency;
    std::vector<std::pair<Currency, int>> counts;
    for (const FamilyBike& bike : bikes) {
        if (!bike.bike->price)
            continue;
        const Currency currency = bike.bike->price->currency();
        const auto found = std::find_if(counts.begin(), counts.end(),
                                        [&](const auto& one) { return one.first == currency; });
        if (found == counts.end())
            counts.emplace_back(currency, 1);
        else
            ++found->second;
    }
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    return most == counts.end() ? std::nullopt : std::optional(most->first);
}

struct YearsRequest {
    FamilyQuestion question;
    TapedBikes taped;
    std::vector<std::string> ids; ///< of the riders
    std::optional<Currency> currency;
    std::optional<double> limit_ms;
    std::vector<std::size_t> other_currency; ///< bikes whose price does not count
    std::vector<bool> marked;                ///< bikes that the request says something of
};

/// What a request says of bikes by their ids. A family's marks may be of bikes of another list.
class BikeMarks {
public:
    BikeMarks(RequestFields& fields, const BikeNames& names)
        : names_(names), skip_unknown_(fields.optional_flag("skip_unknown").value_or(false)) {}

    /// Nothing: there is no such bike.
    std::optional<std::size_t> find(RequestFields& fields, const std::string& place,
                                    const std::string& id) const {
        const auto bike = names_.find(id);
        if (!bike && !skip_unknown_)
            fields.report(place, ProblemCode::request_bike_unknown, {{"id", id}});
        return bike;
    }

    /// Sets the flag of each bike that the field names.
    void read_ids(RequestFields& fields, const char* name, bool FamilyBike::*flag,
                  YearsRequest& request) const {
        const auto ids = fields.optional_texts(name);
        if (!ids)
            return;
        for (std::size_t i = 0; i < ids->size(); ++i) {
            const std::string place = std::string(name) + "[" + std::to_string(i) + "]";
            const auto found = find(fields, place, (*ids)[i]);
            if (!found)
                continue;
            FamilyBike& bike = request.question.bikes[*found];
            bike.*flag = true;
            request.marked[*found] = true;
            if (bike.kept && bike.out)
                fields.report(place, ProblemCode::request_bike_kept_and_out, {{"id", bike.bike->id}});
        }
    }

private:
    const BikeNames& names_;
    bool skip_unknown_;
};

void read_rider(RequestFields& fields, const JsonValue& item, std::size_t place, YearsRequest& request) {
    RequestFields rider_fields(item, fields.path_of("riders[" + std::to_string(place) + "]"));
    const auto id = rider_fields.optional_text("id");
    rider_fields.require(id.has_value(), "id", ProblemWord::text_in_double_quotes);
    Rider rider = required_rider(rider_fields, request.question.today);
    rider.pedals_from = rider_fields.optional_day_or_month("pedals_from");
    if (id && std::find(request.ids.begin(), request.ids.end(), *id) != request.ids.end())
        rider_fields.report("id", ProblemCode::request_given_twice, {{"value", *id}});
    if (auto problem = rider_fields.finish())
        fields.report(*std::move(problem));
    request.ids.push_back(id.value_or(""));
    request.question.riders.push_back(std::move(rider));
}

void read_riders(RequestFields& fields, YearsRequest& request) {
    const JsonValue* riders = fields.optional("riders");
    fields.require(riders != nullptr, "riders", ProblemWord::list_of_riders);
    if (riders == nullptr)
        return;
    if (riders->kind != JsonValue::Kind::array) {
        fields.report("riders", ProblemCode::request_field_wrong_type,
                      {{"found", riders->kind_name()}, {"kind", ProblemWord::list_of_riders}});
        return;
    }
    if (riders->items.empty() || riders->items.size() > most_rota_riders) {
        fields.report(
            "riders", ProblemCode::request_value_out_of_range,
            {{"value", Number{.value = static_cast<double>(riders->items.size()), .unit = "riders"}},
             {"low", 1},
             {"high", most_rota_riders}});
        return;
    }
    for (std::size_t place = 0; place < riders->items.size(); ++place)
        read_rider(fields, riders->items[place], place, request);
}

void read_prices(RequestFields& fields, const BikeMarks& marks, YearsRequest& request) {
    const JsonValue* prices = fields.optional("prices");
    if (prices == nullptr)
        return;
    RequestFields price_fields(*prices, fields.path_of("prices"));
    if (prices->kind == JsonValue::Kind::object) {
        for (const JsonMember& member : prices->members) {
            const auto price = price_fields.optional_number(member.name, possible_money);
            const auto bike = marks.find(price_fields, member.name, member.name);
            if (bike && price) {
                request.question.bikes[*bike].price = Amount::main_units(*price);
                request.marked[*bike] = true;
            }
        }
    }
    if (auto problem = price_fields.finish())
        fields.report(*std::move(problem));
}

int months_to(CalendarDate today, CalendarDate day) {
    return 12 * (day.year() - today.year()) + static_cast<int>(day.month()) - static_cast<int>(today.month());
}

void read_limits(RequestFields& fields, FamilyQuestion& question) {
    question.months = static_cast<int>(
        fields.optional_number("horizon_months", possible_months).value_or(usual_plan_months));
    question.resale_share =
        fields.optional_number("resale_share", possible_resale).value_or(usual_resale_share);
    question.least_chance = fields.optional_number("min_probability", possible_chance).value_or(surely);
    if (const auto most = fields.optional_number("max_per_year", possible_money))
        question.most_per_year = Amount::main_units(*most);
    if (const auto from = fields.optional_day_or_month("buy_from"))
        question.buy_from = std::max(months_to(question.today, *from), 0);
    const auto kept = std::count_if(question.bikes.begin(), question.bikes.end(),
                                    [](const FamilyBike& bike) { return bike.owned && bike.kept; });
    if (const auto most = fields.optional_number("max_bikes", possible_bikes)) {
        question.most_bikes = static_cast<int>(*most);
        if (*question.most_bikes < kept)
            fields.report("max_bikes", ProblemCode::request_value_out_of_range,
                          {{"value", *question.most_bikes},
                           {"low", Number{.value = static_cast<double>(kept), .unit = "kept_bikes"}},
                           {"high", Number{possible_bikes.high()}}});
    }
}

YearsRequest read_request(RequestFields& fields, std::string_view request_text, const Catalogue* list,
                          std::span<const Bike> bikes) {
    YearsRequest request{.question = {.today = fields.required_day("today"),
                                      .riders = {},
                                      .bikes = {},
                                      .most_per_year = {},
                                      .most_bikes = {}},
                         .taped = {},
                         .ids = {},
                         .currency = {},
                         .limit_ms = {},
                         .other_currency = {},
                         .marked = {}};
    FamilyQuestion& question = request.question;
    read_riders(fields, request);
    request.taped = taped_bikes(fields, request_text, list);
    question.bikes.reserve(bikes.size() + request.taped.bikes.size());
    for (const Bike& bike : bikes)
        question.bikes.push_back({.bike = &bike, .price = {}});
    for (const Bike& bike : request.taped.bikes)
        question.bikes.push_back({.bike = &bike, .price = {}});
    request.currency = currency_of(fields, list, question.bikes);
    for (std::size_t i = 0; i < question.bikes.size(); ++i) {
        const auto& price = question.bikes[i].bike->price;
        if (price && request.currency && price->currency() == *request.currency)
            question.bikes[i].price = price->without_currency();
        else if (price)
            request.other_currency.push_back(i);
    }
    const BikeNames names(question.bikes);
    request.marked.resize(question.bikes.size());
    const BikeMarks marks(fields, names);
    read_prices(fields, marks, request);
    marks.read_ids(fields, "owned", &FamilyBike::owned, request);
    marks.read_ids(fields, "keep", &FamilyBike::kept, request);
    marks.read_ids(fields, "not", &FamilyBike::out, request);
    read_limits(fields, question);
    request.limit_ms = fields.optional_number("limit_ms", possible_limit);
    return request;
}

class YearsWriter {
public:
    YearsWriter(const YearsRequest& request, const FamilyPlan& plan) : request_(request), plan_(plan) {}

    std::string written() {
        json_.object([&] {
            json_.key("riders").array([&] {
                for (std::size_t rider = 0; rider < plan_.riders.size(); ++rider)
                    write_rider(rider);
            });
            json_.key("purchases").array_of(plan_.purchases, [&](const PlannedPurchase& purchase) {
                json_.object([&] {
                    field(json_, "bike", id_of(purchase.bike));
                    month_field("on", purchase.month);
                    money_field("price", request_.question.bikes[purchase.bike].price->in_main_units());
                    look_for_field("look_for", purchase.look_for);
                });
            });
            json_.key("sales").array_of(plan_.sales, [&](const PlannedSale& sale) {
                json_.object([&] {
                    field(json_, "bike", id_of(sale.bike));
                    month_field("on", sale.month);
                    money_field("back", sale.back.in_main_units());
                    field(json_, "at_the_end", sale.month == request_.question.months);
                });
            });
            json_.key("cost").object([&] {
                money_field("net", thousandths(plan_.net_thousandths));
                if (request_.currency)
                    field(json_, "currency", request_.currency->code());
                else
                    json_.key("currency").null();
            });
            field(json_, "gap_months", plan_.value.gap_months);
            field(json_, "months_with_bike", months_with_bike());
            field(json_, "changes", plan_.value.changes);
            number_field(json_, "chance_months", static_cast<double>(plan_.value.chances) / 1e6, 6);
            write_proof();
            write_doubt();
            ids_field("not_measured", plan_.not_measured);
            ids_field("other_currency", request_.other_currency);
            write_bikes();
            field(json_, "set_aside", request_.taped.set_aside);
        });
        return json_.take();
    }

private:
    static double thousandths(std::int64_t value) { return static_cast<double>(value) / 1000.0; }

    const std::string& id_of(std::size_t bike) const { return request_.question.bikes[bike].bike->id; }

    std::string month_text(int month) const {
        const int months = 12 * request_.question.today.year() +
                           static_cast<int>(request_.question.today.month()) - 1 + month;
        const int of_year = months % 12 + 1;
        return std::to_string(months / 12) + (of_year < 10 ? "-0" : "-") + std::to_string(of_year);
    }
    void month_field(std::string_view name, int month) { field(json_, name, month_text(month)); }
    void money_field(std::string_view name, double amount) { number_field(json_, name, amount, 3); }
    void ids_field(std::string_view name, const std::vector<std::size_t>& bikes) {
        json_.key(name).array_of(bikes, [&](std::size_t bike) { json_.text(id_of(bike)); });
    }

    void write_look_for(const LookFor& wanted) {
        json_.object([&] {
            field(json_, "lowest_at_most_mm", wanted.lowest_at_most);
            field(json_, "highest_at_least_mm", wanted.highest_at_least);
            month_field("by", wanted.by);
            month_field("until", wanted.until);
            field(json_, "kind", wanted.pedals ? "pedal" : "balance");
        });
    }
    void look_for_field(std::string_view name, const LookFor& wanted) {
        json_.key(name);
        write_look_for(wanted);
    }

    void write_gap(const PlannedGap& gap) {
        json_.object([&] {
            month_field("from", gap.from);
            month_field("to", gap.to);
            look_for_field("look_for", gap.look_for.front());
            json_.key("then").array([&] {
                for (std::size_t i = 1; i < gap.look_for.size(); ++i)
                    write_look_for(gap.look_for[i]);
            });
        });
    }

    void write_stretch(const PlannedStretch& stretch) {
        constexpr std::array<std::string_view, 3> hows{"bought", "owned", "handed_on"};
        json_.object([&] {
            month_field("from", stretch.from);
            month_field("to", stretch.to);
            field(json_, "bike", id_of(stretch.bike));
            field(json_, "how", hows[static_cast<std::size_t>(stretch.how)]);
            json_.key("handed_from");
            if (stretch.handed_from)
                json_.text(request_.ids[*stretch.handed_from]);
            else
                json_.null();
            json_.key("saddle_mm").array([&] {
                write(json_, stretch.saddle_at_start);
                write(json_, stretch.saddle_at_end);
            });
            number_field(json_, "least_probability", stretch.least_chance, 6);
            json_.key("checks").array([&] {
                for (const CheckResult& result : stretch.checks) {
                    if (result.finding.state == CheckState::look ||
                        result.finding.state == CheckState::unknown)
                        write(json_, result);
                }
            });
        });
    }

    void write_rider(std::size_t rider) {
        const PlannedRider& planned = plan_.riders[rider];
        json_.object([&] {
            field(json_, "id", request_.ids[rider]);
            json_.key("stretches").array_of(planned.stretches, [&](const PlannedStretch& one) {
                write_stretch(one);
            });
            json_.key("gaps").array_of(planned.gaps, [&](const PlannedGap& gap) { write_gap(gap); });
            json_.key("not_yet");
            if (planned.not_yet)
                write_gap(*planned.not_yet);
            else
                json_.null();
            int months = 0;
            for (const PlannedStretch& stretch : planned.stretches)
                months += stretch.to - stretch.from;
            money_field("net", planned.share_of_cost.in_main_units());
            number_field(
                json_, "net_a_month",
                months > 0 ? std::optional(planned.share_of_cost.in_main_units() / months) : std::nullopt, 3);
        });
    }

    long long months_with_bike() const {
        long long months = 0;
        for (const PlannedRider& rider : plan_.riders) {
            for (const PlannedStretch& stretch : rider.stretches)
                months += stretch.to - stretch.from;
        }
        return months;
    }

    void write_proof() {
        json_.key("proof").object([&] {
            field(json_, "exact", plan_.exact);
            field(json_, "least_gap_months", plan_.least.gap_months);
            money_field("least_net", thousandths(plan_.least.net));
        });
    }

    /// Where the plan holds to the end there is no month until which it does.
    void write_doubt() {
        int month = 0;
        const auto months = static_cast<int>(plan_.holds.size());
        while (month < months && plan_.holds[static_cast<std::size_t>(month)] >= plan_holds_for)
            ++month;
        json_.key("doubt").object([&] {
            json_.key("holds_until");
            if (month < months)
                json_.text(month_text(month));
            else
                json_.null();
            number_field(json_, "share", plan_holds_for, 2);
            json_.key("by_year").array([&] {
                for (int after = 11; after < months; after += 12) {
                    json_.object([&] {
                        month_field("month", after);
                        number_field(json_, "share", plan_.holds[static_cast<std::size_t>(after)], 3);
                    });
                }
            });
            month_field("measure_again", months_between_measurements);
        });
    }

    /// The bikes of the plan, and those that the request marks, in the order of the list.
    void write_bikes() {
        std::vector<bool> named = request_.marked;
        for (const PlannedRider& rider : plan_.riders) {
            for (const PlannedStretch& stretch : rider.stretches)
                named[stretch.bike] = true;
        }
        json_.key("bikes").array([&] {
            for (std::size_t place = 0; place < named.size(); ++place) {
                if (named[place])
                    write_bike(request_.question.bikes[place]);
            }
        });
    }

    void write_bike(const FamilyBike& bike) {
        json_.object([&] {
            field(json_, "id", bike.bike->id);
            field(json_, "name", bike.bike->name);
            number_field(json_, "price",
                         bike.price ? std::optional(bike.price->in_main_units()) : std::nullopt, 3);
        });
    }

    const YearsRequest& request_;
    const FamilyPlan& plan_;
    JsonWriter json_;
};

} // namespace

std::string years_answer(RequestFields& fields, std::string_view request_text, const Catalogue* list,
                         std::span<const Bike> bikes, const MayGoOn& may_go_on) {
    YearsRequest request = read_request(fields, request_text, list, bikes);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    RotaEffort effort;
    // Without a limit of time the same steps are taken on every machine.
    if (request.limit_ms && may_go_on) {
        effort.most_width = 4 * effort.most_width;
        effort.keep_going = [&] { return may_go_on(*request.limit_ms); };
    }
    const FamilyPlan plan = plan_family(request.question, effort);
    return YearsWriter(request, plan).written();
}

} // namespace saddlerule
