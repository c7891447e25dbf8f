// List desk: the one list that the engine holds, and the requests about it: opening, looking through, editing and
// saving.
#pragma once

#include "core/exchange/list_view.h"
#include "core/exchange/request_fields.h"
#include "core/exchange/years_answer.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/catalogue/reading_progress.h"
#include "core/lists/catalogue/table_head.h"
#include "core/lists/keeping/list_editor.h"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// The file that is beside a request. Its bytes outlive the request as long as they are the text of the list.
struct GivenFile {
    std::shared_ptr<const std::string> bytes;
    ReadingProgress progress; ///< whom to tell how far its reading is
    MayGoOn may_go_on;        ///< whom plans ask whether there is time left
};

class ListDesk {
public:
    /// While no list is loaded, null and none.
    const Catalogue* catalogue() const { return list_ ? &list_->catalogue : nullptr; }
    std::span<const Bike> bikes() const;

    std::string load(RequestFields& fields, const GivenFile& file);
    std::string new_list(RequestFields& fields, std::string_view request_text);
    std::string list(RequestFields& fields);
    std::string entry(RequestFields& fields);
    std::string check_entry(RequestFields& fields);
    std::string edit(RequestFields& fields, std::string_view request_text);
    std::string compare(RequestFields& fields, const GivenFile& file);
    std::string merge(RequestFields& fields, const GivenFile& file);
    std::string save(RequestFields& fields);

private:
    void take(KeptList list);
    const std::vector<SlipMark>& slips();
    std::string view_answer(const ListView& view, const std::vector<ListChange>* undo = nullptr,
                            const TableSketch* table = nullptr);
    std::string edited(ListEditor& editor, const std::optional<ListView>& view);

    std::optional<KeptList> list_;
    // What was found in this state of it.
    std::optional<std::vector<SlipMark>> slips_;
    std::string surroundings_;
};

} // namespace saddlerule
