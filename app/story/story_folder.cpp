#include "app/story/story_folder.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace ebbline::story {

namespace {

constexpr auto everything = QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot;

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
    if (there.exists() && !QDir(folder).isEmpty(everything) && !holdsStory(folder))
        return fail(Reason::refused, name + " is not empty and holds no earlier story, and it would be emptied. Name a new folder, "
                                            "or empty this one yourself.");
    return {};
}

Done emptyForStory(const QString& folder)
{
    if (const Done may = mayEmpty(folder); !may)
        return may;
    const auto entries = QDir(folder).entryInfoList(everything);
    // The summary goes last: a folder that is emptied halfway is still known for one of a story's.
    for (const QFileInfo& entry : entries)
        if (entry.fileName() != QStringLiteral("summary.json") && !removed(entry))
            return fail(Reason::storageFailed, "story: the folder cannot be emptied");
    QFile summary(summaryIn(folder));
    const QJsonObject begun{{"result", QStringLiteral("not played to the end")}, {"days", 0}, {"steps", QJsonObject{}},
                            {"findings", QJsonArray{}}, {"hub", QJsonObject{}}};
    if (!QDir().mkpath(folder) || !summary.open(QIODevice::WriteOnly) || summary.write(QJsonDocument(begun).toJson()) < 0)
        return fail(Reason::storageFailed, "story: the folder cannot be made");
    return {};
}

}  // namespace ebbline::story
