// The list turned round as a table for spreadsheets: a row a bike, lengths in millimetres, ages in years.
#pragma once

#include "core/planning/suits/suits.h"

#include <span>
#include <string>

namespace saddlerule {

/// Separated by commas (RFC 4180), with headings, and guarded where a spreadsheet would take a cell for a formula. For each way of
/// riding the inside legs and the typical ages, from and to; what is not known is empty.
std::string suits_table(std::span<const BikeSuits> bikes);

} // namespace saddlerule
