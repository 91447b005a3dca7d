#pragma once
/// \file
/// A QR code as dark and light modules, row by row, without its quiet zone.

#include <QList>
#include <QString>

namespace ebbline::deskapp {

struct QrMatrix {
    int size = 0;         ///< modules on a side; 0: nothing to show
    QList<bool> dark;     ///< size * size
    bool operator==(const QrMatrix&) const = default;
};

}  // namespace ebbline::deskapp
