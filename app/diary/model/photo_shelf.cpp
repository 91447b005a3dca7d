#include "app/diary/model/photo_shelf.h"

#include "app/diary/model/aside.h"
#include "app/diary/model/photo_lines.h"
#include "platform/camera/photo_intake.h"

#include <QFutureWatcher>
#include <QTimer>

namespace ebbline::diaryapp {

namespace {

constexpr qsizetype mostMemory = 48 * 1024;  ///< KiB; our own choice
constexpr int smallSide = 320;               ///< px: a thumbnail on the sharpest screens; our own choice
constexpr int wholeSide = 1600;              ///< px; our own choice

}  // namespace

PhotoShelf::PhotoShelf(Home& home, QObject* parent) : QObject(parent), m_home(home), m_pictures(mostMemory)
{
    connect(&home, &Home::openChanged, this, &PhotoShelf::empty);
}

void PhotoShelf::empty()
{
    m_pictures.clear();
    m_wanted.clear();
    m_busy = false;
    ++m_round;
    Q_EMIT emptied();
}

QImage PhotoShelf::picture(const QString& key, Size size)
{
    const Place place{key, static_cast<int>(size)};
    if (const QImage* there = m_pictures.object(place))
        return *there;
    if (std::ranges::find(m_wanted, place) == m_wanted.end())
        m_wanted.push_back(place);
    // One at a time, and the page has its turn in between.
    if (!m_busy) {
        m_busy = true;
        QTimer::singleShot(0, this, &PhotoShelf::next);
    }
    return {};
}

void PhotoShelf::next()
{
    m_busy = m_home.isOpen() && !m_wanted.empty();
    if (!m_busy)
        return;
    const Place place = m_wanted.front();
    const auto photo = photoOf(place.first);
    auto jpeg = photo ? m_home.diary().photo(*photo) : Result<bytes::Bytes>(fail(Reason::notFound, "photo: no name"));
    if (!jpeg) {
        m_wanted.pop_front();
        QTimer::singleShot(0, this, &PhotoShelf::next);
        return;
    }
    auto* watcher = new QFutureWatcher<QImage>(this);
    connect(watcher, &QFutureWatcherBase::finished, this, [this, watcher, place, round = m_round] {
        watcher->deleteLater();
        if (round != m_round)
            return;
        const QImage made = watcher->result();
        // Taken back meanwhile: then it is wanted no more.
        const auto wanted = std::ranges::find(m_wanted, place);
        if (wanted != m_wanted.end()) {
            m_wanted.erase(wanted);
            if (!made.isNull()) {
                m_pictures.insert(place, new QImage(made), made.sizeInBytes() / 1024 + 1);
                Q_EMIT arrived(place.first);
            }
        }
        next();
    });
    const int side = place.second == static_cast<int>(Size::Small) ? smallSide : wholeSide;
    watcher->setFuture(aside([jpeg = std::move(*jpeg), side] { return camera::photoPicture(jpeg, side); }));
}

void PhotoShelf::forget(const QString& key)
{
    for (const Size size : {Size::Small, Size::Whole})
        m_pictures.remove({key, static_cast<int>(size)});
    std::erase_if(m_wanted, [&](const Place& place) { return place.first == key; });
}

}  // namespace ebbline::diaryapp
