#pragma once
/// \file
/// Makes a QR code of error correction level M.

#include "app/desk/model/qr_matrix.h"

#include <string>

namespace ebbline::deskapp {

/// Size 0 for an empty text or one that does not fit.
QrMatrix encodeQr(const std::string& text);

}  // namespace ebbline::deskapp
