#pragma once
/// \file
/// The camera behind the code page: shows what it sees and hands frames to the board.

#include "app/diary/model/join_board.h"

#include <QCamera>
#include <QMediaCaptureSession>
#include <QVideoSink>

namespace ebbline::diaryapp {

class CameraView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVideoSink* sink READ sink WRITE setSink NOTIFY sinkChanged FINAL)
    Q_PROPERTY(ebbline::diaryapp::JoinBoard* board MEMBER m_board FINAL)

public:
    explicit CameraView(QObject* parent = nullptr) : QObject(parent) { m_session.setCamera(&m_camera); }

    QVideoSink* sink() const { return m_sink; }
    void setSink(QVideoSink* sink);

Q_SIGNALS:
    void sinkChanged();

private:
    QCamera m_camera;
    QMediaCaptureSession m_session;
    QVideoSink* m_sink = nullptr;
    JoinBoard* m_board = nullptr;
    int m_frame = 0;
};

}  // namespace ebbline::diaryapp
