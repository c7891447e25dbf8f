// List editor: changes to a kept list, made all together or not at all, each with its reverse.
#pragma once

#include "core/base/outcomes/problem.h"
#include "core/lists/catalogue/kept_list.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// One change, as it is undone.
struct ListChange {
    enum class Kind { put, insert, remove, header };

    Kind kind = Kind::put;
    std::size_t number = 0;    ///< of an entry; what is inserted has it afterwards
    ListEntry entry;           ///< for put and insert
    UnknownField header_field; ///< for header; without JSON it is taken out
};

/// An entry with that JSON text. Where `origin` is that of the same text in the list's own file, it keeps its
/// place there.
ListEntry entry_of_text(const KeptList& list, std::string json, std::size_t origin = no_origin);

/// Works on a copy of what is written in a list; what was read of it follows at the end, entries that nobody
/// touched being left as they are. Numbers must be those of entries.
class ListEditor {
public:
    explicit ListEditor(KeptList& list);

    std::size_t count() const { return entries_.size(); }
    bool touched_at_all() const { return !undo_.empty(); }
    const ListEntry& entry(std::size_t number) const { return entries_[number - 1]; }

    void put(std::size_t number, ListEntry entry);
    /// The entry comes before the one that has that number now, or after all others.
    void insert(std::size_t number, ListEntry entry);
    void remove(std::size_t number);
    /// One of title, measured_on, units, currency; without JSON it is taken out.
    void set_header(UnknownField field);
    /// What entries are read by after the changes so far.
    ReadingFacts facts() const;
    /// Whether a list may say of itself what it would say now.
    std::optional<Problem> header_fault() const;

    /// Makes the changes, and nothing where there is a problem: too many bikes, or a list too large to be
    /// opened again. The header must have no fault.
    std::optional<Problem> commit();

    /// The changes that bring the list back as it was, in the order in which they have to be made.
    std::vector<ListChange> undo() &&;

private:
    /// Where the judgement is of an entry that nobody touched: among the bikes, and behind them among what
    /// was set aside.
    using Judged = std::uint32_t;
    static constexpr Judged touched = static_cast<Judged>(-1);

    std::optional<Problem> fault() const;
    void take_header_anew();
    void judge_anew(bool all);

    KeptList& list_;
    std::vector<ListEntry> entries_;
    std::vector<UnknownField> header_;
    std::vector<Judged> judged_; ///< for each entry
    bool header_touched_ = false;
    std::vector<ListChange> undo_;
};

} // namespace saddlerule
