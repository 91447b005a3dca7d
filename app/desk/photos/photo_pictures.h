#pragma once
/// \file
/// The photographs of one course as pictures. They are opened one at a time, decoded beside the interface, kept in
/// memory alone and let go when another course is shown or the desk is locked; no decrypted byte goes to a disk.

#include "app/desk/model/workplace.h"

#include <QCache>
#include <QImage>
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <deque>
#include <set>

namespace ebbline::deskapp {

QString keyOf(const photos::PhotoId& photo);
/// The null name for anything that is not such a key.
photos::PhotoId photoFromKey(const QString& key);

class PhotoPictures : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the view models")

public:
    enum class Size { thumbnail, paper, full };
    static constexpr int thumbnailSide = 320;  ///< px, the longest; our own choice
    static constexpr int paperSide = 1000;     ///< px; 300 dots an inch on a third of a page

    explicit PhotoPictures(Workplace& workplace, QObject* parent = nullptr);
    ~PhotoPictures() override;

    /// Of which course pictures are wanted.
    void show(const recovery::CourseId& course);
    /// What is there by now; null until then, and arrived() tells when. Null as well for a photograph that this
    /// course does not have or that is still coming.
    QImage picture(const photos::PhotoId& photo, Size size);
    /// What this computer could not decode.
    const std::set<photos::PhotoId>& unreadable() const { return m_unreadable; }
    bool isWorking() const { return !m_waiting.empty() || m_running > 0; }

Q_SIGNALS:
    /// A picture is there, or turned out to be unreadable.
    void arrived(QString key);
    /// It was asked for and is not here: still coming, or taken back meanwhile.
    void gone(QString key);

private:
    struct Wanted {
        photos::PhotoId photo;
        Size size;
        bool operator<(const Wanted& other) const { return std::pair(photo, size) < std::pair(other.photo, other.size); }
    };

    void openNext();
    void take(const Wanted& wanted, const QImage& picture);

    Workplace& m_workplace;
    recovery::CourseId m_course;
    QThreadPool m_pool;
    QTimer m_slice;
    int m_round = 0;  ///< what is decoded belongs to this one, or is dropped
    int m_running = 0;
    std::deque<Wanted> m_waiting;
    std::set<Wanted> m_asked;
    std::set<photos::PhotoId> m_unreadable;
    QCache<QString, QImage> m_pictures;  ///< cost in KiB
};

}  // namespace ebbline::deskapp
