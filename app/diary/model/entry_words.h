#pragma once
/// \file
/// An entry in words, one line a symptom, sign or temperature.

#include "core/recovery/entry.h"

#include <QString>

namespace ebbline::diaryapp {

QString entryText(const recovery::Entry& entry, bool fahrenheit);
/// "38.5 °C" or "101.3 °F"
QString temperatureText(const recovery::Temperature& temperature, bool fahrenheit);

}  // namespace ebbline::diaryapp
