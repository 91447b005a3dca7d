#pragma once
/// \file
/// The camera behind the code page: shows what it sees and hands frames to the board.

#include "app/diary/model/join_board.h"

#include <QCamera>
#include <QMediaCaptureSession>
#include <QPointer>
#include <QVideoSink>

namespace ebbline::diaryapp {

class CameraView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVideoSink* sink READ sink WRITE setSink NOTIFY sinkChanged FINAL)
    Q_PROPERTY(ebbline::diaryapp::JoinBoard* board READ board WRITE setBoard FINAL)

public:
    explicit CameraView(QObject* parent = nullptr);

    QVideoSink* sink() const { return m_sink; }
    void setSink(QVideoSink* sink);
    JoinBoard* board() const { return m_board; }
    void setBoard(JoinBoard* board) { m_board = board; }
    /// What the person answered when asked for the camera.
    void allow(bool may);

Q_SIGNALS:
    void sinkChanged();

private:
    void tell(JoinBoard::Camera camera);

    QCamera m_camera{this};
    QMediaCaptureSession m_session;
    QPointer<QVideoSink> m_sink;  ///< the page's: it may go first
    QPointer<JoinBoard> m_board;
    int m_frame = 0;
};

}  // namespace ebbline::diaryapp
