#pragma once
/// \file
/// Joining a clinic by its code: camera, picture, or typed. Anybody can send a picture, so one asks first whether she is at
/// her clinic; until she says so, nothing of it is used.

#include "app/diary/model/home.h"
#include "core/patient/joining.h"
#include "core/sync/enrolment_way.h"

#include <QImage>
#include <QTimer>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace ebbline::diaryapp {

class JoinBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(Stage stage READ stage NOTIFY changed FINAL)
    Q_PROPERTY(QString number READ number NOTIFY changed FINAL)    ///< six digits in two groups
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)  ///< what to do next, where nothing is wrong
    Q_PROPERTY(bool cameraShown READ isCameraShown NOTIFY changed FINAL)  ///< there is one, it may be used, and it works
    Q_PROPERTY(QString cameraSays READ cameraSays NOTIFY changed FINAL)   ///< what to do where none is shown

public:
    enum class Stage { Code, Place, Waiting, Compare, Arriving, Joined };  // upper case: QML asks for it
    Q_ENUM(Stage)
    enum class Camera { works, forbidden, broken };

    explicit JoinBoard(Home& home, QObject* parent = nullptr);

    Stage stage() const { return m_stage; }
    QString number() const;
    QString problem() const { return m_problem; }
    QString outcome() const { return m_outcome; }
    bool isCameraShown() const;
    QString cameraSays() const;
    /// What became of the camera. One that is not allowed or broken is tried again once the program comes back to the front.
    void setCamera(Camera camera);

    Q_INVOKABLE void useText(const QString& code, const QString& hub);
    /// One with a code that would do leads to Stage::Place.
    Q_INVOKABLE void usePicture(const QUrl& file);
    /// Only yes uses the code of the picture.
    Q_INVOKABLE void answerPlace(bool atClinic);
    /// A frame of the camera; most hold no code and change nothing. A code that stays in sight is tried once.
    void useFrame(const QImage& frame);
    /// Not while the plan is on its way: the code that led there works once.
    Q_INVOKABLE void startOver();
    /// Asks the hub once; the board does so by itself every two seconds.
    Q_INVOKABLE void poll();

Q_SIGNALS:
    void changed();

private:
    void say(const QString& problem, const QString& outcome = {});
    bool isOfClinic(const QString& text);
    bool prepare(const std::string& code, const std::string& hub);
    void begin(const std::string& code, const std::string& hub);
    void follow();
    void reset();
    sync::Courier* courier();

    Home& m_home;
    Stage m_stage = Stage::Code;
    QString m_problem;
    QString m_outcome;
    std::string m_inPicture;      ///< the code that waits for the answer
    bool m_addressTyped = false;  ///< by the person, with the code that is being tried
    QString m_tried;  ///< by the camera: not again before another code was in sight, or the person starts over
    Camera m_camera = Camera::works;
    bool m_fetching = false;  ///< the plan is being asked for
    std::unique_ptr<patient::Joining> m_joining;
    sync::EnrolmentWay m_way;
    QTimer m_timer;
};

}  // namespace ebbline::diaryapp
