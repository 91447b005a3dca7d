#pragma once
/// \file
/// The folder that a story fills: emptied first, and so only one that holds a story or nothing; held while it is played.

#include "core/result/result.h"

#include <QByteArray>
#include <QString>

#include <utility>

namespace ebbline::story {

/// While it lives, nobody else empties or opens the folder: the lock of its `open.lock`, which whoever opens a demo
/// (platform/open_demo.sh) holds too. The file stays.
class FolderHold {
public:
    FolderHold(FolderHold&& other) noexcept : m_lock(std::exchange(other.m_lock, -1)) {}
    FolderHold& operator=(FolderHold&&) = delete;
    ~FolderHold();

private:
    explicit FolderHold(int lock) : m_lock(lock) {}
    friend Result<FolderHold> emptyForStory(const QString& folder);
    int m_lock;
};

/// Whether the folder may be emptied: it is not there, is empty, or holds the summary.json of a story.
/// \returns Reason::refused with a sentence for the person who named it.
Done mayEmpty(const QString& folder);

/// Empties the folder, or makes it, and leaves a summary.json that says that the story has not ended, so that
/// a story that stops on the way can be played again.
/// \returns the same, Reason::refused as well if somebody holds the folder, or Reason::storageFailed.
Result<FolderHold> emptyForStory(const QString& folder);

/// The file holds all of it afterwards, or what it held before. \returns Reason::storageFailed.
Done writeWhole(const QString& file, const QByteArray& contents);

}  // namespace ebbline::story
