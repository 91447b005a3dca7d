#include "app/desk/model/curve_board.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/curve_figures.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include <algorithm>
#include <map>

namespace ebbline::deskapp {

namespace {

class Curves {
    Q_DECLARE_TR_FUNCTIONS(Curves)
};

QString lastOf(const curves::Curve& curve)
{
    return curve.points.empty() ? QStringLiteral("–") : charts::digits(curve.points.back().points);
}

}  // namespace

CurvePair curvesOf(desk::Desk& desk, const recovery::CourseId& course, recovery::Symptom symptom)
{
    return {desk.curve(course, {symptom, recovery::Side::left}), desk.curve(course, {symptom, recovery::Side::right}),
            desk.asymmetry(course, symptom)};
}

CurveBoard::CurveBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace) {}

void CurveBoard::show(const recovery::CourseId& course)
{
    m_course = course;
    m_symptom = recovery::Symptom::pain;
    m_tableShown = false;
    refresh();
}

void CurveBoard::setSymptom(int symptom)
{
    const auto next = static_cast<recovery::Symptom>(
        std::clamp(symptom, static_cast<int>(recovery::allSymptoms.front()), static_cast<int>(recovery::allSymptoms.back())));
    if (next != m_symptom) {
        m_symptom = next;
        refresh();
    }
}

void CurveBoard::setTableShown(bool shown)
{
    if (shown != m_tableShown) {
        m_tableShown = shown;
        Q_EMIT changed();
    }
}

QString CurveBoard::sentence() const
{
    return m_left.sentence + u'\n' + m_right.sentence;
}

void CurveBoard::refresh()
{
    if (!m_workplace.isOpen() || m_course.isNull()) {
        m_symptoms.setRows({});
        m_table.setRows({});
        m_left = {};
        m_right = {};
        m_figures.clear();
        m_beyond.clear();
        m_events.clear();
        Q_EMIT changed();
        return;
    }
    QList<RowList::Row> tabs;
    for (const auto symptom : recovery::allSymptoms) {
        const auto pair = curvesOf(m_workplace.desk(), m_course, symptom);
        SymptomTab tab;
        tab.symptom = static_cast<int>(symptom);
        tab.name = charts::symptomName(symptom);
        tab.leftCurve = charts::pictureOf(pair.left);
        tab.rightCurve = charts::pictureOf(pair.right);
        tab.last = tr("L %1  R %2", "last scores, left and right").arg(lastOf(pair.left), lastOf(pair.right));
        tab.spoken = tab.leftCurve.sentence + u' ' + tab.rightCurve.sentence;
        if (symptom == m_symptom) {
            m_left = tab.leftCurve;
            m_right = tab.rightCurve;
            m_figures = figuresOf(pair);
            m_beyond = beyondOf(pair);
        }
        tabs.append({QString::number(tab.symptom), {}, QVariant::fromValue(tab)});
    }
    m_symptoms.setRows(std::move(tabs));

    const auto& courses = m_workplace.state().courses;
    const auto found = courses.find(m_course);
    m_events = found == courses.end() ? QList<charts::Event>() : eventsOf(found->second);
    if (found != courses.end() && found->second.treatment) {
        const auto pair = curvesOf(m_workplace.desk(), m_course, m_symptom);
        refreshTable(found->second.treatment->treatment.at, pair.left, pair.right);
    }
    Q_EMIT changed();
}

void CurveBoard::refreshTable(const clock::Moment& treated, const curves::Curve& left, const curves::Curve& right)
{
    std::map<clock::Instant, CurveTableRow> rows;
    const auto fill = [&](const curves::Curve& curve, QString CurveTableRow::* cell) {
        for (const auto& point : curve.points) {
            auto& row = rows[point.at.at];
            const int day = static_cast<int>(point.day);
            row.day = dayText(day);
            row.when = QLocale().toString(dateOf(point.at), QLocale::ShortFormat) + u' ' + clockText(point.at);
            row.*cell = charts::digits(point.points);
            const auto usual = std::find_if(curve.band.begin(), curve.band.end(), [day](const auto& band) { return band.day == day; });
            if (usual != curve.band.end()) {
                row.usual = tr("%1 to %2", "usual range").arg(charts::digits(usual->inner.low), charts::digits(usual->inner.high));
            }
            QStringList notes;
            if (point.late) {
                notes << tr("entered late");
            }
            if (point.amended) {
                notes << tr("amended");
            }
            if (!notes.isEmpty()) {
                row.note = notes.join(QStringLiteral(", "));
            }
        }
    };
    fill(left, &CurveTableRow::left);
    fill(right, &CurveTableRow::right);
    for (const auto& event : m_events) {
        const auto day = dayText(static_cast<int>(event.day));
        auto last = std::find_if(rows.rbegin(), rows.rend(), [&](const auto& row) { return row.second.day == day; });
        if (last == rows.rend()) {
            // Something happened on a day without this score: the day has a line all the same.
            const auto at = treated.at + std::chrono::duration_cast<std::chrono::milliseconds>(
                                             std::chrono::duration<double, std::ratio<86400>>(event.day - recoveryDays(treated, treated)));
            rows[at].day = day;
            last = std::find_if(rows.rbegin(), rows.rend(), [&](const auto& row) { return row.second.day == day; });
        }
        last->second.note += (last->second.note.isEmpty() ? QString() : QStringLiteral(", ")) + event.label;
    }
    QList<RowList::Row> list;
    for (auto& [at, row] : rows) {
        for (auto* cell : {&row.when, &row.left, &row.right, &row.usual}) {
            if (cell->isEmpty()) {
                *cell = QStringLiteral("–");
            }
        }
        row.spoken = tr("%1, %2: left %3, right %4, usual %5. %6", "day, time, scores, usual range, note")
                         .arg(row.day, row.when, row.left, row.right, row.usual, row.note);
        list.append({QString::number(at.time_since_epoch().count()), {}, QVariant::fromValue(row)});
    }
    m_table.setRows(std::move(list));
}

}  // namespace ebbline::deskapp
