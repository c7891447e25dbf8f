// Riders of every stage and confidence, measured or guessed, with and without age and sex, for properties that hold for all.
#pragma once

#include "core/fit/rider/rider.h"

#include <vector>

namespace saddlerule::testing {

inline std::vector<Rider> invented_riders(CalendarDate today) {
    std::vector<Rider> riders;
    for (const Stage stage : {Stage::gliding, Stage::side_wheels, Stage::starting, Stage::riding}) {
        for (const Confidence confidence : {Confidence::wary, Confidence::usual, Confidence::bold}) {
            for (const double inseam : {380.0, 470.0, 530.0, 640.0}) {
                for (const bool told : {true, false}) {
                    Rider rider;
                    rider.stage = stage;
                    rider.confidence = confidence;
                    rider.readings.push_back({.on = today.plus_months(told ? 0 : -3),
                                              .inseam = Length::millimetres(inseam),
                                              .shoes = told});
                    if (told) {
                        rider.sex = Sex::boy;
                        rider.born = today.plus_months(-static_cast<int>(inseam - 260.0) / 4);
                    } else if (inseam > 600.0) {
                        rider.riding_from = today.plus(Days(9.0));
                    }
                    riders.push_back(rider);
                }
            }
            Rider guessed;
            guessed.stage = stage;
            guessed.confidence = confidence;
            guessed.born = today.plus_months(-63);
            riders.push_back(guessed);
        }
    }
    return riders;
}

} // namespace saddlerule::testing
