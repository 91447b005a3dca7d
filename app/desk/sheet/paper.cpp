#include "app/desk/sheet/paper.h"

#include <QAbstractTextDocumentLayout>
#include <QFile>
#include <QLocale>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextTable>

namespace ebbline::deskapp {

namespace {

constexpr double edge = 48;
constexpr double foot = 32;

QFont fontOf(int size, QFont::Weight weight = QFont::Normal)
{
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(size);
    font.setWeight(weight);
    return font;
}

QTextCharFormat formatOf(int size, QFont::Weight weight = QFont::Normal)
{
    QTextCharFormat format;
    format.setFont(fontOf(size, weight));
    format.setForeground(Qt::black);
    return format;
}

void addTable(QTextCursor& cursor, const PaperPart& part)
{
    QTextTableFormat format;
    format.setHeaderRowCount(1);
    format.setCellPadding(4);
    format.setCellSpacing(0);
    format.setBorder(0.5);
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorderBrush(QColor(0x66, 0x66, 0x66));
    format.setBorderCollapse(true);
    format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
    auto* table = cursor.insertTable(static_cast<int>(part.rows.size()) + 1, static_cast<int>(part.header.size()), format);
    for (int column = 0; column < part.header.size(); ++column) {
        table->cellAt(0, column).firstCursorPosition().insertText(part.header[column], formatOf(11, QFont::DemiBold));
        for (int row = 0; row < part.rows.size(); ++row) {
            table->cellAt(row + 1, column).firstCursorPosition().insertText(part.rows[row].value(column), formatOf(12));
        }
    }
    cursor.movePosition(QTextCursor::End);
}

void fill(QTextDocument& document, const Paper& paper, bool mirrored)
{
    auto option = document.defaultTextOption();
    option.setTextDirection(mirrored ? Qt::RightToLeft : Qt::LeftToRight);
    document.setDefaultTextOption(option);
    document.setDocumentMargin(0);
    QTextCursor cursor(&document);
    QTextBlockFormat block;
    block.setBottomMargin(4);
    block.setLayoutDirection(mirrored ? Qt::RightToLeft : Qt::LeftToRight);
    cursor.setBlockFormat(block);
    cursor.insertText(paper.title, formatOf(20, QFont::DemiBold));
    cursor.insertBlock(block);
    cursor.insertText(paper.stamp, formatOf(11));
    for (const auto& part : paper.parts) {
        if (!part.heading.isEmpty()) {
            auto headed = block;
            headed.setTopMargin(14);
            cursor.insertBlock(headed);
            cursor.insertText(part.heading, formatOf(15, QFont::DemiBold));
        }
        for (const auto& line : part.lines) {
            cursor.insertBlock(block);
            cursor.insertText(line, formatOf(12));
        }
        if (!part.header.isEmpty()) {
            cursor.insertBlock(block);
            addTable(cursor, part);
        }
    }
}

class PaperPages final : public Pages {
public:
    PaperPages(const Paper& paper, const QSizeF& size, bool mirrored)
        : m_size(size), m_body(size.width() - 2 * edge, size.height() - 2 * edge - foot), m_stamp(paper.stamp), m_mirrored(mirrored)
    {
        fill(m_document, paper, mirrored);
        m_document.setPageSize(m_body);
    }

    int pageCount() const override { return m_document.pageCount(); }

    void paint(QPainter& painter, int page) const override
    {
        painter.save();
        painter.translate(edge, edge - page * m_body.height());
        QAbstractTextDocumentLayout::PaintContext context;
        context.clip = QRectF(0, page * m_body.height(), m_body.width(), m_body.height());
        context.palette.setColor(QPalette::Text, Qt::black);
        painter.setClipRect(context.clip);
        m_document.documentLayout()->draw(&painter, context);
        painter.restore();
        painter.setFont(fontOf(10));
        painter.setPen(Qt::black);
        const auto number = QStringLiteral("%1 / %2").arg(QLocale().toString(page + 1), QLocale().toString(pageCount()));
        const double top = m_size.height() - edge;
        const double width = m_size.width() - 2 * edge;
        painter.drawText(QRectF(edge, top, width, foot), m_mirrored ? Qt::AlignLeft : Qt::AlignRight, number);
        painter.drawText(QRectF(edge, top, width - 80, foot), m_mirrored ? Qt::AlignRight : Qt::AlignLeft, m_stamp);
    }

private:
    QSizeF m_size;
    QSizeF m_body;
    QString m_stamp;
    bool m_mirrored;
    QTextDocument m_document;
};

Done writePdf(const Paper& paper, const QString& file, bool letter, bool mirrored)
{
    QSaveFile out(file);
    if (!out.open(QIODevice::WriteOnly)) {
        return fail(Reason::storageFailed, "paper: the file cannot be written");
    }
    QPdfWriter writer(&out);
    constexpr int fine = 300;
    writer.setResolution(fine);
    writer.setPageSize(QPageSize(letter ? QPageSize::Letter : QPageSize::A4));
    writer.setPageMargins(QMarginsF());
    writer.setTitle(paper.title);
    writer.setCreator(QStringLiteral("Ebbline"));
    const Done painted = paintPages(writer, [&](const QSizeF& size) { return pagesOf(paper, size, mirrored); });
    if (!painted || !out.commit()) {
        return fail(Reason::storageFailed, "paper: the file cannot be written");
    }
    return {};
}

}  // namespace

QString Paper::asText() const
{
    QStringList text{title, stamp};
    for (const auto& part : parts) {
        text << QString();
        if (!part.heading.isEmpty()) {
            text << part.heading;
        }
        text << part.lines;
        for (const auto& row : part.rows) {
            QStringList cells;
            for (int column = 0; column < part.header.size(); ++column) {
                if (!row.value(column).isEmpty()) {
                    cells << part.header[column] + QStringLiteral(": ") + row.value(column);
                }
            }
            text << cells.join(QStringLiteral("; "));
        }
    }
    return text.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

std::unique_ptr<Pages> pagesOf(const Paper& paper, const QSizeF& size, bool mirrored)
{
    return std::make_unique<PaperPages>(paper, size, mirrored);
}

Done writePaper(const Paper& paper, const QString& file, bool letter, bool mirrored)
{
    if (file.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive)) {
        return writePdf(paper, file, letter, mirrored);
    }
    if (!file.endsWith(QLatin1String(".txt"), Qt::CaseInsensitive)) {
        return fail(Reason::unsupported, "paper: want .pdf or .txt");
    }
    QSaveFile out(file);
    const auto text = paper.asText().toUtf8();
    if (!out.open(QIODevice::WriteOnly) || out.write(text) != text.size() || !out.commit()) {
        return fail(Reason::storageFailed, "paper: the file cannot be written");
    }
    return {};
}

}  // namespace ebbline::deskapp
