#pragma once
/// \file
/// Pictures of the photographs for the pages: opened from the vault one at a time, decoded on another thread, kept in
/// memory only, and gone with the lock. Nothing opened is written to a disk.

#include "app/diary/model/home.h"

#include <QCache>
#include <QImage>
#include <QPair>
#include <QtQml/qqmlregistration.h>

#include <deque>

namespace ebbline::diaryapp {

class PhotoShelf : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")

public:
    enum class Size { Small, Whole };

    explicit PhotoShelf(Home& home, QObject* parent = nullptr);

    /// The picture if it is at hand; else null, and arrived() once it is, if it can be shown at all.
    QImage picture(const QString& key, Size size);
    /// It was taken back.
    void forget(const QString& key);

Q_SIGNALS:
    void arrived(const QString& key);
    void emptied();

private:
    using Place = QPair<QString, int>;
    void next();
    void empty();

    Home& m_home;
    QCache<Place, QImage> m_pictures;
    std::deque<Place> m_wanted;
    bool m_busy = false;
    int m_round = 0;  ///< of what was asked for before the lock nothing is kept
};

}  // namespace ebbline::diaryapp
