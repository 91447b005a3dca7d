#include "app/story/story_folder.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

namespace ebbline::story {

namespace {

constexpr auto everything = QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot;

constexpr QLatin1String lockName{"open.lock"};

QString summaryIn(const QString& folder)
{
    return folder + QStringLiteral("/summary.json");
}

/// A summary as app/story/summary.cpp writes it.
bool holdsStory(const QString& folder)
{
    QFile file(summaryIn(folder));
    if (!file.open(QIODevice::ReadOnly))
        return false;
    const QJsonObject root = QJsonDocument::fromJson(file.readAll()).object();
    return root["result"].isString() && root["days"].isDouble() && root["steps"].isObject() && root["findings"].isArray()
           && root["hub"].isObject();
}

/// Nothing, or the lock that one left who came no further.
bool holdsNothing(const QString& folder)
{
    const QStringList names = QDir(folder).entryList(everything);
    return names.isEmpty() || names == QStringList{QString(lockName)};
}

bool removed(const QFileInfo& entry)
{
    // What a link leads to is not ours.
    if (entry.isDir() && !entry.isSymLink())
        return QDir(entry.filePath()).removeRecursively();
    return QFile::remove(entry.filePath());
}

}  // namespace

Done mayEmpty(const QString& folder)
{
    if (folder.trimmed().isEmpty())
        return fail(Reason::refused, "--out names no folder. Name a new one, or one of an earlier story.");
    const QFileInfo there(folder);
    const std::string name = "'" + folder.toStdString() + "'";
    if (there.exists() && !there.isDir())
        return fail(Reason::refused, name + " is a file. Name a folder: a new one, or one of an earlier story.");
    if (there.exists() && !holdsNothing(folder) && !holdsStory(folder))
        return fail(Reason::refused, name + " is not empty and holds no earlier story, and it would be emptied. Name a new folder, "
                                            "or empty this one yourself.");
    return {};
}

FolderHold::~FolderHold()
{
    if (m_lock >= 0)
        ::close(m_lock);
}

Result<FolderHold> emptyForStory(const QString& folder)
{
    if (const Done may = mayEmpty(folder); !may)
        return fail(may.error());
    if (!QDir().mkpath(folder))
        return fail(Reason::storageFailed, "story: the folder cannot be made");
    // Not kept by the hub that is started meanwhile.
    FolderHold hold(::open(QFile::encodeName(folder + QLatin1Char('/') + lockName).constData(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0666));
    if (hold.m_lock < 0)
        return fail(Reason::storageFailed, "story: the folder cannot be written to");
    if (::flock(hold.m_lock, LOCK_EX | LOCK_NB) != 0)
        return fail(Reason::refused, "'" + folder.toStdString() + "' is in use: a story is being played there, or the demo in it is open. "
                                     "Wait for its end, or name another folder.");
    const auto entries = QDir(folder).entryInfoList(everything);
    // The summary goes last: a folder that is emptied halfway is still known for one of a story's.
    for (const QFileInfo& entry : entries)
        if (entry.fileName() != QStringLiteral("summary.json") && entry.fileName() != lockName && !removed(entry))
            return fail(Reason::storageFailed, "story: the folder cannot be emptied");
    const QJsonObject begun{{"result", QStringLiteral("not played to the end")}, {"days", 0}, {"steps", QJsonObject{}},
                            {"findings", QJsonArray{}}, {"hub", QJsonObject{}}};
    if (const Done noted = writeWhole(summaryIn(folder), QJsonDocument(begun).toJson()); !noted)
        return fail(noted.error());
    return hold;
}

Done writeWhole(const QString& file, const QByteArray& contents)
{
    QSaveFile out(file);
    // The last bytes leave the buffer here; whether they did is asked before the commit.
    if (!out.open(QIODevice::WriteOnly) || out.write(contents) != contents.size() || !out.flush() || !out.commit())
        return fail(Reason::storageFailed, "story: '" + file.toStdString() + "' cannot be written; is the disk full?");
    return {};
}

}  // namespace ebbline::story
