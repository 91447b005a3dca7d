#pragma once
/// \file
/// A photograph as a page shows it: which side, when, and where it is, never ahead of proof.

#include "core/patient/diary.h"

#include <QList>
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace ebbline::diaryapp {

struct PhotoLine {
    Q_GADGET
    QML_VALUE_TYPE(photoLine)
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString view MEMBER view)      ///< "Your left side"
    Q_PROPERTY(QString title MEMBER title)    ///< "Your left side. Day 2, today 9:12"
    Q_PROPERTY(QString state MEMBER state)    ///< "Saved on this phone"
    Q_PROPERTY(bool here MEMBER here)         ///< false: there is nothing to show on this phone

public:
    QString key, view, title, state;
    bool here = false;
    bool operator==(const PhotoLine&) const = default;
};

QString poseName(photos::Pose pose);  ///< "From the front", "Your left side", "Your right side"
/// Times are those of the phone's wall, also of what happened at the clinic.
PhotoLine photoLine(const patient::PhotoView& view, const clock::Moment& now, const aftercare::Zone& zone);
/// "Photographs: saved on this phone", or how many of them are with the clinic; empty for none.
QString photosState(const std::vector<patient::PhotoView>& views);
/// The photograph that a line's key names; empty for anything else.
std::optional<photos::PhotoId> photoOf(const QString& key);

}  // namespace ebbline::diaryapp
