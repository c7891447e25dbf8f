// Located JSON: a JSON text as a tree in which every value knows where it is. Knows no bike words.
#pragma once

#include "core/base/outcomes/result.h"

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

struct JsonMember;

/// One value of a JSON text (RFC 8259).
struct JsonValue {
    enum class Kind { null, boolean, number, text, array, object };

    Kind kind = Kind::null;
    bool boolean = false;
    double number = 0.0;
    std::string text;             ///< unescaped, UTF-8
    std::vector<JsonValue> items; ///< of an array
    std::vector<JsonMember>
        members;           ///< of an object, in file order; duplicates are kept, the readers refuse them
    std::size_t begin = 0; ///< byte offsets into the text: the value's own characters are [begin, end)
    std::size_t end = 0;

    /// The first member of that name, or nullptr (also for what is not an object).
    const JsonMember* find(std::string_view name) const;

    /// What it is, for a problem: a word for its kind, or `true`, `false` and `null` as they are in the text.
    ProblemFigure kind_name() const;

    /// As it was written; `whole` is the text that it was read from.
    std::string_view written_in(std::string_view whole) const { return whole.substr(begin, end - begin); }
};

struct JsonMember {
    std::string name;
    std::size_t name_begin = 0; ///< byte offset of the name's opening quote
    JsonValue value;
};

/// What a text may hold.
struct JsonLimits {
    std::size_t depth = 32;         ///< levels of arrays and objects
    std::size_t text_length = 2000; ///< Unicode characters in one text or name
    std::size_t values = 100'000;   ///< values in the tree, so that no text can fill the memory
};

/// Elements of the array that is the top-level object's member `member` go to `take` one at a time and are
/// not kept: a list of 20,000 bikes is never in memory as a tree. In the result that array has no items.
///
/// Inside an element only depth and values are limited, the latter for each element anew: whoever takes it
/// judges its texts, and can refuse this one alone. `so_far` is the top-level object as far as it has been
/// read.
struct ElementSink {
    std::string_view member;
    std::function<void(JsonValue&& element, const JsonValue& so_far)> take;
};

/// Reads one JSON value with nothing but blanks around it. `utf8` is text as core/base/text/utf8_text.h gives it.
///
/// Problems: the codes json_*, each with its position in the text.
Result<JsonValue> read_json(std::string_view utf8, const JsonLimits& limits,
                            const ElementSink* sink = nullptr);

} // namespace saddlerule
