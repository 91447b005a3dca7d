#pragma once
/// \file
/// Keeps the pages out of the pictures that iOS takes for its list of programs.

namespace ebbline::ios {

/// From now on a plain cover lies over every window whenever the program is not the active one.
void installCover();

}  // namespace ebbline::ios
