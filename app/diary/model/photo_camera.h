#pragma once
/// \file
/// The camera behind the photo page: shows what it sees, as a mirror does where it looks at the person who holds it, and
/// hands one frame to the board, as others see the face. No file is written.

#include "app/diary/model/photo_board.h"

#include <QCamera>
#include <QMediaCaptureSession>
#include <QPointer>
#include <QVideoFrame>
#include <QVideoSink>

namespace ebbline::diaryapp {

/// The frame as a picture, not mirrored, whatever the device does for its own screen.
QImage asOthersSee(QVideoFrame frame);

class PhotoCamera : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVideoSink* sink READ sink WRITE setSink NOTIFY sinkChanged FINAL)
    Q_PROPERTY(ebbline::diaryapp::PhotoBoard* board READ board WRITE setBoard NOTIFY boardChanged FINAL)
    Q_PROPERTY(bool live READ isLive NOTIFY changed FINAL)          ///< there is a picture to take
    Q_PROPERTY(bool several READ isSeveral NOTIFY changed FINAL)    ///< cameras
    Q_PROPERTY(bool flipped READ isFlipped NOTIFY changed FINAL)    ///< the page has to mirror what it shows
    Q_PROPERTY(bool mirrored READ isMirrored NOTIFY changed FINAL)  ///< what is seen in the end is mirrored
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    explicit PhotoCamera(QObject* parent = nullptr);
    ~PhotoCamera() override;

    QVideoSink* sink() const { return m_sink; }
    void setSink(QVideoSink* sink);
    /// Learns whether there is a picture to take, and says when it is to be taken.
    PhotoBoard* board() const { return m_board; }
    void setBoard(PhotoBoard* board);
    bool isLive() const { return m_live; }
    bool isSeveral() const;
    bool isFlipped() const { return m_facing && !m_mirrors; }
    bool isMirrored() const { return m_facing || m_mirrors; }
    QString problem() const { return m_problem; }

    /// The next camera, if there are several.
    Q_INVOKABLE void turn();

Q_SIGNALS:
    void sinkChanged();
    void boardChanged();
    void changed();

private:
    void start();
    void take();
    void live(bool live);
    void use(const QCameraDevice& device);
    void see(const QVideoFrame& frame);

    QCamera m_camera;
    QMediaCaptureSession m_session;
    QPointer<QVideoSink> m_sink;  ///< the page's: it may go first
    QPointer<PhotoBoard> m_board;
    bool m_live = false;
    bool m_mirrors = false;  ///< the device mirrors for its own screen
    bool m_facing = true;  ///< it looks at the person who holds it, as far as is known
    QString m_problem;
};

}  // namespace ebbline::diaryapp
