#include "app/controls/shown_page.h"

#include <QImage>
#include <QQuickItem>
#include <QQuickWindow>
#include <QSaveFile>

namespace ebbline::controls {

bool isPageThere(const QQuickWindow* window)
{
    constexpr int ready = 1;  // Loader.Ready, of a class that Qt does not publish
    const auto* loader = window == nullptr ? nullptr : window->findChild<QQuickItem*>(QStringLiteral("page"));
    return loader != nullptr && loader->property("status").toInt() == ready && loader->property("item").value<QObject*>() != nullptr;
}

bool savePicture(QQuickWindow* window, const QString& file)
{
    QSaveFile out(file);
    // The last bytes leave the buffer here; whether they did is asked before the commit.
    return window != nullptr && out.open(QIODevice::WriteOnly) && window->grabWindow().save(&out, "PNG") && out.flush() && out.commit();
}

}  // namespace ebbline::controls
