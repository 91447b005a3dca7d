#pragma once
/// \file
/// What a program that holds keys leaves behind when it crashes.

namespace ebbline::crypto {

/// From now on the system writes no image of this program's memory when it crashes, nor of what it starts. Every main() that
/// opens a vault or a hub's store calls it first. \returns false if the system refuses.
bool refuseCoreDumps();

}  // namespace ebbline::crypto
