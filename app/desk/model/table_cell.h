#pragma once
/// \file
/// What stands on a screen, as one cell of a table.

#include "core/exchange/csv.h"

#include <QString>

namespace ebbline::deskapp {

/// Without the marks that keep its direction on a screen, and guarded against spreadsheets.
inline std::string cellOf(QString text)
{
    return exchange::guarded(text.remove(QChar(0x2066)).remove(QChar(0x2069)).toStdString());
}

}  // namespace ebbline::deskapp
