#include "app/desk/photos/photo_board.h"

#include "app/desk/model/times.h"
#include "app/desk/photos/photo_rows.h"

#include <algorithm>

namespace ebbline::deskapp {

PhotoBoard::PhotoBoard(Workplace& workplace, QObject* parent)
    : QObject(parent), m_workplace(workplace), m_pictures(workplace), m_comparison(workplace, m_pictures), m_intake(workplace)
{
    connect(&workplace, &Workplace::changed, this, &PhotoBoard::refresh);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        if (!m_workplace.isOpen()) {
            show({});
        }
    });
    connect(&m_pictures, &PhotoPictures::arrived, this, [this](const QString& key) {
        if (m_pictures.unreadable().contains(photoFromKey(key))) {
            refresh();
        }
    });
}

void PhotoBoard::show(const recovery::CourseId& course)
{
    if (course != m_course) {
        m_course = course;
        m_pictures.show(course);
        m_comparison.show(course);
        m_intake.show(course);
    }
    refresh();
}

bool PhotoBoard::compare(const QString& photo)
{
    m_comparison.show(m_course);
    return photo.isEmpty() ? m_comparable : m_comparison.open(photoFromKey(photo));
}

QString PhotoBoard::spokenAt(int row) const
{
    const auto& rows = m_rows.rows();
    return row >= 0 && row < rows.size() ? rows[row].value.value<PhotoRow>().spoken : QString();
}

void PhotoBoard::refresh()
{
    QList<RowList::Row> rows;
    int arriving = 0;
    m_who.clear();
    if (m_workplace.isOpen() && !m_course.isNull()) {
        const auto& courses = m_workplace.state().courses;
        if (const auto course = courses.find(m_course); course != courses.end()) {
            const auto photos = m_workplace.desk().photos(m_course);
            rows = photoRows(photos, course->second, m_workplace.now(), m_pictures.unreadable());
            arriving = static_cast<int>(std::ranges::count_if(photos, [](const auto& photo) { return !photo.isHere() && !photo.refused; }));
        }
        if (const auto summary = m_workplace.desk().summary(m_course)) {
            m_who = QString::fromStdString(summary->patientName) + QStringLiteral(" · ") + dayText(summary->day);
        }
    }
    m_comparable = std::ranges::any_of(rows, [](const RowList::Row& row) { return row.value.value<PhotoRow>().shown; });
    m_summary = photosSummary(rows, arriving);
    m_rows.setRows(std::move(rows));
    m_comparison.refresh();
    Q_EMIT changed();
}

}  // namespace ebbline::deskapp
