// List slips: figures that look like a slip of the hand, each with the change that would mend it. Nothing is
// changed here.
#pragma once

#include "core/base/outcomes/problem.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/keeping/entry_text.h"
#include "core/lists/keeping/free_ids.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace saddlerule {

/// The kinds of slips are the problem codes slip_*.
inline constexpr std::size_t slip_kinds = static_cast<std::size_t>(ProblemCode::slip_unlike_others) -
                                          static_cast<std::size_t>(ProblemCode::slip_unit) + 1;
constexpr ProblemCode slip_code(std::size_t kind) {
    return static_cast<ProblemCode>(static_cast<std::size_t>(ProblemCode::slip_unit) + kind);
}
constexpr std::size_t slip_kind(ProblemCode code) {
    return static_cast<std::size_t>(code) - static_cast<std::size_t>(ProblemCode::slip_unit);
}

struct Slip {
    Problem problem;
    /// The cells of the entry that would mend it; none where only measuring again can.
    std::vector<FieldCell> repair;
};

/// An entry with slips, and of which kinds they are: enough to count and to find them, at a few bytes each.
struct SlipMark {
    std::uint32_t number;
    std::uint8_t kinds; ///< a bit for each

    bool has(ProblemCode code) const { return (kinds >> slip_kind(code) & 1U) != 0; }
};

/// An entry of the list, or one that is to take the place of one.
struct SlipQuestion {
    std::string_view source = {};
    const Bike* bike = nullptr;       ///< what was read of it, or null with the
    const Problem* problem = nullptr; ///< problem that had it set aside
    const Bike* replaced = nullptr;   ///< itself, or the one of the list that it would replace, if any
};

/// Looks for slips in one list, which must outlive this and not change.
class SlipFinder {
public:
    explicit SlipFinder(const KeptList& list) : list_(list), free_ids_(list) {}

    /// All entries with slips, by number.
    std::vector<SlipMark> find();

    std::vector<Slip> slips_of(const SlipQuestion& entry);
    std::vector<Slip> slips_of(std::size_t number) { return slips_of(question(number)); }

private:
    /// A bike among others of its wheel size.
    struct Peer {
        double inches;
        BikeKind kind;
        Length lowest;

        friend auto operator<=>(const Peer&, const Peer&) = default;
    };

    SlipQuestion question(std::size_t number) const;
    std::optional<Length> distance_from_others(const SlipQuestion& entry);

    const KeptList& list_;
    FreeIds free_ids_;
    std::optional<std::vector<Peer>>
        peers_; ///< sorted; there once somebody asked, and empty in a list without wheels
};

} // namespace saddlerule
