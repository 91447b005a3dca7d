#include "app/diary/model/mine_board.h"

#include "app/diary/model/words.h"

#include <QCoreApplication>
#include <QDir>
#include <QSaveFile>

namespace ebbline::diaryapp {

namespace {

bool writeFile(const QString& name, const QByteArray& bytes)
{
    QSaveFile file(name);
    return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
}

}  // namespace

MineBoard::MineBoard(Home& home, DiarySettings& settings, QObject* parent)
    : QObject(parent), m_home(home), m_settings(settings)
{
    connect(&home, &Home::openChanged, this, &MineBoard::clear);
    connect(&home, &Home::changed, this, &MineBoard::changed);
}

void MineBoard::clear()
{
    m_outcome.clear();
    m_problem.clear();
    m_confirming = false;
    Q_EMIT changed();
}

QString MineBoard::loss() const
{
    if (!m_home.isOpen() || !m_home.diary().joined())
        return {};
    const auto today = m_home.diary().today();
    QStringList lines{today.waiting > 0 ? tr("%n entry/entries are only on this phone and would be lost.", "", static_cast<int>(today.waiting))
                                        : tr("All your entries are on the clinic's computer too.")};
    const auto photos = m_home.diary().photos();
    if (const auto only = std::ranges::count_if(photos, [](const patient::PhotoView& view) { return view.here && !view.received; }); only > 0)
        lines << tr("%n photograph(s) are only on this phone and would be lost.", "", static_cast<int>(only));
    return lines.join(QLatin1Char(' '));
}

void MineBoard::takeAlong(const QUrl& folder)
{
    m_outcome.clear();
    if (m_home.isOpen() && m_home.diary().joined()) {
        const clock::Moment now = m_home.now();
        const std::chrono::year_month_day date{now.day()};
        const QString name = QStringLiteral("diary-%1-%2-%3")
                                 .arg(static_cast<int>(date.year()))
                                 .arg(static_cast<unsigned>(date.month()), 2, 10, QLatin1Char('0'))
                                 .arg(static_cast<unsigned>(date.day()), 2, 10, QLatin1Char('0'));
        QDir place(folder.toLocalFile());
        bool written = place.mkpath(name) && place.cd(name);
        for (const auto& [file, text] : m_home.diary().tables())
            written = written && writeFile(place.filePath(QString::fromStdString(file)), QByteArray::fromStdString(text));
        const auto bundle = m_home.diary().bundle((QCoreApplication::applicationName() + QLatin1Char(' ') + QCoreApplication::applicationVersion()).trimmed().toStdString());
        written = written && bundle && writeFile(place.filePath(QStringLiteral("diary.fhir.json")), QByteArray::fromStdString(*bundle));
        // Opened by whoever opens the folder: as files, they are as plain as the tables.
        for (const auto& [file, photo] : m_home.diary().photoFiles()) {
            const auto jpeg = m_home.diary().photo(photo);
            written = written && jpeg
                      && writeFile(place.filePath(QString::fromStdString(file)),
                                   QByteArray(reinterpret_cast<const char*>(jpeg->data()), static_cast<qsizetype>(jpeg->size())));
        }
        written = written && writeRecordPdf(m_home.diary(), m_settings.isFahrenheit(), place.filePath(QStringLiteral("diary.pdf")));
        m_outcome = written ? tr("Done. It is in the folder “%1”. Anyone who opens it can read it.").arg(name)
                            : tr("It could not be written there. Choose another place.");
    }
    Q_EMIT changed();
}

void MineBoard::askDelete()
{
    m_confirming = true;
    Q_EMIT changed();
}

void MineBoard::keepAll()
{
    m_confirming = false;
    Q_EMIT changed();
}

void MineBoard::deleteAll()
{
    if (!m_confirming)
        return;
    if (const Done erased = m_home.erase(); !erased) {
        m_problem = errorText(erased.error());
        Q_EMIT changed();
        return;
    }
    m_confirming = false;
    m_settings.forget();
    Q_EMIT deleted();
}

}  // namespace ebbline::diaryapp
