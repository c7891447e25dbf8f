#include "core/base/text/file_kind.h"

#include <array>

namespace saddlerule {
namespace {

using namespace std::string_view_literals;

struct Signature {
    std::string_view bytes;
    std::size_t offset;
    FileKind kind;
};

// Signatures as the formats' own specifications give them, from memory.
constexpr std::array signatures{
    Signature{"%PDF-"sv, 0, {ProblemWord::a_pdf}},
    Signature{"\x89PNG\r\n\x1A\n"sv, 0, {ProblemWord::a_png}},
    Signature{"\xFF\xD8\xFF"sv, 0, {ProblemWord::a_jpeg}},
    Signature{"GIF8"sv, 0, {ProblemWord::a_gif}},
    Signature{"WEBP"sv, 8, {ProblemWord::a_webp}},
    Signature{"ftyp"sv, 4, {ProblemWord::a_picture_or_film}},
    Signature{"\x1F\x8B"sv, 0, {ProblemWord::a_gzip}},
    Signature{"7z\xBC\xAF\x27\x1C"sv, 0, {ProblemWord::a_7z}},
    Signature{"Rar!\x1A\x07"sv, 0, {ProblemWord::a_rar}},
    Signature{"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"sv, 0, {ProblemWord::an_xls, true}},
    Signature{"SQLite format 3\0"sv, 0, {ProblemWord::a_sqlite}},
    Signature{R"({\rtf)"sv, 0, {ProblemWord::an_rtf}},
};

/// A ZIP archive is told from the office documents that are ZIP archives by the names of the files inside.
FileKind kind_of_zip(std::string_view bytes) {
    const auto holds = [&](std::string_view name) { return bytes.find(name) != std::string_view::npos; };
    if (holds("xl/workbook"sv))
        return {ProblemWord::an_xlsx, true};
    if (holds("mimetypeapplication/vnd.oasis.opendocument.spreadsheet"sv))
        return {ProblemWord::an_ods, true};
    if (holds("word/document"sv) || holds("mimetypeapplication/vnd.oasis.opendocument.text"sv))
        return {ProblemWord::a_text_document};
    return {ProblemWord::a_zip};
}

} // namespace

std::optional<FileKind> recognised_kind(std::string_view bytes) {
    if (bytes.starts_with("PK\x03\x04"sv) || bytes.starts_with("PK\x05\x06"sv))
        return kind_of_zip(bytes);
    // Office programs put a locked file of the new kind into one of the old, as a stream of that name (UTF-16).
    constexpr auto locked = "E\0n\0c\0r\0y\0p\0t\0e\0d\0P\0a\0c\0k\0a\0g\0e\0"sv;
    if (bytes.starts_with("\xD0\xCF\x11\xE0"sv) && bytes.find(locked) != std::string_view::npos)
        return FileKind{ProblemWord::a_locked_spreadsheet, true};
    for (const Signature& signature : signatures) {
        if (bytes.size() >= signature.offset && bytes.substr(signature.offset).starts_with(signature.bytes))
            return signature.kind;
    }
    return std::nullopt;
}

} // namespace saddlerule
