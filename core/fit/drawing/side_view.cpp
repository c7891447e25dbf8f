#include "core/fit/drawing/side_view.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {
namespace {

using namespace literals;

// The shape of an ordinary child's bike, chosen by eye: it fills in what was not measured, in drawings and
// nowhere else.
constexpr Angle usual_seat_tube_angle = Angle::degrees(70.0);
constexpr Angle head_angle = Angle::degrees(70.0);
constexpr Length usual_tyre = 47_mm;
constexpr Length post_above_collar = 60_mm; ///< collar to saddle top with the saddle at its lowest
constexpr Length usual_post_travel = 130_mm;
constexpr Length axle_behind_bracket = 95_mm; ///< more than the wheel's radius
constexpr Length fork_offset = 35_mm;
constexpr Length tyre_clearance = 30_mm;
constexpr Length head_length = 95_mm;
constexpr Length stem_rise = 60_mm;
constexpr Length grip_behind_head = 45_mm;

/// A point on a line that leans back by `angle` from `foot`, at height `y`.
PlanePoint on_leaning_line(PlanePoint foot, Angle angle, Length y) {
    return {foot.x - (y - foot.y) / std::tan(angle.in_radians()), y};
}

class Draughtsman {
public:
    Draughtsman(const Bike& bike, const Fit& fit, Length inseam) : bike_(bike) {
        place_wheels();
        place_seat();
        place_front();
        if (fit.setting) {
            view_.saddle_setting = saddle_at(fit.setting->above_floor);
            view_.foot = foot_on_floor(fit.setting->above_floor, inseam);
        }
    }

    SideView take() { return std::move(view_); }

private:
    template <typename Quantity>
    Quantity known_or(const std::optional<Quantity>& measured, Quantity usual, std::string_view field) {
        if (measured)
            return *measured;
        view_.assumed.push_back(field);
        return usual;
    }

    Length lowest_saddle() const {
        return bike_.saddle_lowest ? *bike_.saddle_lowest : *bike_.saddle_highest - usual_post_travel;
    }

    /// Bead seat for a bike whose wheel nobody wrote down: wheels grow with the saddle.
    Length usual_bead_seat() const { return std::clamp(0.62 * lowest_saddle(), 203_mm, 559_mm); }

    PlanePoint saddle_at(Length height) const {
        return on_leaning_line(view_.bottom_bracket, view_.seat_tube_angle, height);
    }

    void place_wheels() {
        Length bead_seat = usual_bead_seat();
        Length radius = bead_seat / 2.0 + usual_tyre;
        if (bike_.wheel) {
            bead_seat = bike_.wheel->bead_seat();
            radius = bike_.wheel->rolling_radius();
        } else {
            view_.assumed.emplace_back("wheel");
        }
        view_.rear_wheel = {{0_mm, radius}, radius, bead_seat / 2.0};

        // Small wheels have the bottom bracket above the axle, large ones below it.
        const Length usual_height = 0.6 * radius + 98_mm;
        view_.bottom_bracket = {radius + axle_behind_bracket,
                                known_or(bike_.bottom_bracket_height, usual_height, "bottom_bracket_height")};
        if (bike_.kind == BikeKind::pedal)
            view_.crank = known_or(bike_.crank, 0.52 * radius, "crank");

        const Length front_centre = 1.2 * radius + 215_mm;
        view_.front_wheel = {{view_.bottom_bracket.x + front_centre, radius}, radius, bead_seat / 2.0};
    }

    void place_seat() {
        view_.seat_tube_angle = Angle::degrees(known_or(
            bike_.seat_tube_angle_degrees, usual_seat_tube_angle.in_degrees(), "seat_tube_angle_deg"));
        if (bike_.saddle_lowest)
            view_.saddle_lowest = saddle_at(*bike_.saddle_lowest);
        else
            view_.assumed.emplace_back("saddle_lowest");
        if (bike_.saddle_highest)
            view_.saddle_highest = saddle_at(*bike_.saddle_highest);
        else
            view_.assumed.emplace_back("saddle_highest");
        const Length collar = std::max(lowest_saddle() - post_above_collar, view_.bottom_bracket.y + 40_mm);
        view_.seat_tube = {view_.bottom_bracket, saddle_at(collar)};
    }

    void place_front() {
        const PlanePoint axle = view_.front_wheel.axle;
        const double lean = head_angle.in_radians();
        // The steering axis passes behind the axle by the fork's offset.
        const PlanePoint axis_foot{axle.x - fork_offset / std::sin(lean), axle.y};
        const Length crown = axle.y + (view_.front_wheel.radius + tyre_clearance) * std::sin(lean);
        view_.head.from = on_leaning_line(axis_foot, head_angle, crown);
        view_.head.to = on_leaning_line(axis_foot, head_angle, crown + head_length);
        view_.grip = {view_.head.to.x - grip_behind_head,
                      std::max(view_.head.to.y + stem_rise, lowest_saddle() + stem_rise)};

        // The top tube passes through the standover height half-way along, where a child straddles it.
        const PlanePoint rear =
            on_leaning_line(view_.bottom_bracket, view_.seat_tube_angle, view_.seat_tube.to.y - 15_mm);
        const PlanePoint front = on_leaning_line(axis_foot, head_angle, view_.head.to.y - 20_mm);
        view_.top_tube = {rear, front};
        const Length sloping_middle = (rear.y + front.y) / 2.0;
        const Length shift = known_or(bike_.standover, sloping_middle, "standover") - sloping_middle;
        view_.top_tube.from = on_leaning_line(view_.bottom_bracket, view_.seat_tube_angle, rear.y + shift);
        view_.top_tube.to.y = std::min(front.y + shift, view_.head.to.y);
    }

    const Bike& bike_;
    SideView view_{};
};

} // namespace

FootOnFloor foot_on_floor(Length saddle, Length inseam_in_shoes) {
    // The saddle windows say it: starting is both feet flat, riding begins on tiptoes.
    const Length above = saddle - inseam_in_shoes;
    const Length to_the_digit = 0.5_mm; // a saddle set to an edge is at that edge
    const ClosedRange<Length> riding = window_offsets(Stage::riding, Confidence::usual).range;
    if (above <= window_offsets(Stage::starting, Confidence::usual).range.high() + to_the_digit)
        return FootOnFloor::flat;
    if (above <= riding.low() + to_the_digit)
        return FootOnFloor::ball;
    if (above <= riding.high() + to_the_digit)
        return FootOnFloor::tiptoe;
    return FootOnFloor::off_the_floor;
}

SideView side_view(const Bike& bike, const Fit& fit, Length inseam_in_shoes) {
    return Draughtsman(bike, fit, inseam_in_shoes).take();
}

} // namespace saddlerule
