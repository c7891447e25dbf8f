// Engine: one request in, one answer out, both JSON. The only state is the list of bikes that was loaded
// last.
#pragma once

#include "core/exchange/about_answer.h"
#include "core/exchange/years_answer.h"
#include "core/lists/catalogue/reading_progress.h"

#include <memory>
#include <string>
#include <string_view>

namespace saddlerule {

/// Answers requests. Pure and deterministic: no clock, no locale, no input or output; "today" is in the
/// request. It never throws, and after an error the next request is answered as if nothing had happened.
class Engine {
public:
    /// `about`: what answers the request of that name; where nothing does, it is refused, and its texts need not be linked.
    explicit Engine(AboutAnswer about = about_answer);
    ~Engine();
    Engine(const Engine&) = delete;
    Engine& operator=(const Engine&) = delete;

    /// `request`: a JSON object, UTF-8, or an array of them (answered by an array, in order).
    /// `file`: the bytes of a catalogue file, for `load`; empty otherwise. The list keeps them.
    /// `may_go_on`: asked by plans that have a limit of time, for there is no clock here.
    /// `progress`: told now and then how much of the file has been read.
    std::string answer(std::string_view request, std::string file = {}, const ReadingProgress& progress = {},
                       const MayGoOn& may_go_on = {});

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace saddlerule
