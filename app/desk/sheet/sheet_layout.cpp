#include "app/desk/sheet/sheet_layout.h"

#include "app/charts/compose_chart.h"
#include "app/charts/curve_words.h"
#include "app/charts/event_line.h"
#include "app/desk/model/treatment_rows.h"
#include "app/desk/model/words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QStyle>
#include <QTextLayout>
#include <QTextOption>

#include <algorithm>
#include <array>
#include <cmath>

namespace ebbline::deskapp {

namespace {

class Sheet {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};

constexpr double margin = 52;
constexpr double headHeight = 30;
constexpr double footHeight = 26;
constexpr double gap = 8;
constexpr double cellPad = 4;
const QColor hairline(0x88, 0x88, 0x88);

face::FacePalette paperFace()
{
    return {Qt::black, QColor(0x99, 0x99, 0x99), Qt::black, Qt::black, QColor(0x66, 0x66, 0x66), Qt::white, Qt::black};
}

/// Lays text out in a width and, if there is a painter, draws it. \returns the height.
/// Measured and drawn by the same lines: a line with Arabic in it is higher than its font says.
double flowText(QPainter* painter, const QRectF& box, const QString& text, const QFont& font,
                Qt::LayoutDirection direction, Qt::Alignment alignment = Qt::AlignLeft)
{
    QTextOption option(QStyle::visualAlignment(direction, alignment));
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    option.setTextDirection(direction);
    double y = 0;
    for (const auto& part : text.split(u'\n')) {
        QTextLayout layout(part, font);
        layout.setTextOption(option);
        layout.beginLayout();
        for (auto line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(box.width());
            line.setPosition({0, y});
            y += std::max(QFontMetricsF(font).lineSpacing(), line.height());
        }
        layout.endLayout();
        if (painter != nullptr) {
            layout.draw(painter, box.topLeft());
        }
    }
    return y;
}

void drawText(QPainter& painter, const QRectF& box, const QString& text, const QFont& font,
              Qt::Alignment alignment = Qt::AlignLeft)
{
    flowText(&painter, box, text, font, painter.layoutDirection(), alignment);
}

}  // namespace

QFont paperFont(double size, bool bold)
{
    QFont font;
    font.setFamilies({QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans Arabic UI")});
    font.setPixelSize(static_cast<int>(std::lround(size)));
    font.setBold(bold);
    return font;
}

SheetLayout::SheetLayout(SheetContent content, const QSizeF& page, bool mirrored)
    : m_content(std::move(content)), m_page(page), m_mirrored(mirrored), m_body(paperFont(11)), m_bold(paperFont(11, true)),
      m_small(paperFont(10)), m_title(paperFont(22, true)), m_y(margin + headHeight)
{
    const auto width = m_page.width() - 2 * margin;
    place(textHeight(m_content.patient, m_title, width) + 2, [this](QPainter& painter, const QRectF& area) {
        drawText(painter, area, m_content.patient, m_title);
    });
    fields(m_content.facts, 3);
    heading(Sheet::tr("Treatment map"));
    map();
    QList<QStringList> rows;
    for (const auto& placement : m_content.placements) {
        rows.append({charts::digits(placement.number), placement.side, placement.zone, placement.ending, placement.thread,
                     placement.lot, givenText(placement)});
    }
    table({Sheet::tr("No."), Sheet::tr("Side"), Sheet::tr("Zone"), Sheet::tr("Ends"), Sheet::tr("Thread"), Sheet::tr("Lot, expiry"),
           Sheet::tr("Anaesthetic")},
          {0.05, 0.08, 0.13, 0.17, 0.25, 0.18, 0.14}, rows);
    if (!m_content.plan.isEmpty()) {
        heading(Sheet::tr("The plan"));
        for (const auto& line : m_content.plan) {
            paragraph(line, m_body);
        }
    }
    heading(Sheet::tr("Local anaesthetic"));
    paragraph(m_content.anaesthetic.join(QStringLiteral(" · ")), m_body);
    if (!m_content.note.isEmpty()) {
        paragraph(m_content.note, m_body);
    }
    if (!m_content.corrections.isEmpty()) {
        heading(Sheet::tr("Corrections of the record"));
        for (const auto& line : m_content.corrections) {
            paragraph(line, m_body);
        }
    }
    constexpr double firstCurve = 230;  // the words and one pair of curves
    heading(Sheet::tr("Recovery"), m_content.curves.isEmpty() ? 60 : firstCurve);
    paragraph(m_content.entries + QStringLiteral(" · ") + m_content.adherence, m_body);
    curves();
    photos();
    heading(Sheet::tr("Findings and what was done"));
    if (m_content.findings.isEmpty()) {
        paragraph(Sheet::tr("No finding."), m_body);
    } else {
        QList<QStringList> findings;
        for (const auto& finding : m_content.findings) {
            findings.append({finding.urgencyName, finding.title + QStringLiteral(". ") + finding.reason, finding.when,
                             finding.acts.isEmpty() ? Sheet::tr("nothing yet") : finding.acts.join(u'\n')});
        }
        table({Sheet::tr("Urgency"), Sheet::tr("Finding"), Sheet::tr("Raised"), Sheet::tr("Done")}, {0.15, 0.37, 0.15, 0.33},
              findings);
    }
    for (const auto& call : m_content.calls) {
        paragraph(call, m_body);
    }
    heading(Sheet::tr("Open questions"));
    if (m_content.openQuestions.isEmpty()) {
        paragraph(Sheet::tr("None."), m_body);
    }
    for (const auto& text : m_content.openQuestions) {
        question(text);
    }
    heading(m_content.followUpRecorded ? Sheet::tr("At the follow-up") : Sheet::tr("At the follow-up, to be filled in"));
    fields(m_content.followUp, m_content.followUpRecorded ? 2 : 1);
    for (const auto& block : m_blocks) {
        m_pages = std::max(m_pages, block.page + 1);
    }
}

double SheetLayout::textHeight(const QString& text, const QFont& font, double width) const
{
    const auto direction = m_mirrored ? Qt::RightToLeft : Qt::LeftToRight;
    return std::ceil(flowText(nullptr, QRectF(0, 0, width, 0), text, font, direction)) + 2;
}

QRectF SheetLayout::mirroredIn(const QRectF& area, double left, double width) const
{
    const double x = m_mirrored ? area.right() - left - width : area.left() + left;
    return {x, area.top(), width, area.height()};
}

/// Puts a block under the last one, on the next page if it and what belongs to it do not fit.
void SheetLayout::place(double height, std::function<void(QPainter&, const QRectF&)> draw, double keepWith)
{
    const double bottom = m_page.height() - margin - footHeight;
    int page = m_blocks.empty() ? 0 : m_blocks.back().page;
    if (m_y + height + keepWith > bottom && m_y > margin + headHeight) {
        ++page;
        m_y = margin + headHeight;
    }
    m_blocks.push_back({page, QRectF(margin, m_y, m_page.width() - 2 * margin, height), std::move(draw)});
    m_y += height;
}

/// A heading never stands alone at the foot of a page: `company` must fit under it.
void SheetLayout::heading(const QString& text, double company)
{
    constexpr double height = 30;
    const auto font = paperFont(13, true);
    place(height, [text, font](QPainter& painter, const QRectF& area) {
        drawText(painter, area.adjusted(0, 10, 0, 0), text, font);
    }, company);
}

void SheetLayout::paragraph(const QString& text, const QFont& font, double company)
{
    place(textHeight(text, font, m_page.width() - 2 * margin) + 3, [text, font](QPainter& painter, const QRectF& area) {
        drawText(painter, area, text, font);
    }, company);
}

/// A question with a box to tick by hand.
void SheetLayout::question(const QString& text)
{
    constexpr double indent = 18;
    const double width = m_page.width() - 2 * margin - indent;
    place(textHeight(text, m_body, width) + 3, [this, text, width](QPainter& painter, const QRectF& area) {
        constexpr double side = 9;
        const auto box = mirroredIn(area, 0, side);
        painter.setPen(QPen(Qt::black, 0.8));
        painter.drawRect(QRectF(box.left(), area.top() + 4, side, side));
        drawText(painter, mirroredIn(area, indent, width), text, m_body);
    });
}

void SheetLayout::table(const QStringList& titles, const QList<double>& widths, const QList<QStringList>& rows)
{
    const double total = m_page.width() - 2 * margin;
    const auto row = [this, widths, total](const QStringList& cells, const QFont& font, double keepWith) {
        double height = 0;
        for (int i = 0; i < cells.size(); ++i) {
            height = std::max(height, textHeight(cells[i], font, widths[i] * total - 2 * cellPad));
        }
        height += 2 * cellPad - 2;
        place(height, [this, cells, widths, total, font](QPainter& painter, const QRectF& area) {
            double left = 0;
            for (int i = 0; i < cells.size(); ++i) {
                const auto cell = mirroredIn(area, left, widths[i] * total).adjusted(cellPad, cellPad - 1, -cellPad, 0);
                drawText(painter, cell, cells[i], font);
                left += widths[i] * total;
            }
            painter.setPen(QPen(hairline, 0.6));
            painter.drawLine(area.bottomLeft(), area.bottomRight());
            painter.setPen(Qt::black);
        }, keepWith);
    };
    constexpr double oneRow = 24;
    row(titles, paperFont(10, true), oneRow);
    for (const auto& cells : rows) {
        row(cells, m_small, 0);
    }
}

void SheetLayout::fields(const QList<SheetField>& fields, int columns)
{
    const double total = m_page.width() - 2 * margin;
    const double width = total / columns;
    for (int first = 0; first < fields.size(); first += columns) {
        const auto group = fields.mid(first, columns);
        double height = 0;
        for (const auto& field : group) {
            // An empty value leaves room for handwriting.
            const double value = field.value.isEmpty() ? 22 : textHeight(field.value, m_body, width - gap);
            height = std::max(height, QFontMetricsF(m_small).height() + value + 4);
        }
        place(height, [this, group, width](QPainter& painter, const QRectF& area) {
            for (int i = 0; i < group.size(); ++i) {
                auto cell = mirroredIn(area, i * width, width - gap);
                painter.setPen(QColor(0x44, 0x44, 0x44));
                drawText(painter, cell, group[i].label, m_small);
                painter.setPen(Qt::black);
                cell.setTop(cell.top() + QFontMetricsF(m_small).height());
                if (group[i].value.isEmpty()) {
                    painter.setPen(QPen(hairline, 0.6));
                    painter.drawLine(QPointF(cell.left(), cell.bottom() - 5), QPointF(cell.right(), cell.bottom() - 5));
                    painter.setPen(Qt::black);
                } else {
                    drawText(painter, cell, group[i].value, m_body);
                }
            }
        });
    }
}

void SheetLayout::map()
{
    const double total = m_page.width() - 2 * margin;
    // The chart ends below the shoulders: what is under them is not drawn.
    const double width = total / 3;
    const double height = width * recovery::chartHeight / recovery::chartWidth;
    place(height, [this, width](QPainter& painter, const QRectF& area) {
        const face::FaceWords words{Sheet::tr("Patient's left"), Sheet::tr("Patient's right"), {}, {}, paperFont(16)};
        // From left to right as when facing the patient, in every language.
        constexpr std::array views{recovery::ChartView::rightOblique, recovery::ChartView::front, recovery::ChartView::leftOblique};
        for (std::size_t i = 0; i < views.size(); ++i) {
            painter.save();
            painter.setLayoutDirection(Qt::LeftToRight);
            painter.translate(area.left() + width * static_cast<double>(i), area.top());
            painter.scale(width / recovery::chartWidth, width / recovery::chartWidth);
            face::paintCautions(painter, views[i], paperFace(), {});
            face::paintDrawing(painter, views[i], paperFace());
            face::paintTracks(painter, views[i], m_content.tracks, 0, paperFace(), words);
            face::paintSides(painter, views[i], paperFace(), words);
            painter.restore();
        }
    });
    paragraph(Sheet::tr("Left: solid lines, round entry points. Right: dashed lines, square entry points. The bar marks the end. "
                        "Hatched: the zone that moves with speech, and the notch of the jaw (common practice, no source)."),
              m_small);
}

void SheetLayout::curves()
{
    if (m_content.curves.isEmpty()) {
        paragraph(Sheet::tr("Nothing was recorded."), m_body);
        return;
    }
    paragraph(Sheet::tr("As when facing the patient: the patient's right on the left. Score 0 to 10 by day of recovery. "
                        "Hollow marks: entered late or amended. Missing days are gaps."),
              m_small);
    const double half = (m_page.width() - 2 * margin - 2 * gap) / 2;
    constexpr double plotHeight = 96;  // all seven symptoms on one page
    const auto style = charts::paperStyle(paperFont(9));
    for (int i = 0; i < m_content.curves.size(); ++i) {
        const bool last = i + 1 == m_content.curves.size();
        const double events = last && !m_content.events.isEmpty()
                                  ? charts::eventLineHeight(m_content.events, 0, half * 0.88, style.font) + 6
                                  : 0;
        const double title = QFontMetricsF(m_bold).height() + 2;
        place(title + plotHeight + events + gap, [this, i, half, title, events, style](QPainter& painter, const QRectF& area) {
            const auto& pair = m_content.curves[i];
            for (const bool left : {false, true}) {
                const auto& picture = left ? pair.left : pair.right;
                const QRectF column(area.left() + (left ? half + 2 * gap : 0), area.top(), half, area.height());
                drawText(painter, column, picture.title, m_bold);
                painter.save();
                painter.setLayoutDirection(Qt::LeftToRight);
                charts::paintChart(painter, QRectF(column.left(), column.top() + title, half, plotHeight + events), 1, picture,
                                   events > 0 ? m_content.events : QList<charts::Event>(), style);
                painter.restore();
            }
        });
    }
    paragraph(m_content.bandLegend, m_small);
}

void SheetLayout::photos()
{
    if (m_content.photos.isEmpty()) {
        return;
    }
    constexpr double words = 70;
    heading(Sheet::tr("Photographs"), sheetPhotoHeight + words);
    paragraph(Sheet::tr("The first and the last of each view, the first on the left. Light, distance and expression may differ: compare with care."),
              m_small, sheetPhotoHeight);
    for (int i = 0; i < m_content.photos.size(); ++i) {
        const auto& pair = m_content.photos[i];
        paragraph(pair.view + QStringLiteral(" · ") + pair.how(), m_bold, sheetPhotoHeight);
        place(sheetPhotoHeight + gap, [this, i](QPainter& painter, const QRectF& area) {
            paintSheetPhotos(painter, area.adjusted(0, 0, 0, -gap), m_content.photos[i], m_small);
        });
    }
}

void SheetLayout::paint(QPainter& painter, int page) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(QPointF(), m_page), Qt::white);
    painter.setLayoutDirection(m_mirrored ? Qt::RightToLeft : Qt::LeftToRight);
    painter.setPen(Qt::black);
    const double width = m_page.width() - 2 * margin;
    const QRectF head(margin, margin - 4, width, headHeight - 8);
    drawText(painter, head, m_content.title + QStringLiteral(" · ") + m_content.clinic, m_small);
    const QRectF foot(margin, m_page.height() - margin - footHeight + 10, width, footHeight - 6);
    painter.setPen(QPen(hairline, 0.6));
    painter.drawLine(foot.topLeft() - QPointF(0, 3), foot.topRight() - QPointF(0, 3));
    painter.drawLine(head.bottomLeft(), head.bottomRight());
    painter.setPen(Qt::black);
    drawText(painter, foot, m_content.patient + QStringLiteral(" · ") + m_content.printed, m_small);
    drawText(painter, foot, Sheet::tr("Page %1 of %2").arg(charts::digits(page + 1), charts::digits(m_pages)), m_small,
             Qt::AlignRight);
    for (const auto& block : m_blocks) {
        if (block.page == page) {
            painter.save();
            block.draw(painter, block.area);
            painter.restore();
        }
    }
    painter.restore();
}

}  // namespace ebbline::deskapp
