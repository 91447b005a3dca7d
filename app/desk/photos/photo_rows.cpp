#include "app/desk/photos/photo_rows.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/photos/photo_pictures.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

#include <algorithm>

namespace ebbline::deskapp {

namespace {

class Photos {
    Q_DECLARE_TR_FUNCTIONS(Photos)
};

struct Told {
    bool ofPatient;
    clock::Moment at;
    PhotoRow row;
};

PhotoRow rowOf(const photos::PhotoId& photo, photos::Pose pose, int day, const QString& when, const QString& beside, const QString& state)
{
    PhotoRow row;
    row.key = keyOf(photo);
    row.day = dayText(day);
    row.view = poseName(pose);
    row.when = when;
    row.beside = beside;
    row.state = state;
    row.shown = state.isEmpty();
    row.spoken = QStringList{Photos::tr("%1, %2, %3", "day, view, time").arg(row.day, row.view, row.when), beside, state}
                     .filter(QRegularExpression(QStringLiteral("."))).join(QStringLiteral(". "));
    return row;
}

}  // namespace

QString poseName(photos::Pose pose)
{
    return viewName(static_cast<recovery::ChartView>(pose));
}

QString poseSides(photos::Pose pose)
{
    switch (pose) {
    case photos::Pose::front:
        return Photos::tr("As when facing the patient: the patient's right on the left.");
    case photos::Pose::leftOblique:
        return Photos::tr("The patient's left side is towards the camera.");
    case photos::Pose::rightOblique:
        return Photos::tr("The patient's right side is towards the camera.");
    }
    return {};
}

QString takenText(const desk::CoursePhoto& photo, const clock::Moment& now)
{
    return photo.putInBy ? Photos::tr("right after the treatment") : whenText(photo.at, now);
}

QString putInText(const desk::CoursePhoto& photo)
{
    return photo.putInBy ? Photos::tr("Put in by %1", "person").arg(QString::fromStdString(*photo.putInBy)) : QString();
}

QString besideText(const journal::CourseState& course, const recovery::EntryId& entry, const clock::Moment& now)
{
    if (entry.isNull()) {
        return {};
    }
    const auto found = course.entries.find(entry);
    return found == course.entries.end() ? Photos::tr("Beside an entry that has not arrived yet")
                                         : Photos::tr("Beside the entry of %1").arg(whenText(found->second.current().at, now));
}

QList<RowList::Row> photoRows(const std::vector<desk::CoursePhoto>& photos, const journal::CourseState& course,
                              const clock::Moment& now, const std::set<photos::PhotoId>& unreadable)
{
    std::vector<Told> told;
    for (const auto& photo : photos) {
        QString state;
        if (photo.refused || unreadable.contains(photo.photo)) {
            state = Photos::tr("Could not be opened");
        } else if (!photo.isHere()) {
            state = Photos::tr("Still arriving: %1 of %2 parts").arg(charts::digits(static_cast<int>(photo.held)), charts::digits(static_cast<int>(photo.chunks)));
        }
        const auto beside = photo.putInBy ? putInText(photo) : besideText(course, photo.entry, now);
        told.push_back({!photo.putInBy, photo.at, rowOf(photo.photo, photo.pose, photo.day, takenText(photo, now), beside, state)});
    }
    for (const auto& [photo, removed] : course.photosRemoved) {
        const auto taken = course.photos.find(photo);
        if (taken == course.photos.end()) {
            continue;
        }
        const auto& value = taken->second.value;
        if (const auto by = course.clinicPhotosRemoved.find(photo); by != course.clinicPhotosRemoved.end()) {
            told.push_back({false, value.at, rowOf(photo, value.pose, 0, Photos::tr("right after the treatment"), {},
                                                   Photos::tr("Taken back by %1, %2", "person, time").arg(QString::fromStdString(by->second), whenText(removed.at, now)))});
            continue;
        }
        const int day = course.treatment ? std::max(0, clock::dayOfRecovery(course.treatment->treatment.at, value.at)) : 0;
        told.push_back({true, value.at, rowOf(photo, value.pose, day, whenText(value.at, now), besideText(course, value.entry, now),
                                        Photos::tr("Taken back by the patient, %1").arg(whenText(removed.at, now)))});
    }
    std::stable_sort(told.begin(), told.end(), [](const Told& a, const Told& b) { return std::pair(a.ofPatient, a.at.at) < std::pair(b.ofPatient, b.at.at); });
    QList<RowList::Row> rows;
    for (const auto& one : told) {
        rows.append({one.row.key, {}, QVariant::fromValue(one.row)});
    }
    return rows;
}

QString photosSummary(const QList<RowList::Row>& rows, int arriving)
{
    if (rows.isEmpty()) {
        return {};
    }
    QStringList parts{Photos::tr("%Ln photograph(s)", nullptr, static_cast<int>(rows.size()))};
    if (arriving > 0) {
        parts << Photos::tr("%Ln still arriving", nullptr, arriving);
    }
    return parts.join(QStringLiteral(" · "));
}

QString photosOfEntry(const journal::CourseState& course, const recovery::EntryId& entry)
{
    QStringList views;
    for (const auto pose : {photos::Pose::front, photos::Pose::leftOblique, photos::Pose::rightOblique}) {
        for (const auto& [photo, version] : course.photos) {
            if (version.value.entry == entry && version.value.pose == pose && !course.photosRemoved.contains(photo)) {
                views << poseName(pose);
            }
        }
    }
    return views.isEmpty() ? QString() : Photos::tr("Photographs: %1", "views").arg(QLocale().createSeparatedList(views));
}

}  // namespace ebbline::deskapp
