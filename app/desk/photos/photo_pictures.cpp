#include "app/desk/photos/photo_pictures.h"

#include <QBuffer>
#include <QImageReader>

namespace ebbline::deskapp {

namespace {

constexpr qsizetype mostMemory = 160 * 1024;  ///< KiB of pictures kept at a time; our own choice

QString cacheKey(const photos::PhotoId& photo, PhotoPictures::Size size)
{
    return keyOf(photo) + QLatin1Char('/') + QString::number(static_cast<int>(size));
}

/// Bytes that passed core's scan, so that their sides are bounded before anything is decoded.
QImage decoded(const bytes::Bytes& jpeg, PhotoPictures::Size size)
{
    QByteArray raw = QByteArray::fromRawData(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size()));
    QBuffer buffer(&raw);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer, "jpeg");
    reader.setAutoTransform(false);
    if (size != PhotoPictures::Size::full) {
        const int side = size == PhotoPictures::Size::paper ? PhotoPictures::paperSide : PhotoPictures::thumbnailSide;
        if (const auto whole = reader.size(); whole.width() > side || whole.height() > side) {
            reader.setScaledSize(whole.scaled(side, side, Qt::KeepAspectRatio).expandedTo(QSize(1, 1)));
        }
    }
    const auto picture = reader.read();
    return picture.isNull() ? picture : picture.convertToFormat(QImage::Format_RGB32);
}

}  // namespace

QString keyOf(const photos::PhotoId& photo)
{
    return keyOf(recovery::EntryId{photo.value});
}

photos::PhotoId photoFromKey(const QString& key)
{
    return photos::PhotoId{courseFromKey(key).value};
}

PhotoPictures::PhotoPictures(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace), m_pictures(mostMemory)
{
    m_pool.setMaxThreadCount(1);
    m_slice.setSingleShot(true);
    connect(&m_slice, &QTimer::timeout, this, &PhotoPictures::openNext);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        if (!m_workplace.isOpen()) {
            show({});
        }
    });
}

PhotoPictures::~PhotoPictures()
{
    m_pool.clear();
    m_pool.waitForDone();
}

void PhotoPictures::show(const recovery::CourseId& course)
{
    if (course == m_course) {
        return;
    }
    m_course = course;
    ++m_round;
    m_running = 0;
    m_slice.stop();
    m_waiting.clear();
    m_asked.clear();
    m_unreadable.clear();
    m_pictures.clear();
}

QImage PhotoPictures::picture(const photos::PhotoId& photo, Size size)
{
    if (const auto* kept = m_pictures.object(cacheKey(photo, size))) {
        return *kept;
    }
    const Wanted wanted{photo, size};
    if (m_workplace.isOpen() && !m_course.isNull() && !m_unreadable.contains(photo) && m_asked.insert(wanted).second) {
        m_waiting.push_back(wanted);
        if (!m_slice.isActive()) {
            m_slice.start(0);
        }
    }
    return {};
}

void PhotoPictures::openNext()
{
    if (m_waiting.empty() || !m_workplace.isOpen()) {
        return;
    }
    const auto wanted = m_waiting.front();
    m_waiting.pop_front();
    // The vault is read here, one photograph a turn of the event loop; only what is slow happens elsewhere.
    auto jpeg = m_workplace.desk().photo(m_course, wanted.photo);
    if (jpeg) {
        ++m_running;
        m_pool.start([this, round = m_round, wanted, raw = std::move(*jpeg)] {
            auto picture = decoded(raw, wanted.size);
            // The destructor waits for this thread, and an object that is gone receives nothing.
            QMetaObject::invokeMethod(
                this,
                [this, round, wanted, picture = std::move(picture)] {
                    if (round == m_round) {
                        --m_running;
                        take(wanted, picture);
                    }
                },
                Qt::QueuedConnection);
        });
    } else if (jpeg.error().reason == Reason::notFound || jpeg.error().reason == Reason::notEnough) {
        m_asked.erase(wanted);
        Q_EMIT gone(keyOf(wanted.photo));
    } else {
        take(wanted, {});
    }
    if (!m_waiting.empty()) {
        m_slice.start(0);
    }
}

void PhotoPictures::take(const Wanted& wanted, const QImage& picture)
{
    m_asked.erase(wanted);
    if (picture.isNull()) {
        m_unreadable.insert(wanted.photo);
    } else {
        m_pictures.insert(cacheKey(wanted.photo, wanted.size), new QImage(picture), picture.sizeInBytes() / 1024 + 1);
    }
    Q_EMIT arrived(keyOf(wanted.photo));
}

}  // namespace ebbline::deskapp
