#include "app/diary/model/camera_view.h"

#include "platform/camera/camera_leave.h"

#include <QVideoFrame>

namespace ebbline::diaryapp {

namespace {

constexpr int everyFrame = 6;  // reading each one would only warm the phone

}  // namespace

CameraView::CameraView(QObject* parent) : QObject(parent)
{
    m_session.setCamera(&m_camera);
    connect(&m_camera, &QCamera::errorOccurred, this, [this](QCamera::Error error) {
        if (error != QCamera::NoError)
            tell(JoinBoard::Camera::broken);
    });
}

void CameraView::allow(bool may)
{
    m_camera.setActive(may && m_sink != nullptr);
    if (!may)
        tell(JoinBoard::Camera::forbidden);
}

void CameraView::tell(JoinBoard::Camera camera)
{
    // Later: the page takes this view away for it, and it may come while the view is being made.
    QMetaObject::invokeMethod(this, [this, camera] {
        if (m_board)
            m_board->setCamera(camera);
    }, Qt::QueuedConnection);
}

void CameraView::setSink(QVideoSink* sink)
{
    if (m_sink == sink)
        return;
    if (m_sink)
        m_sink->disconnect(this);
    m_sink = sink;
    m_session.setVideoSink(sink);
    m_camera.setActive(false);  // never on without a picture of it on the page
    if (sink) {
        camera::askForCamera(this, [this](bool may) { allow(may); });
        connect(sink, &QObject::destroyed, this, [this] { m_camera.setActive(false); });
        connect(sink, &QVideoSink::videoFrameChanged, this, [this](const QVideoFrame& frame) {
            if (m_board && ++m_frame % everyFrame == 0)
                m_board->useFrame(frame.toImage());
        });
    }
    Q_EMIT sinkChanged();
}

}  // namespace ebbline::diaryapp
