#include "app/desk/practice/practice_board.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/file_choice.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/practice/figure_files.h"
#include "app/desk/practice/figures.h"
#include "app/desk/practice/practice_words.h"

#include <QElapsedTimer>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

constexpr qint64 sliceMs = 6;  ///< of reading at a time: a frame at 60 Hz has 16

}  // namespace

PracticeBoard::PracticeBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    m_pool.setMaxThreadCount(1);
    m_slice.setInterval(0);
    connect(&m_slice, &QTimer::timeout, this, &PracticeBoard::readSome);
    connect(&workplace, &Workplace::openChanged, this, &PracticeBoard::forget);
}

PracticeBoard::~PracticeBoard()
{
    m_pool.clear();
    m_pool.waitForDone();
}

template <typename Work, typename Take>
void PracticeBoard::beside(Work work, Take take)
{
    ++m_running;
    m_pool.start([this, round = m_round, work = std::move(work), take = std::move(take)]() mutable {
        auto result = work();
        // The destructor waits for this thread, and an object that is gone receives nothing.
        QMetaObject::invokeMethod(
            this,
            [this, round, take, result = std::move(result)]() mutable {
                if (round == m_round) {
                    --m_running;
                    take(std::move(result));
                    finish();
                }
            },
            Qt::QueuedConnection);
    });
}

void PracticeBoard::forget()
{
    ++m_round;
    m_slice.stop();
    m_pool.clear();
    m_running = 0;
    m_working = false;
    m_operations = 0;
    m_ids.clear();
    m_reading.reset();
    m_courses.reset();
    m_tallies.clear();
    m_figures.reset();
    m_burden.reset();
    m_adherence.reset();
    m_comparison.reset();
    m_watch = {};
    m_odds = false;
    m_outcome.clear();
    show();
}

void PracticeBoard::open()
{
    if (!m_workplace.isOpen()) {
        return;
    }
    const auto operations = m_workplace.state().operations;
    const auto day = static_cast<int>(m_workplace.now().day().time_since_epoch().count());
    if (m_courses && operations == m_operations && day == m_day) {
        return show();
    }
    ++m_round;
    m_running = 0;
    m_operations = operations;
    m_day = day;
    m_ids = m_workplace.desk().courseIds();
    m_read = m_tallied = 0;
    m_reading = std::make_shared<std::vector<learning::PastCourse>>();
    m_reading->reserve(m_ids.size());
    m_working = true;
    m_odds = false;
    m_slice.start();
    Q_EMIT changed();
}

void PracticeBoard::readSome()
{
    if (!m_workplace.isOpen()) {
        return;
    }
    if (m_read < m_ids.size() || m_reading) {
        readPast();
    } else {
        readTallies();
    }
    Q_EMIT changed();
}

void PracticeBoard::readPast()
{
    QElapsedTimer clock;
    clock.start();
    for (; m_read < m_ids.size() && clock.elapsed() < sliceMs; ++m_read) {
        if (auto course = m_workplace.desk().pastCourse(m_ids[m_read])) {
            m_reading->push_back(std::move(*course));
        }
    }
    if (m_read == m_ids.size()) {
        m_courses = std::move(m_reading);
        workOutFigures();
    }
}

void PracticeBoard::readTallies()
{
    QElapsedTimer clock;
    clock.start();
    for (; m_tallied < m_ids.size() && clock.elapsed() < sliceMs; ++m_tallied) {
        const auto& id = m_ids[m_tallied];
        const auto stamp = m_workplace.desk().tallyStamp(id);
        auto kept = m_tallies.find(id);
        if (stamp && (kept == m_tallies.end() || kept->second.stamp != *stamp)) {
            m_tallies.insert_or_assign(id, Kept{*stamp, m_workplace.desk().tally(id)});
        }
    }
    if (m_tallied < m_ids.size()) {
        return;
    }
    m_slice.stop();
    std::vector<desk::CourseTally> tallies;
    for (const auto& [id, kept] : m_tallies) {
        if (kept.tally) {
            tallies.push_back(*kept.tally);
        }
    }
    beside([tallies = std::move(tallies), now = m_workplace.now().at] {
        return std::pair(desk::burdenOf(tallies, now), desk::adherenceOf(tallies));
    }, [this](auto both) {
        m_burden = std::move(both.first);
        m_adherence = std::move(both.second);
    });
}

void PracticeBoard::workOutFigures()
{
    beside([courses = m_courses] { return std::make_shared<const desk::PracticeFigures>(desk::practiceFigures(*courses)); },
           [this](std::shared_ptr<const desk::PracticeFigures> figures) {
               m_figures = std::move(figures);
               m_watch = m_figures->watch;
               m_comparison.reset();
               if (groupIndex(m_first) < 0 || groupIndex(m_second) < 0) {
                   setWay(static_cast<int>(m_way));
               } else {
                   workOutComparison();
               }
               beside([watch = m_watch, design = m_figures->design]() mutable {
                   learning::watchOdds(watch, design);
                   return watch;
               }, [this](learning::PracticeWatch watch) {
                   m_watch = std::move(watch);
                   m_odds = true;
               });
           });
}

void PracticeBoard::workOutComparison()
{
    m_comparison.reset();
    if (m_courses && !m_first.empty() && !m_second.empty() && m_first != m_second) {
        m_working = true;
        beside([courses = m_courses, way = m_way, first = m_first, second = m_second] {
            return learning::compareWays(*courses, way, first, second);
        }, [this, first = m_first, second = m_second](learning::Comparison comparison) {
            if (first == m_first && second == m_second) {
                m_comparison = std::move(comparison);
            }
        });
    }
    show();
}

void PracticeBoard::finish()
{
    m_working = m_running > 0 || m_slice.isActive();
    show();
}

void PracticeBoard::show()
{
    m_shown.clear();
    if (m_figures) {
        switch (m_part) {
        case Complications:
            m_shown = complicationFigures(*m_figures);
            break;
        case Settling:
            m_shown = resolutionFigures(*m_figures);
            break;
        case Comparison:
            if (m_comparison) {
                m_shown = comparisonFigures(*m_comparison, m_way);
            } else if (groupsOfWay().size() < 2) {
                m_shown = {lackingFigure(QStringLiteral("comparison"), wayName(m_way),
                                         groupsOfWay().empty() ? tr("Not enough to say: a comparison needs two groups, and no course says to which it belongs.")
                                                              : tr("Not enough to say: a comparison needs two groups, and all courses that can be told apart belong to one."))};
            }
            break;
        case OverTime:
            m_shown = watchFigures(m_watch, m_figures->design, m_odds, [this](const std::string& course) {
                return m_workplace.isOpen() ? m_workplace.patientName(courseFromKey(QString::fromStdString(course))) : QString();
            });
            break;
        case Alerts:
            m_shown = m_burden ? burdenFigures(*m_burden) : QList<PracticeFigure>();
            break;
        case Adherence:
            m_shown = m_adherence ? adherenceFigures(*m_adherence) : QList<PracticeFigure>();
            break;
        default:
            break;
        }
    }
    Q_EMIT changed();
    Q_EMIT figuresChanged();
}

void PracticeBoard::retranslate()
{
    m_outcome.clear();
    Q_EMIT outcomeChanged();
    show();
}

QStringList PracticeBoard::parts() const
{
    return {tr("Complications"), tr("Time to settle"), tr("Techniques"), tr("Over time"), tr("Alerts"), tr("Adherence"), tr("Lots"), tr("Usual range")};
}

void PracticeBoard::setPart(int part)
{
    if (part != m_part && part >= Complications && part <= UsualRange) {
        m_part = part;
        m_outcome.clear();
        Q_EMIT outcomeChanged();
        show();
    }
}

QString PracticeBoard::summary() const
{
    if (!m_figures) {
        return m_working ? tr("Reading the courses") : QString();
    }
    const auto known = static_cast<int>(m_figures->all.known);
    return tr("%1 · %Ln with a known outcome", nullptr, known)
        .arg(Practice::tr("%Ln course(s)", nullptr, static_cast<int>(m_figures->courses)));
}

double PracticeBoard::progress() const
{
    if (m_ids.empty()) {
        return m_working ? 0 : 1;
    }
    // Reading courses, then tallies; working out is the rest.
    const auto whole = static_cast<double>(2 * m_ids.size());
    return 0.9 * static_cast<double>(m_read + m_tallied) / whole + (m_working ? 0 : 0.1);
}

QStringList PracticeBoard::ways() const
{
    QStringList names;
    for (const auto way : learning::allWays) {
        names << wayName(way);
    }
    return names;
}

const std::vector<learning::GroupShare>& PracticeBoard::groupsOfWay() const
{
    static const std::vector<learning::GroupShare> none;
    return m_figures ? m_figures->ways[static_cast<std::size_t>(m_way)] : none;
}

QStringList PracticeBoard::groups() const
{
    QStringList names;
    for (const auto& group : groupsOfWay()) {
        names << tr("%1 (%2)", "group, courses").arg(groupName(m_way, group.group), charts::digits(static_cast<int>(group.known + group.unknown)));
    }
    return names;
}

int PracticeBoard::groupIndex(const std::string& group) const
{
    const auto& all = groupsOfWay();
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.group == group; });
    return found == all.end() ? -1 : static_cast<int>(found - all.begin());
}

void PracticeBoard::setWay(int way)
{
    m_way = static_cast<learning::Way>(std::clamp(way, 0, static_cast<int>(learning::allWays.size()) - 1));
    const auto& all = groupsOfWay();
    m_first = all.empty() ? std::string() : all[0].group;
    m_second = all.size() < 2 ? std::string() : all[1].group;
    workOutComparison();
}

void PracticeBoard::compare(int first, int second)
{
    const auto& all = groupsOfWay();
    const auto count = static_cast<int>(all.size());
    if (first >= 0 && second >= 0 && first < count && second < count && first != second) {
        m_first = all[static_cast<std::size_t>(first)].group;
        m_second = all[static_cast<std::size_t>(second)].group;
        workOutComparison();
    }
}

QString PracticeBoard::wayCautionText() const
{
    return tr("Comparison, not proof: nobody drew by lot who got what.") + QLatin1Char(' ') + wayCaution(m_way);
}

bool PracticeBoard::write(const QString& key, const QString& path)
{
    const auto found = std::find_if(m_shown.begin(), m_shown.end(), [&](const auto& figure) { return figure.key == key; });
    if (found == m_shown.end() || path.isEmpty()) {
        return false;
    }
    const auto caution = m_part == Comparison ? wayCautionText() : QString();
    const auto written = writeFigure(*found, caution, path);
    m_outcome = written ? tr("Saved as %1. The file is not encrypted.").arg(path) : errorText(written.error());
    Q_EMIT outcomeChanged();
    return written.has_value();
}

void PracticeBoard::saveAs(const QString& key, const QString& kind)
{
    askWhereToSave(*this, tr("Save the figure"), QStringLiteral("%1-%2.%3").arg(key, dateOf(m_workplace.now()).toString(Qt::ISODate), kind),
        {QStringLiteral("%1 (*.%2)").arg(kind.toUpper(), kind)}, [this, key](const QString& path) { write(key, path); });
}

}  // namespace ebbline::deskapp
