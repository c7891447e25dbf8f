// Wheel sizes: the ISO 5775 marking ("47-305") and the nominal inches that people say ("16").
#pragma once

#include "core/base/quantities/length.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace saddlerule {

/// A nominal wheel size with the bead seat diameter that it usually means.
struct NominalWheel {
    double inches;    ///< as people say it; 28 stands for 700C
    Length bead_seat; ///< ISO 5775-1, from memory
    bool usual;       ///< false for older wheels sold under the same nominal size
};

/// All known nominal sizes, small to large; older ones of the same name after the usual one.
std::span<const NominalWheel> nominal_wheels();

/// A bike's wheel, as far as it is known.
class Wheel {
public:
    /// Reads `47-305` (tyre width and bead seat diameter in mm, ISO 5775-1; `ETRTO 47-305`), a nominal size in
    /// inches (`16`, `16 in`, `27.5"`, `12 1/2`, `700C`), one with the tyre's width as tyres have it (`16 x 1.75`,
    /// `20 x 1 3/8`, `700x35C`), or a bead seat diameter alone (`305`). Nothing when it is none of these, or the
    /// diameter is outside 100 to 700 mm.
    static std::optional<Wheel> from_text(std::string_view text);

    /// The nominal size: as given, or that of the nearest known bead seat diameter within 10 mm. A marking of
    /// no common size has none.
    std::optional<double> nominal_inches() const { return nominal_inches_; }
    Length bead_seat() const { return bead_seat_; }
    /// Width of the tyre; absent when only the nominal size is known.
    std::optional<Length> tyre_width() const { return tyre_width_; }
    /// From axle to floor: half the bead seat diameter plus the tyre, whose height is taken as its width (ISO
    /// 5775-1 gives no height; common practice), 47 mm where it is not known.
    Length rolling_radius() const;
    /// As it was written.
    const std::string& text() const { return text_; }

private:
    Wheel() = default;
    bool read(std::string_view text);
    bool read_iso(std::string_view text);
    bool read_size_by_width(std::string_view text);
    bool read_size(std::string_view text);
    bool take(Length bead_seat, std::optional<Length> tyre_width);

    std::string text_;
    std::optional<double> nominal_inches_;
    Length bead_seat_;
    std::optional<Length> tyre_width_;
};

} // namespace saddlerule
