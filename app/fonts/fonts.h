#pragma once
/// \file
/// The fonts that ship with the programs.

namespace ebbline::app {

/// Registers them and makes "Noto Sans" the application's font, with Noto Sans Arabic UI behind it.
/// Call once, after the application object and before the first window.
void loadFonts();

}  // namespace ebbline::app
