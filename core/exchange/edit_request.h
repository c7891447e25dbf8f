// Edit request: changes to a list as they come over the wire, and back as the changes that undo them.
#pragma once

#include "core/exchange/json_writer.h"
#include "core/exchange/request_fields.h"
#include "core/lists/keeping/entry_text.h"
#include "core/lists/keeping/list_editor.h"

#include <string_view>
#include <vector>

namespace saddlerule {

/// Reads `changes` and applies them to the editor, one after the other. The first problem is reported to
/// `fields`, and then nothing may be committed.
void apply_changes(RequestFields& fields, std::string_view request_text, const KeptList& list,
                   ListEditor& editor);

/// Reads the fields of a header that are given, `title` and so on, as the JSON texts of their values.
std::vector<UnknownField> header_fields_of(RequestFields& fields, std::string_view request_text);

/// Reads an object of cells.
std::vector<FieldCell> cells_of_request(RequestFields& fields, const JsonValue& value, std::string_view name);

/// `undo`: changes in the form in which a request has them.
void undo_field(JsonWriter& json, const std::vector<ListChange>& changes);

} // namespace saddlerule
