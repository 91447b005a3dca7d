#include "app/desk/sheet/pages.h"

#include <QPageLayout>
#include <QPagedPaintDevice>
#include <QPainter>

namespace ebbline::deskapp {

Done paintPages(QPagedPaintDevice& device, const LayOut& layOut)
{
    const auto pages = layOut(device.pageLayout().fullRect(QPageLayout::Inch).size() * unitsPerInch);
    QPainter painter;
    if (!painter.begin(&device)) {
        return fail(Reason::storageFailed, "pages: the device takes none");
    }
    painter.scale(device.logicalDpiX() / unitsPerInch, device.logicalDpiY() / unitsPerInch);
    for (int page = 0; page < pages->pageCount(); ++page) {
        if (page > 0 && !device.newPage()) {
            return fail(Reason::storageFailed, "pages: the device takes no more");
        }
        pages->paint(painter, page);
    }
    return painter.end() ? Done{} : Done(fail(Reason::storageFailed, "pages: the device did not finish"));
}

}  // namespace ebbline::deskapp
