#pragma once
/// \file
/// Photographs that the clinic took right after the treatment, with its own camera: image files that are chosen at the desk,
/// one view after the other, each looked at before it is kept. Nothing of a file but the picture is kept, and what was not
/// kept is gone with the lock or another course.

#include "app/desk/model/workplace.h"

#include <QImage>
#include <QStringList>
#include <QThreadPool>
#include <QUrl>
#include <QVariant>
#include <QtQml/qqmlregistration.h>

#include <set>

namespace ebbline::deskapp {

class ClinicPhotos : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the view models")
    Q_PROPERTY(Stage stage READ stage NOTIFY changed FINAL)
    Q_PROPERTY(QStringList views READ views NOTIFY viewsChanged FINAL)  ///< in the order of view
    Q_PROPERTY(int view READ view NOTIFY changed FINAL)                 ///< 0 front, 1 from the patient's left, 2 from the right
    Q_PROPERTY(QString viewName READ viewName NOTIFY changed FINAL)
    Q_PROPERTY(QString sides READ sides NOTIFY changed FINAL)           ///< where the patient's sides are in this view
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(QString full READ full NOTIFY changed FINAL)             ///< no more can be added; or empty
    Q_PROPERTY(QVariant preview READ previewOnPage NOTIFY changed FINAL)  ///< a QImage, decoded from what would be kept
    Q_PROPERTY(QString undoText READ undoText NOTIFY changed FINAL)     ///< what was kept last; empty: nothing to take back

public:
    enum class Stage { Away, Choose, Working, Look };  // upper case: QML asks for it
    Q_ENUM(Stage)

    explicit ClinicPhotos(Workplace& workplace, QObject* parent = nullptr);
    ~ClinicPhotos() override;

    /// Another course ends what was begun.
    void show(const recovery::CourseId& course);

    Stage stage() const { return m_stage; }
    QStringList views() const;
    int view() const { return static_cast<int>(m_pose) - 1; }
    QString viewName() const;
    QString sides() const;
    QString problem() const { return m_problem; }
    QString full() const;
    QVariant previewOnPage() const { return m_preview; }
    QString undoText() const { return m_undoText; }
    bool isWorking() const { return m_stage == Stage::Working; }

    /// Opens the form at the first view that the clinic has no photograph of.
    Q_INVOKABLE void begin();
    Q_INVOKABLE void leave();
    Q_INVOKABLE void choose(int view);
    /// Asks for a file.
    Q_INVOKABLE void chooseFile();
    void useFile(const QUrl& file);
    Q_INVOKABLE void keep();
    /// Not this picture: another one.
    Q_INVOKABLE void again();
    /// Takes back what was kept last. \pre undoText() is not empty
    Q_INVOKABLE void undo();
    Q_INVOKABLE void forgetUndo();

Q_SIGNALS:
    void changed();
    void viewsChanged();

private:
    struct Taken {
        Result<bytes::Bytes> jpeg;
        QImage shown;
    };
    void turnTo(Stage stage);
    void take(const Taken& taken);
    /// Views of which the clinic has a photograph of this course.
    std::set<photos::Pose> posesThere() const;
    void chooseNextView();

    Workplace& m_workplace;
    recovery::CourseId m_course;
    Stage m_stage = Stage::Away;
    photos::Pose m_pose = photos::Pose::front;
    bytes::Bytes m_jpeg;
    QImage m_preview;
    QString m_problem;
    photos::PhotoId m_last;  ///< what undo() takes back
    QString m_undoText;
    QThreadPool m_pool;
    int m_round = 0;  ///< what is being decoded belongs to this one, or is dropped
};

}  // namespace ebbline::deskapp
