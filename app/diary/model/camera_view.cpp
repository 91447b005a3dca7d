#include "app/diary/model/camera_view.h"

#include <QVideoFrame>

namespace ebbline::diaryapp {

namespace {

constexpr int everyFrame = 6;  // reading each one would only warm the phone

}  // namespace

void CameraView::setSink(QVideoSink* sink)
{
    if (m_sink == sink)
        return;
    m_sink = sink;
    m_session.setVideoSink(sink);
    if (sink) {
        connect(sink, &QVideoSink::videoFrameChanged, this, [this](const QVideoFrame& frame) {
            if (m_board && ++m_frame % everyFrame == 0)
                m_board->useFrame(frame.toImage());
        });
        m_camera.start();
    }
    Q_EMIT sinkChanged();
}

}  // namespace ebbline::diaryapp
