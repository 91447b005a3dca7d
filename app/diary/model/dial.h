#pragma once
/// \file
/// A telephone number as it is written, made into what a phone dials.

#include <QString>

namespace ebbline::diaryapp {

/// ASCII digits, with a + before them where one leads. Digits of any script are read. "(0)" goes where the number begins
/// with its country ("+49 (0)30 …", "0049 (0)30 …"). Of several numbers with "/", ";" or "," between them the first
/// counts; a "/" behind an area code alone ("030/1234") is none of these. Empty: no digit is in it.
QString dialable(const QString& number);

}  // namespace ebbline::diaryapp
