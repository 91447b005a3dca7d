#include "app/diary/model/mine_board.h"

#include "app/controls/typed_secret.h"
#include "app/diary/model/chosen_place.h"
#include "app/diary/model/words.h"
#include "core/sync/link_sync.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>

#include <utility>

namespace ebbline::diaryapp {

namespace {

/// The files of one taking along: all of them, or none.
class Written {
public:
    /// \param write  writes the file of this name; \returns what it does
    template <typename Write>
    bool add(const QString& name, Write write)
    {
        const bool there = QFile::exists(name);
        const bool done = write();
        // One that was there and could not be replaced is as it was; behind an address it is written in part.
        if (done || !there || name.contains(QLatin1String("://")))
            m_names << name;
        return done;
    }
    /// \returns false if one of them is still there
    bool remove() const
    {
        bool gone = true;
        for (const QString& name : m_names)
            gone = (!QFile::exists(name) || QFile::remove(name)) && gone;
        return gone;
    }

private:
    QStringList m_names;
};

}  // namespace

MineBoard::MineBoard(Home& home, DiarySettings& settings, QObject* parent)
    : QObject(parent), m_home(home), m_settings(settings)
{
    connect(&home, &Home::openChanged, this, &MineBoard::clear);
    connect(&home, &Home::changed, this, &MineBoard::changed);
}

QString MineBoard::again() const
{
    return m_home.isOpen() && m_home.diary().joined()
               ? tr("Treated again? This diary holds one treatment. Save your data, delete the diary, then join again.")
               : QString();
}

void MineBoard::clear()
{
    m_outcome.clear();
    m_problem.clear();
    m_takeProblem.clear();
    m_eraseProblem.clear();
    m_allowedAt.reset();
    m_confirming = false;
    Q_EMIT changed();
}

QString MineBoard::faultOf(const QString& passphrase) const
{
    // Nothing typed is no attempt.
    if (passphrase.isEmpty())
        return tr("Type your passphrase first.");
    const Done proved = m_home.prove(TypedSecret(passphrase).view());
    if (proved)
        return {};
    switch (proved.error().reason) {
    case Reason::wrongKey: return tr("That is not your passphrase. Nothing was saved or deleted.");
    case Reason::refused:
        if (m_home.isHalfWithSession())
            return tr("This computer does not give its half of the key. If it asks for the password of its keyring, type that first. Then try again. If that does not help, lock the diary and use your recovery code.");
        return tr("This phone does not give its half of the key. Try again. If that does not help, lock the diary and use your recovery code.");
    default: return errorText(proved.error());
    }
}

bool MineBoard::allowTaking(const QString& passphrase)
{
    m_outcome.clear();
    m_allowedAt.reset();
    if (!m_home.isOpen())
        return false;
    m_takeProblem = faultOf(passphrase);
    if (m_takeProblem.isEmpty())
        m_allowedAt = m_home.clock().now();
    Q_EMIT changed();
    return m_allowedAt.has_value();
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
    if (m_home.diary().wordsWait())
        lines << (today.waiting > 0 ? tr("A note or an answer that still waits on this phone would be lost too.")
                                    : tr("Something else that you wrote still waits on this phone and would be lost."));
    return lines.join(QLatin1Char(' '));
}

void MineBoard::takeAlong(const QUrl& folder)
{
    m_outcome.clear();
    const auto allowed = std::exchange(m_allowedAt, {});
    const bool may = allowed && !sync::isOver(*allowed, stepHolds, m_home.clock().now());
    m_takeProblem = may ? QString() : tr("Type your passphrase once more.");
    if (may && m_home.isOpen() && m_home.diary().joined()) {
        const clock::Moment now = m_home.now();
        const std::chrono::year_month_day date{now.day()};
        const QString name = QStringLiteral("diary-%1-%2-%3")
                                 .arg(static_cast<int>(date.year()))
                                 .arg(static_cast<unsigned>(date.month()), 2, 10, QLatin1Char('0'))
                                 .arg(static_cast<unsigned>(date.day()), 2, 10, QLatin1Char('0'));
        const QDir chosen(nameOfChosen(folder));
        bool written = !folder.isEmpty() && chosen.mkpath(name);
        const QDir place(chosen.filePath(name));
        Written files;
        const auto put = [&](const QString& file, const QByteArray& bytes) {
            const QString path = place.filePath(file);
            return files.add(path, [&] { return writeChosen(path, bytes); });
        };
        for (const auto& [file, text] : m_home.diary().tables())
            written = written && put(QString::fromStdString(file), QByteArray::fromStdString(text));
        const auto bundle = m_home.diary().bundle((QCoreApplication::applicationName() + QLatin1Char(' ') + QCoreApplication::applicationVersion()).trimmed().toStdString());
        written = written && bundle && put(QStringLiteral("diary.fhir.json"), QByteArray::fromStdString(*bundle));
        // Opened by whoever opens the folder: as files, they are as plain as the tables.
        for (const auto& [file, photo] : m_home.diary().photoFiles()) {
            const auto jpeg = m_home.diary().photo(photo);
            written = written && jpeg
                      && put(QString::fromStdString(file),
                             QByteArray(reinterpret_cast<const char*>(jpeg->data()), static_cast<qsizetype>(jpeg->size())));
        }
        const QString page = place.filePath(QStringLiteral("diary.pdf"));
        written = written && files.add(page, [&] { return writeRecordPdf(m_home.diary(), m_settings.isFahrenheit(), page); });
        if (written)
            m_outcome = tr("Done. It is in the folder “%1”. Anyone who opens it can read it.").arg(name);
        else if (!files.remove())
            m_outcome = tr("Not all of it could be written. A part is in the folder “%1”. Anyone who opens it can read it: delete the folder.").arg(name);
        else {
            (void)chosen.rmdir(name);  // stays if something else is in it
            m_outcome = tr("It could not be written there. Choose another place.");
        }
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
    m_eraseProblem.clear();
    Q_EMIT changed();
}

void MineBoard::deleteAll(const QString& passphrase)
{
    if (!m_confirming)
        return;
    m_eraseProblem = faultOf(passphrase);
    if (!m_eraseProblem.isEmpty())
        return Q_EMIT changed();
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
