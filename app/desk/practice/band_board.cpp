#include "app/desk/practice/band_board.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/practice/practice_words.h"

#include <algorithm>

namespace ebbline::deskapp {

namespace {

class Bands {
    Q_DECLARE_TR_FUNCTIONS(Bands)
};

QString refusalText(bands::Refusal refusal, int count)
{
    switch (refusal) {
    case bands::Refusal::noConsent:
        return Bands::tr("%Ln course(s): the patient has not agreed that her course teaches", nullptr, count);
    case bands::Refusal::stillOpen:
        return Bands::tr("%Ln course(s): no follow-up yet, nobody knows how it ended", nullptr, count);
    case bands::Refusal::complicated:
        return Bands::tr("%Ln course(s): complicated", nullptr, count);
    case bands::Refusal::treated:
        return Bands::tr("%Ln course(s): treated because of a finding", nullptr, count);
    case bands::Refusal::tooFewDays:
        return Bands::tr("%Ln course(s): too few days with an entry", nullptr, count);
    }
    return {};
}

QString fitText(bands::Fit fit)
{
    switch (fit) {
    case bands::Fit::notEnough:
        return Bands::tr("not enough to say: nearly the assumption");
    case bands::Fit::holds:
        return Bands::tr("holds");
    case bands::Fit::tooNarrow:
        return Bands::tr("too narrow: false alerts");
    case bands::Fit::tooWide:
        return Bands::tr("too wide: it would look late");
    }
    return {};
}

QString aboveText(const bands::SymptomCoverage& symptom, const bands::Above& above)
{
    if (symptom.fit == bands::Fit::notEnough) {
        return QStringLiteral("–");
    }
    return Bands::tr("%1, promised %2", "share seen, share promised").arg(percentText(above.seen), percentText(above.promised));
}

QVariantList coverageOf(const bands::Coverage& coverage)
{
    QVariantList rows;
    for (const auto& symptom : coverage.symptoms) {
        rows.append(QVariant(QStringList{charts::symptomName(symptom.symptom), charts::digits(symptom.courses), fitText(symptom.fit),
                                         aboveText(symptom, symptom.above90), aboveText(symptom, symptom.above97)}));
    }
    return rows;
}

/// Where a version comes from, by whom, when.
QString restsText(const bands::Learned& learned, const QString& when)
{
    const auto by = QString::fromStdString(learned.by);
    if (!learned.brought) {
        return BandBoard::tr("Learned from %Ln course(s) by %1, %2", nullptr, static_cast<int>(learned.courses.size())).arg(by, when);
    }
    const auto name = leftToRight(learned.brought->name);
    const int courses = learned.band.provenance().courses;
    const auto taken = Bands::tr("Taken from a file by %1, %2. There it is called %3 and rests on %Ln course(s).", nullptr, courses).arg(by, when, name);
    const auto seen = learned.brought->ofOthersAlone ? Bands::tr("Whoever took it says that no course of this clinic is behind it.")
                                                     : Bands::tr("It was checked on courses that were treated after it was learned.");
    return taken + QLatin1Char(' ') + seen;
}

}  // namespace

QString checkText(const bands::Learned& learned)
{
    if (!bands::objection(learned.coverage)) {
        return Bands::tr("It held on courses that it had not seen: %1 of readings lay above its 90th centile (%2 to %3).")
            .arg(percentText(learned.coverage.overall90.seen), numberText(100 * learned.coverage.overall90.low),
                 numberText(100 * learned.coverage.overall90.high));
    }
    if (learned.coverage.courses < bands::fewestCourses && learned.brought) {
        return Bands::tr("Cannot be used yet: it could be checked on %Ln course(s) of this clinic, %1 are needed.", nullptr, learned.coverage.courses)
            .arg(charts::digits(bands::fewestCourses));
    }
    if (learned.coverage.courses < bands::fewestCourses) {
        return Bands::tr("Cannot be used: %Ln course(s) behind it, %1 are needed.", nullptr, learned.coverage.courses)
            .arg(charts::digits(bands::fewestCourses));
    }
    return Bands::tr("Cannot be used: it did not hold on courses that it had not seen. The table says where.");
}

BandBoard::BandBoard(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    m_pool.setMaxThreadCount(1);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        ++m_round;
        m_learning = false;
        m_outcome.clear();
        m_choosing.clear();
        m_teachers.clear();
        m_refusals.clear();
        refresh();
    });
}

BandBoard::~BandBoard()
{
    m_pool.clear();
    m_pool.waitForDone();
}

void BandBoard::open()
{
    if (!m_workplace.isOpen()) {
        return;
    }
    const auto teaching = m_workplace.desk().teaching();
    const auto count = static_cast<int>(teaching.courses.size());
    m_mayLearn = count >= bands::folds;
    m_teachers = m_mayLearn ? tr("%Ln course(s) may teach a new version.", nullptr, count)
                            : tr("%Ln course(s) may teach. %1 are needed to check a version.", nullptr, count).arg(charts::digits(bands::folds));
    std::map<bands::Refusal, int> refused;
    for (const auto& [course, refusal] : teaching.refused) {
        ++refused[refusal];
    }
    m_refusals.clear();
    for (const auto& [refusal, number] : refused) {
        m_refusals << refusalText(refusal, number);
    }
    refresh();
}

void BandBoard::refresh()
{
    QList<RowList::Row> rows;
    if (m_workplace.isOpen()) {
        const auto& history = m_workplace.desk().bandHistory();
        const auto wasInUse = [&](const std::string& version) {
            return version == bands::seedBand().provenance().version
                   || std::any_of(history.choices().begin(), history.choices().end(), [&](const auto& choice) { return choice.version == version; });
        };
        for (auto learned = history.versions().rbegin(); learned != history.versions().rend(); ++learned) {
            BandRow row;
            row.version = QString::fromStdString(learned->version());
            row.title = leftToRight(learned->version());
            row.rests = restsText(*learned, whenText(learned->at, m_workplace.now()));
            row.check = checkText(*learned);
            row.inUse = learned->version() == history.activeVersion();
            row.usable = !row.inUse && !bands::objection(learned->coverage);
            row.wasInUse = wasInUse(learned->version());
            row.coverage = coverageOf(learned->coverage);
            rows.append({row.version, {}, QVariant::fromValue(row)});
        }
        const auto& seed = bands::seedBand().provenance().version;
        BandRow first;
        first.version = QString::fromStdString(seed);
        first.title = leftToRight(seed);
        first.rests = tr("The range every clinic begins with: an assumption, no courses behind it");
        first.inUse = seed == history.activeVersion();
        first.usable = !first.inUse;
        first.wasInUse = true;
        rows.append({first.version, {}, QVariant::fromValue(first)});
    }
    m_versions.setRows(std::move(rows));
    Q_EMIT changed();
}

QString BandBoard::inUse() const
{
    return m_workplace.isOpen() ? charts::bandLegend(m_workplace.desk().bandHistory().active().provenance()) : QString();
}

QStringList BandBoard::choices() const
{
    QStringList lines;
    if (m_workplace.isOpen()) {
        const auto& all = m_workplace.desk().bandHistory().choices();
        for (auto choice = all.rbegin(); choice != all.rend(); ++choice) {
            const auto what = choice->back ? tr("%1 went back to %2, %3: %4", "person, version, when, reason") : tr("%1 put %2 into use, %3: %4", "person, version, when, reason");
            lines << what.arg(QString::fromStdString(choice->by), leftToRight(choice->version), whenText(choice->at, m_workplace.now()),
                              QString::fromStdString(choice->reason));
        }
    }
    return lines;
}

QStringList BandBoard::coverageHeader() const
{
    return {tr("Symptom"), tr("Courses"), tr("On courses it had not seen"), tr("Above the 90th"), tr("Above the 97th")};
}

void BandBoard::learn()
{
    if (!m_workplace.isOpen() || m_learning) {
        return;
    }
    if (m_workplace.desk().person().empty()) {
        m_outcome = tr("Say first who is at the desk: a version carries the name of who learned it.");
        Q_EMIT changed();
        return;
    }
    if (!m_workplace.mayDo(records::Task::protocol)) {
        return;
    }
    m_learning = true;
    m_outcome.clear();
    Q_EMIT changed();
    m_pool.start([this, round = m_round, lesson = m_workplace.desk().bandLesson()] {
        auto learned = desk::learnFrom(lesson);
        QMetaObject::invokeMethod(
            this,
            [this, round, learned = std::move(learned)] {
                if (round != m_round) {
                    return;
                }
                m_learning = false;
                const auto kept = learned ? m_workplace.desk().keepBand(*learned) : fail(learned.error());
                if (kept) {
                    m_outcome = tr("Learned %1. Nothing has changed for any patient: look at its check, then use it or leave it.").arg(leftToRight(*kept));
                } else if (kept.error().reason == Reason::alreadyExists) {
                    m_outcome = tr("Nothing has changed since the last version was learned.");
                } else {
                    m_outcome = errorText(kept.error());
                }
                m_workplace.settle({});
                open();
            },
            Qt::QueuedConnection);
    });
}

void BandBoard::startChoosing(const QString& version)
{
    const int row = m_versions.rowOf(version);
    if (row >= 0) {
        m_choosing = version;
        m_choosingBack = m_versions.rows()[row].value.value<BandRow>().wasInUse;
        Q_EMIT changed();
    }
}

void BandBoard::cancelChoosing()
{
    m_choosing.clear();
    Q_EMIT changed();
}

QString BandBoard::choosingText() const
{
    return m_choosingBack ? tr("Go back to %1").arg(leftToRight(m_choosing.toStdString())) : tr("Use %1").arg(leftToRight(m_choosing.toStdString()));
}

void BandBoard::choose(const QString& reason)
{
    if (m_choosing.isEmpty() || reason.trimmed().isEmpty() || !m_workplace.isOpen() || !m_workplace.mayDo(records::Task::protocol)) {
        return;
    }
    const auto version = m_choosing.toStdString();
    m_choosing.clear();
    const auto words = reason.trimmed().toStdString();
    const auto done = m_choosingBack ? m_workplace.desk().returnToBand(version, words) : m_workplace.desk().useBand(version, words);
    m_outcome = done ? tr("%1 is in use. Courses that run keep the range they began with.").arg(leftToRight(version)) : QString();
    m_workplace.settle(done);
    refresh();
}

}  // namespace ebbline::deskapp
