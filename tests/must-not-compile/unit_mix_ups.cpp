// Each numbered case mixes units and must be refused by the compiler. Case 0 is the same code done right and
// must compile: it shows that the others fail for the reason meant.
#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/base/quantities/money.h"

using namespace saddlerule;
using namespace saddlerule::literals;

#ifndef MIX_UP
#error "MIX_UP says which case to compile"
#endif

void use(CalendarDate today, Money price) {
#if MIX_UP == 0
    [[maybe_unused]] const Length inseam = Length::millimetres(495.0);
    [[maybe_unused]] const bool longer = inseam > 490_mm;
    [[maybe_unused]] const Days age = today - today;
    [[maybe_unused]] const bool same = price == price;
#elif MIX_UP == 1
    [[maybe_unused]] const Length inseam = 495.0; // a bare number has no unit
#elif MIX_UP == 2
    [[maybe_unused]] const bool longer = 495_mm > Mass::kilograms(6.4);
#elif MIX_UP == 3
    [[maybe_unused]] const auto sum = 495_mm + 5.0;
#elif MIX_UP == 4
    [[maybe_unused]] const auto area = 495_mm * 5_mm; // nothing here is an area
#elif MIX_UP == 5
    [[maybe_unused]] const auto sum = today + today; // dates have differences, not sums
#elif MIX_UP == 6
    [[maybe_unused]] const bool cheaper = price < price; // which currency?
#elif MIX_UP == 7
    [[maybe_unused]] const CalendarDate later = today.plus(30.0); // thirty of what?
#endif
}
