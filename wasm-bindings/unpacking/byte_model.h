// ByteModel: what byte comes next, learnt from the bytes before it. It is PPMd of variant H, as 7-Zip packs with it: prediction by
// partial matching (J. G. Cleary and I. H. Witten, IEEE Trans. Commun. 32, 1984) with inherited information (D. Shkarin, "PPM:
// one step to practicality", Data Compression Conference 2002; both his and I. Pavlov's programs are in the public domain).
//
// A context is what the last bytes were, up to as many as the order says; it knows which bytes have followed it. Where the
// next one is none of them, the byte escapes to the context that is a byte shorter. What has to be the same as in the program
// that packs is every single count, so the figures here are that program's.
#pragma once

#include "wasm-bindings/unpacking/range_decoder.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>

namespace saddlerule::unpacking {

/// No more bytes than these are unpacked at a time.
inline constexpr std::size_t most_bytes = 1 << 19;

/// Some 12 MB, so there is one of it, in memory that is zeroed before anything runs.
class ByteModel {
public:
    static constexpr int lowest_order = 2;
    static constexpr int highest_order = 64;

    /// Forgets all it learnt. `order`: how many bytes the longest contexts have.
    void begin(int order);

    /// Takes the next byte from `packed`, and learns it. @returns nothing where `packed` is plainly damaged, or more than there
    /// is room for; `begin` has to come next then
    std::optional<std::uint8_t> next(RangeDecoder& packed);

private:
    /// What follows a byte in its context: nothing yet, a context by its place, or, less than zero, a place in the text behind
    /// which there was no context yet.
    using Successor = std::int32_t;

    /// A byte that followed a context, how often, and what its own successor is.
    struct State {
        std::uint8_t byte;
        std::uint8_t count;
        Successor successor;
    };

    struct Context {
        State only;            // its state while there is one
        std::uint32_t states;  // where they begin once there are more
        std::uint32_t shorter; // the context without its oldest byte; none for the shortest of all
        std::uint16_t known;   // how many states
        std::uint16_t total;   // the counts of them all, and of an escape
    };

    /// How likely escapes are in contexts of a kind.
    struct EscapeEstimate {
        std::uint16_t sum;
        std::uint8_t shift;
        std::uint8_t wait; // until it adapts more slowly

        /// What an escape counts now, which is taken off.
        std::uint32_t taken();
        /// There was no escape.
        void settle();
    };

    Context& at(Successor place) { return contexts_[static_cast<std::size_t>(place)]; }
    Context& shorter(const Context& context) { return contexts_[context.shorter]; }
    Successor place_of(const Context& context) const {
        return static_cast<Successor>(&context - contexts_.data());
    }

    /// For whatever one byte may bring along.
    bool has_room() const;

    // Each gives nothing where the byte escapes, or where it is no byte: `damaged_`.
    std::optional<std::uint8_t> only_one(RangeDecoder& packed);
    std::optional<std::uint8_t> one_of_known(RangeDecoder& packed);
    std::optional<std::uint8_t> one_of_shorter(RangeDecoder& packed);

    EscapeEstimate& escape_estimate(std::uint32_t hidden_states);
    void begin_hiding();
    void hide(Context& context);
    bool is_hidden(const State& state) const { return hidden_[state.byte] == hiding_; }

    void found(State* state);
    void count_in_shorter();
    void keep_counts_small();
    void halve_counts();
    int first_run() const { return -(order_ < 12 ? order_ : 12) - 1; }

    /// From the byte that was found to the contexts in which the next one is looked for.
    void pass_on();
    void learn();
    /// The context that the successor of `found_` stands for, which is a place in the text; made with all shorter ones that
    /// there are not yet.
    Context& context_behind_found();
    /// How often `byte` counts in a new context that is longer than this one.
    std::uint8_t inherited_count(Context& context, std::uint8_t byte);
    void add_found_to(Context& context, Successor behind);

    State* states(Context& context) { return context.known == 1 ? &context.only : &states_[context.states]; }
    State* state_of(Context& context, std::uint8_t byte);
    State& added_state(Context& context);
    std::uint32_t take_states(unsigned log);
    void leave_states(std::uint32_t place, unsigned log);

    int order_ = 0;
    bool damaged_ = false;
    int fallen_ = 0;            // how many bytes shorter than the order the longest context is
    int run_ = 0;               // of bytes that were foreseen, from less than zero
    bool foreseen_ = false;     // the last one, in a context where it was likely
    bool high_ = false;         // the byte before was a letter, mostly
    std::uint16_t escapes_ = 0; // to begin counting with in contexts with two states
    Context* longest_ = nullptr;
    Context* here_ = nullptr; // the one in which the byte is being found
    State* found_ = nullptr;

    static constexpr std::size_t most_contexts = 1 << 18;
    std::array<Context, most_contexts> contexts_;
    std::size_t context_count_ = 0;

    static constexpr std::size_t most_states = 1 << 19;
    std::array<State, most_states> states_;
    std::size_t state_count_ = 0;
    static constexpr unsigned most_states_log = 8;
    /// Places of states that nobody needs, by the logarithm of how many there are; the first of each has the next place.
    std::array<std::uint32_t, most_states_log + 1> free_states_;

    std::array<std::uint8_t, most_bytes> text_;
    std::size_t text_length_ = 0;

    std::array<std::array<std::uint16_t, 64>, 128> chances_of_only_;
    static constexpr std::size_t escape_kinds = 16;
    std::array<std::array<EscapeEstimate, escape_kinds>, 25> escape_estimates_;
    EscapeEstimate escape_of_all_;

    /// By byte: the number of the last search in which longer contexts had ruled it out.
    std::array<std::uint8_t, 256> hidden_;
    std::uint8_t hiding_ = 0;
};

} // namespace saddlerule::unpacking
