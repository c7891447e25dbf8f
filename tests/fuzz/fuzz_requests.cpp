// Any list and any sequence of requests about it, as a page or a script could send them: every answer is JSON, and after
// whatever was asked the engine still answers. The input is texts with a zero byte between them: the list, then the requests.
#include "core/base/json/located_json.h"
#include "core/exchange/engine.h"

#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

using namespace saddlerule;

namespace {

constexpr JsonLimits any_answer{64, 10'000'000, 10'000'000};
constexpr int most_requests = 24;

void demand_answer(const std::string& answer) {
    if (!read_json(answer, any_answer).ok())
        std::abort(); // which the fuzzer reports with the input
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    std::string_view rest(reinterpret_cast<const char*>(data), size);
    const auto next_text = [&rest] {
        const std::string_view text = rest.substr(0, rest.find('\0'));
        rest.remove_prefix(text.size() < rest.size() ? text.size() + 1 : rest.size());
        return text;
    };
    const std::string file(next_text());
    Engine engine;
    demand_answer(engine.answer(R"({"do":"load","to_mend":true})", file));
    for (int asked = 0; !rest.empty() && asked < most_requests; ++asked)
        demand_answer(engine.answer(next_text(), file));
    demand_answer(engine.answer(R"({"do":"save","form":"json"})"));
    return 0;
}
