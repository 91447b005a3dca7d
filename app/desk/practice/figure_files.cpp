#include "app/desk/practice/figure_files.h"

#include "app/charts/figure_paint.h"
#include "core/exchange/csv.h"

#include <QBuffer>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QSaveFile>
#include <QSvgGenerator>

namespace ebbline::deskapp {

namespace {

constexpr double width = 900;   // pixels of the picture
constexpr double edge = 32;
constexpr double sharpness = 2;  // pixels of a PNG for one of the picture

struct Sheet {
    const PracticeFigure& figure;
    QStringList notes;
    charts::ChartStyle style;
    QFont title;

    Sheet(const PracticeFigure& shown, const QString& caution) : figure(shown)
    {
        QFont font = QGuiApplication::font();
        font.setFamily(QStringLiteral("Noto Sans"));
        font.setPixelSize(14);
        style = charts::paperStyle(font);
        title = font;
        title.setPixelSize(20);
        title.setWeight(QFont::DemiBold);
        for (const auto& note : {caution, figure.caution, figure.method}) {
            if (!note.isEmpty()) {
                notes << note;
            }
        }
    }

    /// Lays everything out below each other; paints if there is a painter. \returns the height.
    double lay(QPainter* painter) const
    {
        double y = edge;
        const auto text = [&](const QString& words, const QFont& font, const QColor& colour) {
            const auto box = QFontMetricsF(font).boundingRect(QRectF(0, 0, width - 2 * edge, 1e5), Qt::TextWordWrap, words);
            if (painter != nullptr) {
                painter->setFont(font);
                painter->setPen(colour);
                painter->drawText(QRectF(edge, y, width - 2 * edge, box.height() + 2), Qt::TextWordWrap, words);
            }
            y += box.height() + 8;
        };
        text(figure.title, title, Qt::black);
        text(figure.says, style.font, Qt::black);
        y += 8;
        const double height = charts::figureHeight(figure.picture, width - 2 * edge, style.font);
        if (painter != nullptr) {
            charts::paintFigure(*painter, {edge, y, width - 2 * edge, height}, figure.picture, style);
        }
        y += height + 8;
        for (const auto& note : notes) {
            text(note, style.font, style.inkSoft);
        }
        return y + edge - 8;
    }
};

Done keep(const QString& path, const QByteArray& content)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size() || !file.commit()) {
        return fail(Reason::storageFailed, "figure: the file cannot be written");
    }
    return {};
}

}  // namespace

std::string figureTable(const PracticeFigure& figure)
{
    exchange::CsvWriter writer;
    for (const auto& line : figure.csv) {
        std::vector<std::string> cells;
        for (const auto& cell : line) {
            bool number = false;
            cell.toDouble(&number);
            const auto text = cell.toStdString();
            cells.push_back(number ? text : exchange::guarded(text));
        }
        writer.row(cells);
    }
    return std::move(writer).take();
}

Done writeFigure(const PracticeFigure& figure, const QString& caution, const QString& path)
{
    if (path.endsWith(QLatin1String(".csv"), Qt::CaseInsensitive)) {
        return keep(path, QByteArray::fromStdString(figureTable(figure)));
    }
    const Sheet sheet(figure, caution);
    const QSizeF size(width, sheet.lay(nullptr));
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPainter painter;
    if (path.endsWith(QLatin1String(".png"), Qt::CaseInsensitive)) {
        QImage image((size * sharpness).toSize(), QImage::Format_RGB32);
        image.fill(Qt::white);
        painter.begin(&image);
        painter.scale(sharpness, sharpness);
        sheet.lay(&painter);
        painter.end();
        if (!image.save(&buffer, "PNG")) {
            return fail(Reason::storageFailed, "figure: the picture cannot be made");
        }
    } else if (path.endsWith(QLatin1String(".svg"), Qt::CaseInsensitive)) {
        QSvgGenerator generator;
        generator.setOutputDevice(&buffer);
        generator.setSize(size.toSize());
        generator.setViewBox(QRectF(QPointF(), size));
        generator.setTitle(figure.title);
        generator.setDescription(figure.says);
        painter.begin(&generator);
        painter.fillRect(QRectF(QPointF(), size), Qt::white);
        sheet.lay(&painter);
        painter.end();
    } else {
        return fail(Reason::unsupported, "figure: want .csv, .png or .svg");
    }
    return keep(path, buffer.data());
}

}  // namespace ebbline::deskapp
