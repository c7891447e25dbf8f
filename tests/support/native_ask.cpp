// The engine built natively, behind the same door as ask.mjs: native_ask REQUEST-FILE [CATALOGUE-FILE]
// loads the list, where one is given, and prints the answer as the engine gives it.
#include "core/exchange/engine.h"

#include <chrono>
#include <cstdio>
#include <memory>
#include <optional>
#include <string>

namespace {

std::optional<std::string> content_of(const char* path) {
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path, "rb"), std::fclose);
    if (!file)
        return std::nullopt;
    std::string content;
    char block[65536];
    while (const std::size_t count = std::fread(block, 1, sizeof block, file.get()))
        content.append(block, count);
    return content;
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 2 && argc != 3) {
        std::fputs("usage: native_ask REQUEST-FILE [CATALOGUE-FILE]\n", stderr);
        return 2;
    }
    const auto request = content_of(argv[1]);
    const auto catalogue = argc == 3 ? content_of(argv[2]) : std::string();
    if (!request || !catalogue) {
        std::fputs("native_ask: a file cannot be read\n", stderr);
        return 2;
    }
    saddlerule::Engine engine;
    if (argc == 3)
        engine.answer(R"({"do":"load"})", *catalogue);
    const auto asked = std::chrono::steady_clock::now();
    const auto may_go_on = [&](double limit_ms) {
        const std::chrono::duration<double, std::milli> passed = std::chrono::steady_clock::now() - asked;
        return passed.count() < limit_ms;
    };
    const std::string answer = engine.answer(*request, *catalogue, {}, may_go_on);
    std::fwrite(answer.data(), 1, answer.size(), stdout);
    return 0;
}
