#pragma once
/// \file
/// The page in a program's window, as somebody sees it who looks at the window, and a picture of it.

#include <QString>

class QQuickWindow;

namespace ebbline::controls {

/// Whether the Loader that the window calls "page" is ready and holds one. A page that cannot be loaded leaves the Loader
/// empty, and nothing but a line on the error output tells.
bool isPageThere(const QQuickWindow* window);

/// A PNG of the window as it is now; the file is whole, or as it was before.
/// \returns false if there is no window, or the file cannot be written to its end.
bool savePicture(QQuickWindow* window, const QString& file);

}  // namespace ebbline::controls
