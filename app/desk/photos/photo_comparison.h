#pragma once
/// \file
/// Two photographs of one view beside each other: which two, what part of both is in sight, and the eyes by which
/// the later one is laid over the earlier. Eyes are marked by a person and kept in her name; without them both are
/// shown as they are. Nothing is mirrored, and nothing is measured.

#include "app/desk/photos/eye_marking.h"
#include "app/desk/photos/photo_lay.h"
#include "app/desk/photos/photo_pictures.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <array>

namespace ebbline::deskapp {

/// One of the two.
struct PhotoSide {
    Q_GADGET
    QML_VALUE_TYPE(photoSide)
    Q_PROPERTY(bool there MEMBER there)
    Q_PROPERTY(QString title MEMBER title)    ///< "Earlier: day 0, 12 Nov, 20:05"
    Q_PROPERTY(QString note MEMBER note)      ///< beside which entry, eyes marked by whom
    Q_PROPERTY(QString state MEMBER state)    ///< why there is no picture yet; empty: there is one
    Q_PROPERTY(QString spoken MEMBER spoken)  ///< which one, day, view, where the sides are
    Q_PROPERTY(bool marked MEMBER marked)
    Q_PROPERTY(bool canStepBack MEMBER canStepBack)
    Q_PROPERTY(bool canStepOn MEMBER canStepOn)
    Q_PROPERTY(bool own MEMBER own)           ///< the clinic's, from right after the treatment: it can be taken back here

public:
    bool there = false;
    QString title;
    QString note;
    QString state;
    QString spoken;
    bool marked = false;
    bool canStepBack = false;
    bool canStepOn = false;
    bool own = false;
    bool operator==(const PhotoSide&) const = default;
};

class PhotoComparison : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the program")
    Q_PROPERTY(QStringList views READ views NOTIFY changed FINAL)   ///< with how many photographs each
    Q_PROPERTY(int view READ view WRITE setView NOTIFY changed FINAL)  ///< index into views
    Q_PROPERTY(QString sides READ sides NOTIFY changed FINAL)       ///< where the patient's sides are
    Q_PROPERTY(ebbline::deskapp::PhotoSide earlier READ earlier NOTIFY changed FINAL)
    Q_PROPERTY(ebbline::deskapp::PhotoSide later READ later NOTIFY changed FINAL)
    Q_PROPERTY(QString how READ how NOTIFY changed FINAL)           ///< aligned, or why not
    Q_PROPERTY(QString zoomText READ zoomText NOTIFY sightChanged FINAL)
    Q_PROPERTY(int marking READ marking NOTIFY changed FINAL)       ///< 0 earlier, 1 later, -1 none
    Q_PROPERTY(QString prompt READ prompt NOTIFY changed FINAL)     ///< what to mark next
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL)   ///< the marks look swapped, or could not be kept
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)
    Q_PROPERTY(QString takeBackQuestion READ takeBackQuestion NOTIFY changed FINAL)  ///< empty: nobody asked
    Q_PROPERTY(QString cursorText READ cursorText NOTIFY cursorMoved FINAL)

public:
    enum Half { Earlier, Later };
    Q_ENUM(Half)

    PhotoComparison(Workplace& workplace, PhotoPictures& pictures, QObject* parent = nullptr);

    /// Starts with the first and the last photograph of a view.
    void show(const recovery::CourseId& course);
    /// Brings one into sight, beside the first of its view, or the last if it is the first itself.
    /// \returns false if this course has none of that name to show.
    bool open(const photos::PhotoId& photo);
    void refresh();

    QStringList views() const;
    int view() const { return static_cast<int>(m_pose) - 1; }
    void setView(int view);
    QString sides() const;
    PhotoSide earlier() const { return sideOf(Earlier); }
    PhotoSide later() const { return sideOf(Later); }
    bool isAligned() const;
    QString how() const;
    QString zoomText() const;
    int marking() const { return m_marking ? m_marking->half : -1; }
    QString prompt() const;
    QString caution() const;
    bool canUndo() const { return m_marking && m_marking->draft.canUndo(); }
    bool canKeep() const { return m_marking && m_marking->draft.eyes(); }
    QString cursorText() const;

    /// The photograph before or after, as far as the other one of the two lets it.
    Q_INVOKABLE void step(int half, int by);
    Q_INVOKABLE void zoomIn();
    Q_INVOKABLE void zoomOut();
    Q_INVOKABLE void whole();
    Q_INVOKABLE void startMarking(int half);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void keep();
    Q_INVOKABLE void leaveMarking();

    QString takeBackQuestion() const;
    /// Asks whether a half's photograph, one of the clinic's, is to be taken back.
    Q_INVOKABLE void askTakeBack(int half);
    /// Does what was asked about. What goes does not come back.
    Q_INVOKABLE void takeBack();
    Q_INVOKABLE void leaveTakingBack();

    // What the two frames paint and hand on; places in them are px of the item.
    QImage imageOf(int half);
    /// Pixels of a half's picture to its frame; empty until the picture is there.
    std::optional<QTransform> toFrame(int half, const QRectF& frame);
    const EyeMarking* draft() const { return m_marking ? &m_marking->draft : nullptr; }
    /// Where the key cursor is, in shares of the picture that is being marked.
    QPointF cursor() const { return m_cursor; }
    void put(const QPointF& place, const QRectF& frame);
    void putAtCursor();
    void moveCursor(const QPointF& by);   ///< shares of what is in sight
    void pan(const QPointF& by);          ///< shares of what is in sight
    void zoom(double factor, const QPointF& towards);  ///< shares of the picture

Q_SIGNALS:
    void changed();
    void sightChanged();
    void cursorMoved();

private:
    struct Marking {
        int half;
        photos::PhotoId photo;
        EyeMarking draft;
    };

    std::vector<desk::CoursePhoto> ofPose(photos::Pose pose) const;
    const desk::CoursePhoto* photoOf(int half) const;
    std::size_t& indexOf(int half) { return m_chosen[static_cast<std::size_t>(half)]; }
    PhotoSide sideOf(int half) const;
    void choose(photos::Pose pose, std::size_t earlier, std::size_t later);
    void look(const Sight& sight);
    void putSpot(const photos::Spot& spot);

    Workplace& m_workplace;
    PhotoPictures& m_pictures;
    recovery::CourseId m_course;
    std::vector<desk::CoursePhoto> m_all;    ///< those that can be shown, oldest first
    std::vector<desk::CoursePhoto> m_shown;  ///< of the view
    photos::Pose m_pose = photos::Pose::front;
    std::array<std::size_t, 2> m_chosen{};   ///< indices into m_shown, the earlier below the later
    Sight m_sight;
    std::optional<Marking> m_marking;
    std::optional<photos::PhotoId> m_takingBack;  ///< somebody asked
    QString m_problem;
    QPointF m_cursor{0.5, 0.4};
};

}  // namespace ebbline::deskapp
