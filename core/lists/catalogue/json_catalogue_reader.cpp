#include "core/lists/catalogue/json_catalogue_reader.h"

#include "core/base/json/located_json.h"
#include "core/lists/catalogue/catalogue_builder.h"
#include "core/lists/catalogue/json_places.h"
#include "core/lists/catalogue/list_header.h"

#include <memory>
#include <optional>
#include <string>
#include <utility>

namespace saddlerule {
namespace {

using Kind = JsonValue::Kind;

class JsonCatalogueReader {
public:
    JsonCatalogueReader(std::string_view text, const ReadingOptions& options)
        : text_(text), to_mend_(options.to_mend), progress_(options.progress, text.size()),
          builder_(std::make_unique<JsonPlaces>(text)) {}

    Result<KeptList> read(std::vector<SetAside>* refused) {
        // Told before reading: what is in a bare list is nothing to build a tree of.
        const std::size_t begin = text_.find_first_not_of(" \t\r\n");
        if (begin < text_.size() && text_[begin] == '[')
            return not_an_object(begin, ProblemWord::a_list);
        auto file = read_file(std::nullopt);
        if (!file)
            return std::move(file).problem();
        if (file->kind != Kind::object)
            return not_an_object(file->begin, file->kind_name());
        if (auto fault = header_fault(*file, text_, &builder_.places()))
            return *std::move(fault);
        if (auto fault = bikes_fault(*file))
            return *std::move(fault);
        const ReadingFacts facts = reading_facts(*file);
        if (facts_used_ && facts != *facts_used_) {
            // Units or currency come after the bikes: now that they are known, the bikes are read again.
            builder_.start_again();
            file = read_file(facts);
        }
        take_header(*file, text_, builder_.list());
        return builder_.finish(refused, to_mend_);
    }

private:
    Problem problem(ProblemCode code, std::size_t offset, std::string_view where, Figures figures = {}) {
        Problem result{
            .code = code, .figures = std::move(figures), .where = std::string(where), .position = {}};
        builder_.places().place_in_header(result, offset, where);
        return result;
    }

    Problem not_an_object(std::size_t offset, const ProblemFigure& found) {
        return problem(ProblemCode::file_not_an_object, offset, {},
                       {{"found", found}, {"kind", R"({ "units": "cm", "bikes": [ ... ] })"}});
    }

    Result<JsonValue> read_file(std::optional<ReadingFacts> facts) {
        facts_used_ = facts;
        if (facts)
            builder_.read_by(*facts);
        const ElementSink sink{.member = "bikes", .take = [&](JsonValue&& entry, const JsonValue& so_far) {
                                   if (!facts_used_) {
                                       facts_used_ = reading_facts(so_far);
                                       builder_.read_by(*facts_used_);
                                   }
                                   builder_.take(entry, text_, entry.begin);
                                   progress_.reached(entry.end);
                               }};
        return read_json(text_, JsonLimits(), &sink);
    }

    std::optional<Problem> bikes_fault(const JsonValue& file) {
        const JsonMember* bikes = file.find("bikes");
        if (!bikes)
            return problem(ProblemCode::file_without_bikes, file.begin, {});
        if (bikes->value.kind != Kind::array) {
            return problem(
                ProblemCode::file_field_wrong_type, bikes->value.begin, "bikes",
                {{"field", "bikes"}, {"found", bikes->value.kind_name()}, {"kind", ProblemWord::bikes_list}});
        }
        if (builder_.count() == 0 && !to_mend_)
            return problem(ProblemCode::file_bikes_empty, bikes->value.begin, "bikes");
        return builder_.too_many();
    }

    std::string_view text_;
    bool to_mend_;
    ProgressTeller progress_;
    CatalogueBuilder builder_;
    std::optional<ReadingFacts> facts_used_; ///< to read the bikes by
};

} // namespace

Result<KeptList> read_json_catalogue(std::string_view utf8, std::vector<SetAside>* refused,
                                     const ReadingOptions& options) {
    return JsonCatalogueReader(utf8, options).read(refused);
}

} // namespace saddlerule
