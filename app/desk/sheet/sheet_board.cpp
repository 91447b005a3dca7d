#include "app/desk/sheet/sheet_board.h"

#include "app/desk/model/file_choice.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"

#include <QGuiApplication>
#include <QPageSize>
#include <QPainter>

namespace ebbline::deskapp {

SheetBoard::SheetBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace), m_pictures(workplace), m_printer(workplace)
{
    connect(&m_pictures, &PhotoPictures::arrived, this, [this] {
        if (m_working) {
            takePictures();
        }
    });
    connect(&m_pictures, &PhotoPictures::gone, this, [this] {
        if (m_working) {
            open(m_course);
        }
    });
    connect(&workplace, &Workplace::openChanged, this, [this] {
        if (!m_workplace.isOpen()) {
            m_course = {};
            m_content.reset();
            m_layout.reset();
            m_name.clear();
            m_text.clear();
            m_photoChoice = m_photos = m_working = false;
            Q_EMIT changed();
        }
    });
}

bool SheetBoard::open(const recovery::CourseId& course)
{
    auto content = sheetOf(m_workplace, course);
    if (!content) {
        return false;
    }
    if (course != m_course) {
        m_photos = false;
    }
    m_course = course;
    m_pictures.show(course);
    m_content = std::move(*content);
    auto photos = sheetPhotosOf(m_workplace, course);
    m_photoChoice = !photos.isEmpty();
    m_photos = m_photos && m_photoChoice;
    m_working = m_photos;
    if (m_photos) {
        m_content->photos = std::move(photos);
    }
    m_name = m_content->patient;
    m_outcome.clear();
    if (m_working) {
        takePictures();
    } else {
        lay();
    }
    Q_EMIT outcomeChanged();
    return true;
}

void SheetBoard::setPhotos(bool photos)
{
    if (photos != m_photos && m_content) {
        m_photos = photos;
        open(m_course);
    }
}

void SheetBoard::takePictures()
{
    bool missing = false;
    const auto take = [&](SheetPhoto& photo) {
        if (photo.marked.picture.isNull() && !photo.unreadable) {
            photo.marked.picture = m_pictures.picture(photo.photo, PhotoPictures::Size::paper);
            photo.unreadable = m_pictures.unreadable().contains(photo.photo);
            missing = missing || (photo.marked.picture.isNull() && !photo.unreadable);
        }
    };
    for (auto& pair : m_content->photos) {
        take(pair.first);
        if (pair.last) {
            take(*pair.last);
        }
    }
    m_working = missing;
    lay();
}

void SheetBoard::retranslate()
{
    if (m_workplace.isOpen() && !m_course.isNull()) {
        open(m_course);
    }
}

void SheetBoard::lay()
{
    if (m_content) {
        const QPageSize size(m_letter ? QPageSize::Letter : QPageSize::A4);
        m_layout = std::make_unique<SheetLayout>(*m_content, size.size(QPageSize::Inch) * unitsPerInch,
                                                 QGuiApplication::layoutDirection() == Qt::RightToLeft);
        m_text = m_content->asText();
    }
    Q_EMIT changed();
}

void SheetBoard::setLetter(bool letter)
{
    if (letter != m_letter) {
        m_letter = letter;
        lay();
    }
}

double SheetBoard::pageRatio() const
{
    return m_layout ? m_layout->pageSize().height() / m_layout->pageSize().width() : 1.4;
}

QString SheetBoard::suggestedFile() const
{
    // The patient's name stays out of file names: they show up in recent-file lists.
    return m_content ? QStringLiteral("follow-up-%1-%2.pdf").arg(dateOf(m_workplace.now()).toString(Qt::ISODate),
                                                                  keyOf(m_course).left(6))
                     : QString();
}

void SheetBoard::paint(QPainter& painter, int page, double width) const
{
    if (m_layout && page >= 0 && page < m_layout->pageCount()) {
        const double scale = width / m_layout->pageSize().width();
        painter.scale(scale, scale);
        m_layout->paint(painter, page);
    }
}

void SheetBoard::saveAs()
{
    if (!m_content || m_working) {
        return;
    }
    askWhereToSave(*this, tr("Save the sheet"), suggestedFile(), {tr("PDF files (*.pdf)")}, [this](const QString& path) { write(path); });
}

void SheetBoard::print()
{
    if (!m_content || m_working) {
        return;
    }
    const bool mirrored = QGuiApplication::layoutDirection() == Qt::RightToLeft;
    m_printer.print(
        m_content->title, m_letter ? QPageSize::Letter : QPageSize::A4,
        [content = *m_content, mirrored](const QSizeF& paper) { return std::make_unique<SheetLayout>(content, paper, mirrored); },
        [this](const QString& sentence) {
            m_outcome = sentence;
            Q_EMIT outcomeChanged();
        });
}

bool SheetBoard::write(const QString& path)
{
    if (!m_content || m_working || path.isEmpty()) {
        return false;
    }
    const auto written = writeSheetPdf(*m_content, path, m_letter ? QPageSize::Letter : QPageSize::A4,
                                       QGuiApplication::layoutDirection() == Qt::RightToLeft);
    m_outcome = written ? tr("Saved as %1. The file is not encrypted: keep it as you keep the patient's record.").arg(path)
                        : errorText(written.error());
    Q_EMIT outcomeChanged();
    return written.has_value();
}

SheetPageView::SheetPageView(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &SheetPageView::changed, this, [this] { update(); });
}

void SheetPageView::setSheet(SheetBoard* sheet)
{
    if (sheet != m_sheet) {
        if (m_sheet) {
            m_sheet->disconnect(this);
        }
        m_sheet = sheet;
        if (sheet != nullptr) {
            connect(sheet, &SheetBoard::changed, this, [this] { update(); });
        }
        Q_EMIT changed();
    }
}

void SheetPageView::paint(QPainter* painter)
{
    if (m_sheet) {
        m_sheet->paint(*painter, m_page, width());
    }
}

}  // namespace ebbline::deskapp
