#pragma once
/// \file
/// Taking photographs, one view after the other: from a camera or a file, looked at before it is kept. Optional always:
/// nothing waits for it, and what was not kept is gone.

#include "app/diary/model/home.h"

#include <QFutureWatcher>
#include <QImage>
#include <QStringList>
#include <QUrl>
#include <QVariant>
#include <QtQml/qqmlregistration.h>

#include <set>

namespace ebbline::diaryapp {

class PhotoBoard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(Stage stage READ stage NOTIFY changed FINAL)
    Q_PROPERTY(QStringList views READ views NOTIFY viewsChanged FINAL)  ///< in the order of view
    Q_PROPERTY(int view READ view NOTIFY changed FINAL)              ///< 0 front, 1 left, 2 right: the patient's own
    Q_PROPERTY(int chart READ chart NOTIFY changed FINAL)            ///< recovery::ChartView of the drawing
    Q_PROPERTY(QString viewName READ viewName NOTIFY changed FINAL)
    Q_PROPERTY(QString task READ task NOTIFY changed FINAL)          ///< how to turn the head
    Q_PROPERTY(QString standsUnder READ standsUnder NOTIFY changed FINAL)  ///< of the one that is looked at
    Q_PROPERTY(QString saved READ saved NOTIFY changed FINAL)        ///< what was kept so far, or empty
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(QString full READ full NOTIFY changed FINAL)          ///< no more can be added; or empty
    Q_PROPERTY(QVariant preview READ previewOnPage NOTIFY changed FINAL)  ///< a QImage, decoded from what would be kept
    Q_PROPERTY(bool cameraThere READ isCameraThere NOTIFY changed FINAL)
    Q_PROPERTY(bool live READ isLive NOTIFY changed FINAL)           ///< a camera shows a picture that can be taken

public:
    enum class Stage { Aim, Working, Look };  // upper case: QML asks for it
    Q_ENUM(Stage)

    explicit PhotoBoard(Home& home, QObject* parent = nullptr);

    /// Begins with the front. `entry` is the one beside which they are taken, null for none.
    void begin(const recovery::EntryId& entry);

    Stage stage() const { return m_stage; }
    QStringList views() const { return m_views; }
    int view() const { return static_cast<int>(m_pose) - 1; }
    int chart() const { return static_cast<int>(m_pose); }
    QString viewName() const;
    QString task() const;
    QString standsUnder() const;
    QString saved() const;
    QString problem() const { return m_problem; }
    QString full() const;
    QImage preview() const { return m_preview; }
    QVariant previewOnPage() const { return m_preview; }  ///< QML has no name for the type of a picture
    bool isCameraThere() const;
    bool isLive() const { return m_live; }
    void setLive(bool live);

    Q_INVOKABLE void choose(int view);
    Q_INVOKABLE void useFile(const QUrl& file);
    /// A frame as others see the face, not as a mirror does.
    void useFrame(const QImage& frame);
    /// Takes what the camera sees, if one is live.
    Q_INVOKABLE void shoot();
    Q_INVOKABLE void keep();
    Q_INVOKABLE void again();
    /// One step back: from the preview to the camera, from there out.
    void back();

Q_SIGNALS:
    void changed();
    void viewsChanged();  ///< in another language
    void wanted();  ///< of the camera: a frame
    void kept();  ///< one more is in the vault
    void left();  ///< back from the camera, or all three are kept

private:
    struct Taken {
        Result<bytes::Bytes> jpeg;
        QImage shown;
    };
    void nameViews();
    void clear();
    void work(QFuture<Taken> future);
    void take(const Taken& taken);

    Home& m_home;
    Stage m_stage = Stage::Aim;
    photos::Pose m_pose = photos::Pose::front;
    recovery::EntryId m_entry;
    std::set<photos::Pose> m_kept;
    clock::Moment m_at;
    bytes::Bytes m_jpeg;
    QImage m_preview;
    QStringList m_views;
    QString m_problem;
    bool m_live = false;
    QFutureWatcher<Taken> m_watcher;
};

}  // namespace ebbline::diaryapp
