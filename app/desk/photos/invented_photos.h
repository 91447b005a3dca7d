#pragma once
/// \file
/// Drawn faces for the courses of the demo, so that somebody who looks around finds photographs to compare.

#include "core/desk/desk.h"

namespace ebbline::deskapp {

/// Beside the first, a middle and the last entry of up to three courses that run. In the first of them the eyes are
/// marked already, and the clinic's own from right after the treatment are there as well. \returns as the vault's appendPhoto().
Done addInventedPhotos(desk::Desk& desk);

}  // namespace ebbline::deskapp
