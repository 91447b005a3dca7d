#pragma once
/// \file
/// A figure as a file: a table, or a picture in black and greys with its sentence, method and cautions.

#include "app/desk/practice/practice_figure.h"
#include "core/result/result.h"

namespace ebbline::deskapp {

/// `caution` goes beside every figure of a comparison. By the end of the name: `.csv`, `.png` or `.svg`.
/// \returns Reason::unsupported for another end, Reason::storageFailed if it cannot be written.
Done writeFigure(const PracticeFigure& figure, const QString& caution, const QString& path);

/// RFC 4180, UTF-8, free text guarded against being taken for a formula.
std::string figureTable(const PracticeFigure& figure);

}  // namespace ebbline::deskapp
