#pragma once
/// \file
/// Files and folders that a person chose. Phones name them by addresses that are no paths ("content://…"), and Qt opens
/// these as they are.

#include <QByteArray>
#include <QUrl>

namespace ebbline::diaryapp {

/// What opens it: the path of a local one, else its address.
QString nameOfChosen(const QUrl& chosen);

/// Writes the whole file. A local one is there as a whole or not at all; one behind an address is written as it stands,
/// for there is no other name beside it to write to first. \returns false if not all of it could be written.
bool writeChosen(const QString& name, const QByteArray& bytes);

}  // namespace ebbline::diaryapp
