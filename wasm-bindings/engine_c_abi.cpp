#include "engine_c_abi.h"

#include "core/exchange/engine.h"

#include <string>
#include <utility>

namespace {

#ifdef SADDLERULE_WITHOUT_ABOUT
constexpr saddlerule::AboutAnswer about = nullptr;
#else
constexpr saddlerule::AboutAnswer about = saddlerule::about_answer;
#endif

struct Room {
    saddlerule::Engine engine{about};
    std::string request;
    std::string file;
    std::string answer;
};

Room& room() {
    static Room the_only_one;
    return the_only_one;
}

} // namespace

char* saddlerule_request_buffer(size_t length) {
    room().request.resize(length);
    return room().request.data();
}

char* saddlerule_file_buffer(size_t length) {
    room().file.resize(length);
    return room().file.data();
}

void saddlerule_ask(void) {
    room().answer = std::string(); // an answer about a long list is large: no two at a time
    room().answer = room().engine.answer(room().request, std::exchange(room().file, {}), saddlerule_progress,
                                         [](double limit_ms) { return saddlerule_may_go_on(limit_ms) != 0; });
}

const char* saddlerule_answer(void) {
    return room().answer.data();
}

size_t saddlerule_answer_length(void) {
    return room().answer.size();
}
