#include "app/diary/model/photo_camera.h"

#include "core/photos/jpeg_scan.h"
#include "platform/camera/camera_leave.h"

#include <QCameraDevice>
#include <QMediaDevices>

namespace ebbline::diaryapp {

namespace {

constexpr float leastFrameRate = 10;  ///< a second: slower, nobody can aim. Common practice, no source

/// The largest form that fits into a photograph and is quick enough to aim by.
QCameraFormat bestOf(const QCameraDevice& device)
{
    const auto pixels = [](const QCameraFormat& format) { return qint64{format.resolution().width()} * format.resolution().height(); };
    QCameraFormat best;
    for (const QCameraFormat& format : device.videoFormats()) {
        const QSize size = format.resolution();
        if (std::max(size.width(), size.height()) <= photos::longestSide && format.maxFrameRate() >= leastFrameRate
            && (best.isNull() || pixels(format) > pixels(best)))
            best = format;
    }
    return best;
}

}  // namespace

QImage asOthersSee(QVideoFrame frame)
{
    // Some versions of Qt heed this where they make a picture (6.4), others do not (6.8): none shall swap the sides.
    const bool mirrored = frame.mirrored();
    frame.setMirrored(false);
    const QImage image = frame.toImage();
    frame.setMirrored(mirrored);
    return image;
}

PhotoCamera::PhotoCamera(QObject* parent) : QObject(parent)
{
    m_session.setCamera(&m_camera);
    const auto devices = QMediaDevices::videoInputs();
    const auto facing = std::find_if(devices.begin(), devices.end(), [](const QCameraDevice& device) {
        return device.position() == QCameraDevice::FrontFace;
    });
    if (!devices.isEmpty())
        use(facing == devices.end() ? devices.first() : *facing);
    connect(&m_camera, &QCamera::errorOccurred, this, [this](QCamera::Error error) {
        if (error == QCamera::NoError)
            return;
        m_problem = tr("The camera does not answer. Choose a picture instead.");
        Q_EMIT changed();
    });
}

PhotoCamera::~PhotoCamera()
{
    live(false);
}

void PhotoCamera::setBoard(PhotoBoard* board)
{
    if (m_board == board)
        return;
    if (m_board)
        m_board->disconnect(this);
    live(false);
    m_board = board;
    if (board)
        connect(board, &PhotoBoard::wanted, this, &PhotoCamera::take);
    Q_EMIT boardChanged();
}

void PhotoCamera::live(bool live)
{
    m_live = live;
    if (m_board)
        m_board->setLive(live);
}

void PhotoCamera::use(const QCameraDevice& device)
{
    m_camera.setCameraDevice(device);
    if (const QCameraFormat format = bestOf(device); !format.isNull())
        m_camera.setCameraFormat(format);
    // One of a computer says nothing of where it looks: at who sits before it.
    m_facing = device.position() != QCameraDevice::BackFace;
    live(false);
    Q_EMIT changed();
}

bool PhotoCamera::isSeveral() const
{
    return QMediaDevices::videoInputs().size() > 1;
}

void PhotoCamera::setSink(QVideoSink* sink)
{
    if (m_sink == sink)
        return;
    if (m_sink)
        m_sink->disconnect(this);
    m_sink = sink;
    m_session.setVideoSink(sink);
    m_camera.setActive(false);  // never on without a picture of it on the page
    live(false);
    if (sink) {
        connect(sink, &QVideoSink::videoFrameChanged, this, &PhotoCamera::see);
        connect(sink, &QObject::destroyed, this, [this] {
            m_camera.setActive(false);
            live(false);
            Q_EMIT changed();
        });
        start();
    }
    Q_EMIT sinkChanged();
    Q_EMIT changed();
}

void PhotoCamera::start()
{
    camera::askForCamera(this, [this](bool may) {
        m_problem = may ? QString() : tr("The diary may not use the camera. Allow it in your phone's settings, or choose a picture.");
        m_camera.setActive(may && m_sink != nullptr);
        Q_EMIT changed();
    });
}

void PhotoCamera::see(const QVideoFrame& frame)
{
    if (m_live == frame.isValid() && m_mirrors == frame.mirrored())
        return;
    m_mirrors = frame.mirrored();
    live(frame.isValid());
    Q_EMIT changed();
}

void PhotoCamera::take()
{
    if (m_sink && m_live)
        m_board->useFrame(asOthersSee(m_sink->videoFrame()));
}

void PhotoCamera::turn()
{
    const auto devices = QMediaDevices::videoInputs();
    if (devices.size() < 2)
        return;
    const auto now = devices.indexOf(m_camera.cameraDevice());
    use(devices[(now + 1) % devices.size()]);
    if (m_sink)
        start();
}

}  // namespace ebbline::diaryapp
