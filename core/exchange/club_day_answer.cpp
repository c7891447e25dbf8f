#include "core/exchange/club_day_answer.h"

#include "core/exchange/assess_answer.h"
#include "core/exchange/bike_json.h"
#include "core/exchange/club_day_request.h"
#include "core/exchange/forecast_answer.h"
#include "core/exchange/json_writer.h"
#include "core/exchange/problem_answer.h"
#include "core/exchange/rider_request.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace saddlerule {
namespace {

class ClubDayWriter {
public:
    ClubDayWriter(const ClubDayRequest& request, const ClubDay& day)
        : request_(request), day_(day), named_(request.question.bikes.size()), riders_of_(named_.size()) {
        for (const SeatedRider& seated : day.seated) {
            riders_of_[seated.bike].push_back(seated.rider);
            named_[seated.bike] = true;
        }
    }

    std::string write() {
        json_.object([&] {
            json_.key("pairs").array_of(day_.seated, [&](const SeatedRider& seated) { write_pair(seated); });
            json_.key("left").array_of(day_.left, [&](const RiderLeft& left) { write_left(left); });
            json_.key("spare").array_of(day_.spare,
                                        [&](const SpareBike& spare) { json_.text(bike_id(spare.bike)); });
            json_.key("would_fit").array([&] {
                for (const SpareBike& spare : day_.spare) {
                    if (!spare.would_fit.empty())
                        write_would_fit(spare);
                }
            });
            json_.key("to_get").array_of(day_.to_get, [&](const BikeToGet& wanted) { write_to_get(wanted); });
            json_.key("riders").array([&] {
                for (std::size_t i = 0; i < request_.names.size(); ++i)
                    write_rider(i);
            });
            json_.key("bikes").array([&] {
                for (std::size_t i = 0; i < named_.size(); ++i) {
                    if (named_[i])
                        write_bike(request_.question.bikes[i]);
                }
            });
            json_.key("counts").object([&] {
                field(json_, "riders", request_.names.size());
                field(json_, "seated", day_.seated.size());
                field(json_, "left", day_.left.size());
                field(json_, "bikes", request_.question.bikes.size());
                field(json_, "absent",
                      std::count(request_.question.absent.begin(), request_.question.absent.end(), true));
                field(json_, "spare", day_.spare.size());
            });
        });
        return json_.take();
    }

private:
    const std::string& rider_id(std::size_t rider) const { return request_.names[rider].id; }
    /// Bikes that are named are described at the end.
    const std::string& bike_id(std::size_t bike) { return request_.question.bikes[bike].id; }
    const std::string& described(std::size_t bike) {
        named_[bike] = true;
        return bike_id(bike);
    }

    void write_riders(std::string_view name, const std::vector<std::size_t>& riders) {
        json_.key(name).array_of(riders, [&](std::size_t rider) { json_.text(rider_id(rider)); });
    }

    void write_pair(const SeatedRider& seated) {
        const Fit& fit = seated.fit;
        const SaddleSetting none{};
        const SaddleSetting& setting = fit.setting ? *fit.setting : none;
        json_.object([&] {
            field(json_, "rider", rider_id(seated.rider));
            field(json_, "bike", bike_id(seated.bike));
            field(json_, "round", seated.round + 1);
            field(json_, "locked", seated.locked);
            field(json_, "verdict", name_of(fit.verdict));
            number_field(json_, "fits_probability", fit.probability, 6);
            field(json_, "margin_mm", fit.margin);
            field(json_, "saddle_mm", fit.setting ? std::optional(setting.above_floor) : std::nullopt);
            field(json_, "above_lowest_mm", setting.above_lowest);
            field(json_, "below_highest_mm", setting.below_highest);
            field(json_, "stops", seated.checks.stops);
            field(json_, "looks", seated.checks.looks);
        });
    }

    void write_left(const RiderLeft& left) {
        json_.object([&] {
            field(json_, "rider", rider_id(left.rider));
            field(json_, "code", name_of(left.because));
            if (!left.bikes.empty()) {
                json_.key("bikes").array_of(left.bikes, [&](std::size_t bike) {
                    json_.object([&] {
                        field(json_, "bike", described(bike));
                        write_riders("by", riders_of_[bike]);
                    });
                });
            }
            if (left.because != LeftBecause::none_fits)
                return;
            json_.key("nearest");
            if (left.nearest)
                json_.text(described(left.nearest->bike));
            else
                json_.null();
            field(json_, "by_mm", left.nearest ? std::optional(left.nearest->by) : std::nullopt);
            json_.key("verdict");
            if (left.nearest)
                json_.text(name_of(left.nearest->verdict));
            else
                json_.null();
            json_.key("to_measure").array_of(left.to_measure, [&](std::size_t bike) {
                json_.text(described(bike));
            });
        });
    }

    void write_would_fit(const SpareBike& spare) {
        json_.object([&] {
            field(json_, "bike", described(spare.bike));
            write_riders("riders", spare.would_fit);
        });
    }

    void write_to_get(const BikeToGet& wanted) {
        json_.object([&] {
            field(json_, "kind", kind_name(wanted.kind));
            field(json_, "lowest_at_most_mm", wanted.lowest_at_most);
            field(json_, "highest_at_least_mm", wanted.highest_at_least);
            write_riders("seats", wanted.seats);
            field(json_, "bikes", wanted.bikes);
        });
    }

    void write_rider(std::size_t index) {
        const ClubRider& named = request_.names[index];
        const auto& today = day_.riders[index];
        json_.object([&] {
            field(json_, "id", named.id);
            field(json_, "measured", today.has_value());
            if (!today)
                return;
            json_.key("inseam_mm").object([&] {
                field(json_, "mean", today->inseam().mean);
                field(json_, "sd", today->inseam().sd);
            });
            field(json_, "basis", name_of(today->inseam().basis));
            field(json_, "stage", wire_name(stage_names, request_.riders[index]->stage));
            field(json_, "stage_assumed", named.stage_assumed);
            field(json_, "window_mm", today->window());
            field(json_, "notes", named.notes);
        });
    }

    void write_bike(const Bike& bike) {
        json_.object([&] {
            field(json_, "id", bike.id);
            field(json_, "name", bike.name);
            field(json_, "kind", kind_name(bike.kind));
            nominal_field(json_, "wheel_nominal_in", nominal_inches(bike.wheel));
            json_.key("span_mm").object([&] {
                field(json_, "lowest", bike.saddle_lowest);
                field(json_, "highest", bike.saddle_highest);
            });
        });
    }

    const ClubDayRequest& request_;
    const ClubDay& day_;
    std::vector<bool> named_; ///< bikes that the answer describes
    std::vector<std::vector<std::size_t>> riders_of_;
    JsonWriter json_;
};

} // namespace

std::string club_day(RequestFields& fields, std::span<const Bike> bikes) {
    const ClubDayRequest request = club_day_request(fields, bikes);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    // The question points into the request that it is part of.
    ClubQuestion question = request.question;
    question.riders = request.riders;
    return ClubDayWriter(request, plan_club_day(question)).write();
}

} // namespace saddlerule
