// The engine built natively. native_ask REQUEST-FILE [CATALOGUE-FILE] loads the list, where one is given, and prints the
// answer as the engine gives it. native_ask --serve QUESTIONS ANSWERS is asked by one pipe and answers by the other until the
// first is closed (see native-engine.mjs).
#include "core/exchange/engine.h"

#include <array>
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace {

using File = std::unique_ptr<std::FILE, int (*)(std::FILE*)>;

std::optional<std::string> content_of(const char* path) {
    const File file(std::fopen(path, "rb"), std::fclose);
    if (!file)
        return std::nullopt;
    std::string content;
    char block[65536];
    while (const std::size_t count = std::fread(block, 1, sizeof block, file.get()))
        content.append(block, count);
    return content;
}

/// A text behind its length as four bytes in this machine's order; nothing at the end of the pipe.
std::optional<std::string> next_text(std::FILE* pipe) {
    std::uint32_t length = 0;
    if (std::fread(&length, sizeof length, 1, pipe) != 1)
        return std::nullopt;
    std::string text(length, '\0');
    if (std::fread(text.data(), 1, length, pipe) != length)
        return std::nullopt;
    return text;
}

/// In the place of an answer's length: then come how much of the file is read, and how much there is.
constexpr std::uint32_t progress_mark = 0xffffffff;

/// The milliseconds that a request allows begin where this is called.
saddlerule::MayGoOn from_now_on() {
    return [asked = std::chrono::steady_clock::now()](double limit_ms) {
        const std::chrono::duration<double, std::milli> passed = std::chrono::steady_clock::now() - asked;
        return passed.count() < limit_ms;
    };
}

int serve(const char* questions, const char* answers) {
    const File from(std::fopen(questions, "rb"), std::fclose);
    const File to(std::fopen(answers, "wb"), std::fclose);
    if (!from || !to) {
        std::fputs("native_ask: a pipe cannot be opened\n", stderr);
        return 2;
    }
    saddlerule::Engine engine;
    while (auto request = next_text(from.get())) {
        auto file = next_text(from.get());
        if (!file)
            break;
        const auto tell = [&](std::size_t done, std::size_t total) {
            const std::array<std::uint32_t, 3> frame{progress_mark, static_cast<std::uint32_t>(done),
                                                     static_cast<std::uint32_t>(total)};
            std::fwrite(frame.data(), sizeof frame, 1, to.get());
        };
        const std::string answer = engine.answer(*request, std::move(*file), tell, from_now_on());
        const auto length = static_cast<std::uint32_t>(answer.size());
        std::fwrite(&length, sizeof length, 1, to.get());
        std::fwrite(answer.data(), 1, answer.size(), to.get());
        std::fflush(to.get());
    }
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    if (argc == 4 && std::string_view(argv[1]) == "--serve")
        return serve(argv[2], argv[3]);
    if (argc != 2 && argc != 3) {
        std::fputs("usage: native_ask REQUEST-FILE [CATALOGUE-FILE]\n"
                   "       native_ask --serve QUESTIONS ANSWERS\n",
                   stderr);
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
    const std::string answer = engine.answer(*request, *catalogue, {}, from_now_on());
    std::fwrite(answer.data(), 1, answer.size(), stdout);
    return 0;
}
