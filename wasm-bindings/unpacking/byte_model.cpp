#include "wasm-bindings/unpacking/byte_model.h"

#include <algorithm>
#include <utility>

namespace saddlerule::unpacking {

namespace {

// All figures are those of the program that packs.
constexpr std::uint8_t most_counted = 124;
constexpr std::uint8_t count_step = 4;
constexpr unsigned chance_bits = 14;
constexpr unsigned adapting_bits = 7;

constexpr std::array<std::uint16_t, 8> first_escapes = {0x3CDD, 0x1F3F, 0x59BF, 0x48F3,
                                                        0x64A1, 0x5ABC, 0x6632, 0x6051};
constexpr std::array<std::uint8_t, 16> escapes_by_chance = {25, 14, 9, 7, 5, 5, 4, 4, 4, 3, 3, 3, 2, 2, 2, 2};

/// Kinds of contexts by how many states they have: finer, the fewer.
constexpr std::array<std::uint8_t, 256> make_kinds_by_states() {
    std::array<std::uint8_t, 256> kinds{};
    std::uint8_t kind = 0;
    for (std::size_t states = 0, left = 1; states < kinds.size(); ++states) {
        kinds[states] = kind;
        if (states < 3)
            kind = static_cast<std::uint8_t>(states + 1);
        else if (--left == 0)
            left = static_cast<std::size_t>(++kind) - 2;
    }
    return kinds;
}
constexpr auto kinds_by_states = make_kinds_by_states();

std::size_t coarse_kind(std::uint32_t states) {
    return states == 1 ? 0 : states == 2 ? 2 : states <= 11 ? 4 : 6;
}

bool is_high(std::uint8_t byte) {
    return byte >= 64;
}

/// By how much a chance moves.
std::uint16_t share(std::uint16_t chance) {
    return static_cast<std::uint16_t>((chance + (1U << (adapting_bits - 2))) >> adapting_bits);
}

} // namespace

void ByteModel::begin(int order) {
    order_ = std::clamp(order, lowest_order, highest_order);
    damaged_ = false;
    fallen_ = order_;
    run_ = first_run();
    foreseen_ = false;
    escapes_ = 0;

    state_count_ = 0;
    free_states_.fill(0);
    take_states(0); // the place that means none
    text_length_ = 0;
    context_count_ = 1;
    Context& shortest = contexts_[context_count_++];
    shortest = {.only = {}, .states = take_states(8), .shorter = 0, .known = 256, .total = 257};
    for (std::size_t byte = 0; byte < 256; ++byte)
        states(shortest)[byte] = {static_cast<std::uint8_t>(byte), 1, 0};
    longest_ = here_ = &shortest;
    found_ = states(shortest);

    for (std::size_t count = 0; count < chances_of_only_.size(); ++count)
        for (std::size_t kind = 0; kind < chances_of_only_[count].size(); ++kind)
            chances_of_only_[count][kind] =
                static_cast<std::uint16_t>((1U << chance_bits) - first_escapes[kind % 8] / (count + 2));
    for (std::size_t kind = 0; kind < escape_estimates_.size(); ++kind)
        escape_estimates_[kind].fill(
            {static_cast<std::uint16_t>((5 * kind + 10) << 3), adapting_bits - 4, 4});
    escape_of_all_ = {0, adapting_bits, 64};
}

std::optional<std::uint8_t> ByteModel::next(RangeDecoder& packed) {
    if (!has_room())
        return std::nullopt;
    std::optional<std::uint8_t> byte = here_->known == 1 ? only_one(packed) : one_of_known(packed);
    while (!byte && !damaged_)
        byte = one_of_shorter(packed);
    return byte;
}

bool ByteModel::has_room() const {
    constexpr std::size_t most_new_states = (highest_order + 1) << most_states_log;
    return text_length_ < text_.size() && context_count_ + highest_order < contexts_.size() &&
           state_count_ + most_new_states < states_.size();
}

std::optional<std::uint8_t> ByteModel::one_of_known(RangeDecoder& packed) {
    State* state = states(*here_);
    State* const end = state + here_->known;
    const std::uint32_t place = packed.place(here_->total);
    if (place < state->count) {
        packed.take(0, state->count);
        const std::uint8_t byte = state->byte;
        foreseen_ = 2 * state->count > here_->total;
        run_ += foreseen_ ? 1 : 0;
        found(state);
        keep_counts_small();
        pass_on();
        return byte;
    }
    foreseen_ = false;
    std::uint32_t below = state->count;
    while (++state != end) {
        if (place - below < state->count) {
            packed.take(below, state->count);
            const std::uint8_t byte = state->byte;
            found(state);
            if (state->count > state[-1].count) {
                std::swap(state[0], state[-1]);
                --found_;
                keep_counts_small();
            }
            pass_on();
            return byte;
        }
        below += state->count;
    }
    damaged_ = place >= here_->total;
    if (damaged_)
        return std::nullopt;
    packed.take(below, here_->total - below);
    high_ = is_high(found_->byte);
    begin_hiding();
    hide(*here_);
    return std::nullopt;
}

std::optional<std::uint8_t> ByteModel::only_one(RangeDecoder& packed) {
    State& state = here_->only;
    high_ = is_high(found_->byte);
    const std::size_t kind = (foreseen_ ? 1U : 0U) + coarse_kind(shorter(*here_).known) + (high_ ? 8U : 0U) +
                             (is_high(state.byte) ? 16U : 0U) + (run_ < 0 ? 32U : 0U);
    std::uint16_t& chance = chances_of_only_[state.count - 1U][kind];
    const std::uint16_t moved = share(chance);
    if (packed.first_of_two(chance, chance_bits)) {
        chance = static_cast<std::uint16_t>(chance - moved + (1U << adapting_bits));
        found_ = &state;
        const std::uint8_t byte = state.byte;
        if (state.count < 128)
            ++state.count;
        foreseen_ = true;
        ++run_;
        pass_on();
        return byte;
    }
    chance = static_cast<std::uint16_t>(chance - moved);
    escapes_ = escapes_by_chance[chance >> (chance_bits - 4)];
    foreseen_ = false;
    begin_hiding();
    hide(*here_);
    return std::nullopt;
}

std::optional<std::uint8_t> ByteModel::one_of_shorter(RangeDecoder& packed) {
    const std::uint32_t hidden_states = here_->known;
    do {
        // What escapes from the shortest context could be no byte.
        damaged_ = here_->shorter == 0;
        if (damaged_)
            return std::nullopt;
        ++fallen_;
        here_ = &shorter(*here_);
    } while (here_->known == hidden_states);

    State* const begin = states(*here_);
    State* const end = begin + here_->known;
    std::uint32_t seen = 0;
    for (const State* state = begin; state != end; ++state)
        if (!is_hidden(*state))
            seen += state->count;
    EscapeEstimate& estimate = escape_estimate(hidden_states);
    const std::uint32_t total = seen + estimate.taken();
    const std::uint32_t place = packed.place(total);
    damaged_ = place >= total;
    if (damaged_)
        return std::nullopt;
    if (place >= seen) {
        packed.take(seen, total - seen);
        estimate.sum = static_cast<std::uint16_t>(estimate.sum + total);
        hide(*here_);
        return std::nullopt;
    }

    State* state = begin;
    std::uint32_t below = 0;
    for (;; ++state) {
        if (is_hidden(*state))
            continue;
        if (place - below < state->count)
            break;
        below += state->count;
    }
    packed.take(below, state->count);
    estimate.settle();
    const std::uint8_t byte = state->byte;
    found(state);
    keep_counts_small();
    run_ = first_run();
    learn();
    return byte;
}

std::uint32_t ByteModel::EscapeEstimate::taken() {
    const auto part = static_cast<std::uint16_t>(sum >> shift);
    sum = static_cast<std::uint16_t>(sum - part);
    return part == 0 ? 1 : part;
}

void ByteModel::EscapeEstimate::settle() {
    if (shift == adapting_bits || --wait > 0)
        return;
    sum = static_cast<std::uint16_t>(sum << 1);
    wait = static_cast<std::uint8_t>(3U << shift++);
}

ByteModel::EscapeEstimate& ByteModel::escape_estimate(std::uint32_t hidden_states) {
    const std::uint32_t known = here_->known;
    if (known == 256)
        return escape_of_all_;
    const std::uint32_t open = known - hidden_states;
    const std::size_t kind = (open + known < shorter(*here_).known ? 1U : 0U) +
                             (here_->total < 11 * known ? 2U : 0U) + (hidden_states > open ? 4U : 0U) +
                             (high_ ? 8U : 0U);
    return escape_estimates_[kinds_by_states[open - 1]][kind];
}

void ByteModel::begin_hiding() {
    if (++hiding_ != 0)
        return;
    hidden_.fill(0);
    hiding_ = 1;
}

void ByteModel::hide(Context& context) {
    const State* const begin = states(context);
    for (const State* state = begin; state != begin + context.known; ++state)
        hidden_[state->byte] = hiding_;
}

void ByteModel::found(State* state) {
    found_ = state;
    here_->total = static_cast<std::uint16_t>(here_->total + count_step);
    state->count = static_cast<std::uint8_t>(state->count + count_step);
}

void ByteModel::keep_counts_small() {
    if (found_->count > most_counted)
        halve_counts();
}

void ByteModel::halve_counts() {
    State* const begin = states(*here_);
    const std::uint32_t known = here_->known;
    for (; found_ != begin; --found_)
        std::swap(found_[0], found_[-1]);

    // What the bytes leave of the total are the escapes.
    std::uint32_t escapes = here_->total;
    const unsigned rounded_up = fallen_ == 0 ? 0 : 1;
    std::uint32_t total = 0;
    begin->count = static_cast<std::uint8_t>(begin->count + count_step);
    escapes += count_step;
    for (State* state = begin; state != begin + known; ++state) {
        escapes -= state->count;
        state->count = static_cast<std::uint8_t>((state->count + rounded_up) >> 1);
        total += state->count;
        for (State* moved = state; moved != begin && moved->count > moved[-1].count; --moved)
            std::swap(moved[0], moved[-1]);
    }

    std::uint32_t left = known;
    for (; begin[left - 1].count == 0; --left)
        ++escapes;
    here_->known = static_cast<std::uint16_t>(left);
    if (left == 1 && known > 1) {
        here_->only = *begin;
        std::uint8_t& count = here_->only.count;
        do {
            count = static_cast<std::uint8_t>(count - (count >> 1));
            escapes >>= 1;
        } while (escapes > 1);
        found_ = &here_->only;
        return;
    }
    here_->total = static_cast<std::uint16_t>(total + escapes - (escapes >> 1));
    found_ = begin;
}

void ByteModel::pass_on() {
    if (fallen_ == 0 && found_->successor > 0)
        here_ = longest_ = &at(found_->successor);
    else
        learn();
}

void ByteModel::learn() {
    if (found_->count < most_counted / 4 && here_->shorter != 0)
        count_in_shorter();
    if (fallen_ == 0) {
        Context& next = context_behind_found();
        found_->successor = place_of(next);
        here_ = longest_ = &next;
        return;
    }

    text_[text_length_++] = found_->byte;
    Successor behind = -static_cast<Successor>(text_length_);
    Context* next = here_;
    if (found_->successor == 0) {
        found_->successor = behind;
    } else {
        next = found_->successor > 0 ? &at(found_->successor) : &context_behind_found();
        if (--fallen_ == 0) {
            behind = place_of(*next);
            if (longest_ != here_)
                --text_length_;
        }
    }
    for (Context* context = longest_; context != here_; context = &shorter(*context))
        add_found_to(*context, behind);
    here_ = longest_ = next;
}

void ByteModel::count_in_shorter() {
    Context& context = shorter(*here_);
    State* state = state_of(context, found_->byte);
    if (context.known == 1) {
        if (state->count < 32)
            ++state->count;
        return;
    }
    if (state != states(context) && state->count >= state[-1].count) {
        std::swap(state[0], state[-1]);
        --state;
    }
    if (state->count >= most_counted - 9)
        return;
    state->count = static_cast<std::uint8_t>(state->count + 2);
    context.total = static_cast<std::uint16_t>(context.total + 2);
}

ByteModel::Context& ByteModel::context_behind_found() {
    std::array<State*, highest_order + 1> waiting;
    std::size_t count = 0;
    if (fallen_ != 0)
        waiting[count++] = found_;
    const Successor text = found_->successor;
    Context* context = here_;
    while (context->shorter != 0) {
        context = &shorter(*context);
        State* const state = state_of(*context, found_->byte);
        if (state->successor != text) {
            context = &at(state->successor);
            if (count == 0)
                return *context;
            break;
        }
        waiting[count++] = state;
    }

    const std::uint8_t byte = text_[static_cast<std::size_t>(-text)];
    const State inherited = {byte, inherited_count(*context, byte), text - 1};
    while (count > 0) {
        Context& longer = contexts_[context_count_++];
        longer = {.only = inherited,
                  .states = 0,
                  .shorter = static_cast<std::uint32_t>(place_of(*context)),
                  .known = 1,
                  .total = 0};
        waiting[--count]->successor = place_of(longer);
        context = &longer;
    }
    return *context;
}

std::uint8_t ByteModel::inherited_count(Context& context, std::uint8_t byte) {
    const std::uint32_t counted = state_of(context, byte)->count;
    if (context.known == 1)
        return static_cast<std::uint8_t>(counted);
    const std::uint32_t own = counted - 1;
    const std::uint32_t others = context.total - context.known - own;
    if (2 * own <= others)
        return 5 * own > others ? 2 : 1;
    return static_cast<std::uint8_t>(1 + (2 * own + 3 * others - 1) / (2 * others));
}

void ByteModel::add_found_to(Context& context, Successor behind) {
    const std::uint32_t known_here = here_->known;
    const std::uint32_t others_here = here_->total - known_here - (found_->count - 1U);
    const std::uint32_t known = context.known;
    std::uint32_t total = context.total;
    if (known == 1) {
        std::uint8_t& count = context.only.count;
        count = static_cast<std::uint8_t>(count < most_counted / 4 - 1 ? 2 * count : most_counted - 4);
        total = count + escapes_ + (known_here > 3 ? 1U : 0U);
    } else {
        total +=
            (2 * known < known_here ? 1U : 0U) + (4 * known <= known_here && total <= 8 * known ? 2U : 0U);
    }
    const std::uint32_t likely = 2 * found_->count * (total + 6);
    const std::uint32_t whole = others_here + total;
    std::uint32_t count = 0;
    if (likely < 6 * whole) {
        count = 1U + (likely > whole ? 1U : 0U) + (likely >= 4 * whole ? 1U : 0U);
        total += 3;
    } else {
        count = 4U + (likely >= 9 * whole ? 1U : 0U) + (likely >= 12 * whole ? 1U : 0U) +
                (likely >= 15 * whole ? 1U : 0U);
        total += count;
    }
    context.total = static_cast<std::uint16_t>(total);
    added_state(context) = {found_->byte, static_cast<std::uint8_t>(count), behind};
}

ByteModel::State* ByteModel::state_of(Context& context, std::uint8_t byte) {
    State* state = states(context);
    while (state->byte != byte)
        ++state;
    return state;
}

ByteModel::State& ByteModel::added_state(Context& context) {
    const std::uint32_t known = context.known;
    // There is room for as many as the next power of two.
    if ((known & (known - 1)) == 0) {
        const auto log = static_cast<unsigned>(__builtin_ctz(known));
        const std::uint32_t wider = take_states(log + 1);
        State* const from = states(context);
        for (std::uint32_t i = 0; i < known; ++i)
            states_[wider + i] = from[i];
        if (known > 1)
            leave_states(context.states, log);
        context.states = wider;
    }
    context.known = static_cast<std::uint16_t>(known + 1);
    return states_[context.states + known];
}

std::uint32_t ByteModel::take_states(unsigned log) {
    std::uint32_t& free = free_states_[log];
    if (const std::uint32_t taken = free; taken != 0) {
        free = static_cast<std::uint32_t>(states_[taken].successor);
        return taken;
    }
    const std::size_t taken = state_count_;
    state_count_ += std::size_t{1} << log;
    return static_cast<std::uint32_t>(taken);
}

void ByteModel::leave_states(std::uint32_t place, unsigned log) {
    states_[place].successor = static_cast<Successor>(free_states_[log]);
    free_states_[log] = place;
}

} // namespace saddlerule::unpacking
