#include "app/desk/sheet/sheet_layout.h"

#include <QFile>
#include <QPageSize>
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
    const Done painted = paintPages(writer, [&](const QSizeF& paper) { return std::make_unique<SheetLayout>(content, paper, mirrored); });
    if (!painted || out.error() != QFileDevice::NoError) {
        return fail(Reason::storageFailed, "sheet: the file cannot be written");
    }
    return {};
}

}  // namespace ebbline::deskapp
