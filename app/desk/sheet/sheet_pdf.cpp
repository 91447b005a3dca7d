#include "app/desk/sheet/sheet_layout.h"

#include <QFile>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

namespace ebbline::deskapp {

Done writeSheetPdf(const SheetContent& content, const QString& file, int page, bool mirrored)
{
    const QPageSize size(page == static_cast<int>(QPageSize::Letter) ? QPageSize::Letter : QPageSize::A4);
    QFile out(file);
    if (!out.open(QIODevice::WriteOnly | QIODevice::Truncate)) {
        return fail(Reason::storageFailed, "sheet: the file cannot be written");
    }
    QPdfWriter writer(&out);
    constexpr int dotsPerInch = 300;
    writer.setResolution(dotsPerInch);
    writer.setPageSize(size);
    writer.setPageMargins(QMarginsF());
    writer.setTitle(content.title);  // no name of a patient in the file's properties
    writer.setCreator(QStringLiteral("Ebbline"));
    const SheetLayout layout(content, size.size(QPageSize::Inch) * unitsPerInch, mirrored);
    QPainter painter;
    if (!painter.begin(&writer)) {
        return fail(Reason::storageFailed, "sheet: the file cannot be written");
    }
    painter.scale(dotsPerInch / unitsPerInch, dotsPerInch / unitsPerInch);
    for (int i = 0; i < layout.pageCount(); ++i) {
        if (i > 0 && !writer.newPage()) {
            return fail(Reason::storageFailed, "sheet: a page cannot be written");
        }
        layout.paint(painter, i);
    }
    if (!painter.end() || out.error() != QFileDevice::NoError) {
        return fail(Reason::storageFailed, "sheet: the file cannot be written");
    }
    return {};
}

}  // namespace ebbline::deskapp
