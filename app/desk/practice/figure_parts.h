#pragma once
/// \file
/// What the figures have in common: rows with intervals, ticks, tables.

#include "app/desk/practice/figures.h"
#include "app/desk/practice/practice_words.h"

namespace ebbline::deskapp {

/// Ticks of shares from 0 to a round upper end; sets the horizontal scale.
void scaleShares(charts::FigurePicture& picture, double highest);
/// Ticks of days 0, 1, 3, 7, 14, 21; sets the horizontal scale.
void scaleDays(charts::FigurePicture& picture);
/// Ticks of both signs about 0, at most about `widest` away; sets the horizontal scale.
void scaleAbout0(charts::FigurePicture& picture, double widest, double unit);

charts::RangeRow rangeOf(const QString& label, const learning::Answer<learning::Share>& share);

/// "Share of courses, with 95 % limits": rows, table and file of groups of shares.
PracticeFigure sharesFigure(const QString& key, const QString& title, const std::vector<learning::GroupShare>& groups,
                            const std::function<QString(const std::string&)>& nameOf);

}  // namespace ebbline::deskapp
