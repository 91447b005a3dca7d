#include "app/desk/model/course_list.h"

#include "app/desk/model/times.h"

#include <algorithm>

namespace ebbline::deskapp {

bool hasLot(const journal::State& state, const recovery::CourseId& course, const QString& text)
{
    const auto found = state.courses.find(course);
    if (found == state.courses.end() || !found->second.treatment) {
        return false;
    }
    const auto& placements = found->second.treatment->treatment.placements;
    return std::any_of(placements.begin(), placements.end(), [&](const recovery::Placement& placement) {
        return QString::fromStdString(placement.lot).contains(text, Qt::CaseInsensitive);
    });
}

CourseList::CourseList(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    connect(&workplace, &Workplace::changed, this, &CourseList::refresh);
    connect(&workplace, &Workplace::openChanged, this, &CourseList::refresh);
}

void CourseList::setSearch(const QString& text)
{
    if (text != m_search) {
        m_search = text;
        refresh();
    }
}

QString CourseList::emptyText() const
{
    return m_search.isEmpty() ? tr("Treatments that are recorded show up here.")
                              : tr("No patient and no lot number matches.");
}

void CourseList::refresh()
{
    QList<RowList::Row> rows;
    m_summary.clear();
    if (!m_workplace.isOpen()) {
        m_search.clear();
    } else {
        const auto now = m_workplace.now();
        const auto courses = m_workplace.desk().courses();
        for (const auto& course : courses) {
            CourseRow row;
            row.name = QString::fromStdString(course.patientName);
            if (!m_search.isEmpty() && !row.name.contains(m_search, Qt::CaseInsensitive)
                && !hasLot(m_workplace.state(), course.course, m_search)) {
                continue;
            }
            row.key = keyOf(course.course);
            row.day = dayText(course.day);
            row.treated = tr("Treated %1").arg(whenText(course.treated, now));
            row.linked = course.linked;
            row.closed = course.closed;
            const auto last = course.lastEntry ? tr("last entry %1 ago").arg(agoText(*course.lastEntry, now)) : tr("no entry yet");
            row.state = course.closed   ? tr("Closed")
                        : course.linked ? tr("Phone linked, %1").arg(last)
                                        : tr("No phone linked");
            QStringList news;
            if (course.unopened > 0) {
                news << tr("%Ln not opened", "entries", static_cast<int>(course.unopened));
            }
            if (course.unread > 0) {
                news << tr("%Ln message(s) not read", nullptr, static_cast<int>(course.unread));
            }
            row.news = news.join(QStringLiteral(", "));
            row.spoken = QStringList{row.name, row.day, row.treated, row.state, row.news}.join(QStringLiteral(". "));
            rows.append({row.key, {}, QVariant::fromValue(row)});
        }
        m_summary = tr("%Ln course(s)", nullptr, static_cast<int>(rows.size()));
    }
    m_rows.setRows(std::move(rows));
    Q_EMIT changed();
}

}  // namespace ebbline::deskapp
