#include "app/desk/photos/photo_comparison.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/times.h"
#include "app/desk/model/words.h"
#include "app/desk/photos/photo_rows.h"

#include <QLocale>

#include <algorithm>
#include <cmath>
#include <iterator>

namespace ebbline::deskapp {

namespace {

constexpr double zoomStep = 1.25;
constexpr std::array poses{photos::Pose::front, photos::Pose::leftOblique, photos::Pose::rightOblique};

}  // namespace

PhotoComparison::PhotoComparison(Workplace& workplace, PhotoPictures& pictures, QObject* parent)
    : QObject(parent), m_workplace(workplace), m_pictures(pictures)
{
    connect(&pictures, &PhotoPictures::arrived, this, [this](const QString& key) {
        // One that turned out to be unreadable is none to compare with.
        if (m_pictures.unreadable().contains(photoFromKey(key))) {
            refresh();
        } else {
            Q_EMIT changed();
        }
    });
}

void PhotoComparison::show(const recovery::CourseId& course)
{
    m_course = course;
    m_marking.reset();
    m_takingBack.reset();
    m_problem.clear();
    m_pose = photos::Pose::front;
    m_sight = {};
    refresh();
    if (m_shown.empty() && !m_all.empty()) {
        m_pose = m_all.front().pose;
    }
    m_shown = ofPose(m_pose);
    choose(m_pose, 0, m_shown.empty() ? 0 : m_shown.size() - 1);
}

void PhotoComparison::refresh()
{
    const auto before = std::array{photoOf(Earlier), photoOf(Later)};
    const auto kept = std::array{before[0] ? before[0]->photo : photos::PhotoId{}, before[1] ? before[1]->photo : photos::PhotoId{}};
    m_all.clear();
    if (m_workplace.isOpen() && !m_course.isNull()) {
        for (auto& photo : m_workplace.desk().photos(m_course)) {
            if (photo.isHere() && !photo.refused && !m_pictures.unreadable().contains(photo.photo)) {
                m_all.push_back(std::move(photo));
            }
        }
    }
    m_shown = ofPose(m_pose);
    const auto place = [&](const photos::PhotoId& photo, std::size_t otherwise) {
        const auto found = std::ranges::find(m_shown, photo, &desk::CoursePhoto::photo);
        return found == m_shown.end() ? otherwise : static_cast<std::size_t>(found - m_shown.begin());
    };
    const std::size_t last = m_shown.empty() ? 0 : m_shown.size() - 1;
    m_chosen = {place(kept[0], 0), place(kept[1], last)};
    if (m_chosen[0] >= m_chosen[1]) {
        m_chosen = {0, last};
    }
    // What is marked may have been taken back meanwhile.
    if (m_marking) {
        const auto* photo = photoOf(m_marking->half);
        if (photo == nullptr || photo->photo != m_marking->photo) {
            m_marking.reset();
        }
    }
    if (m_takingBack && std::ranges::find(m_all, *m_takingBack, &desk::CoursePhoto::photo) == m_all.end()) {
        m_takingBack.reset();
    }
    Q_EMIT changed();
}

std::vector<desk::CoursePhoto> PhotoComparison::ofPose(photos::Pose pose) const
{
    std::vector<desk::CoursePhoto> found;
    std::ranges::copy_if(m_all, std::back_inserter(found), [pose](const auto& photo) { return photo.pose == pose; });
    return found;
}

bool PhotoComparison::open(const photos::PhotoId& photo)
{
    const auto found = std::ranges::find(m_all, photo, &desk::CoursePhoto::photo);
    if (found == m_all.end()) {
        return false;
    }
    const auto shown = ofPose(found->pose);
    const auto at = static_cast<std::size_t>(std::ranges::find(shown, photo, &desk::CoursePhoto::photo) - shown.begin());
    choose(found->pose, 0, at == 0 ? shown.size() - 1 : at);
    return true;
}

void PhotoComparison::choose(photos::Pose pose, std::size_t earlier, std::size_t later)
{
    m_pose = pose;
    m_shown = ofPose(pose);
    m_chosen = {earlier, later};
    m_marking.reset();
    m_takingBack.reset();
    m_problem.clear();
    look({});
    Q_EMIT changed();
}

const desk::CoursePhoto* PhotoComparison::photoOf(int half) const
{
    const auto at = m_chosen[static_cast<std::size_t>(half)];
    // One photograph alone is the earlier one.
    return at >= m_shown.size() || (half == Later && m_chosen[0] == m_chosen[1]) ? nullptr : &m_shown[at];
}

QStringList PhotoComparison::views() const
{
    QStringList names;
    for (const auto pose : poses) {
        names << tr("%1 (%2)", "view, how many photographs").arg(poseName(pose), charts::digits(static_cast<int>(ofPose(pose).size())));
    }
    return names;
}

void PhotoComparison::setView(int view)
{
    if (view < 0 || view >= static_cast<int>(poses.size()) || view == this->view()) {
        return;
    }
    const auto pose = poses[static_cast<std::size_t>(view)];
    const auto shown = ofPose(pose);
    choose(pose, 0, shown.empty() ? 0 : shown.size() - 1);
}

QString PhotoComparison::sides() const
{
    return m_shown.empty() ? QString() : poseSides(m_pose);
}

PhotoSide PhotoComparison::sideOf(int half) const
{
    PhotoSide side;
    const auto* photo = photoOf(half);
    if (photo == nullptr) {
        if (half == Earlier) {
            side.state = tr("There is no photograph of this view here.");
        } else if (!m_shown.empty()) {
            side.state = tr("There is only one photograph of this view.");
        }
        return side;
    }
    const auto now = m_workplace.now();
    side.there = true;
    side.own = photo->putInBy.has_value();
    const auto taken = takenText(*photo, now);
    side.title = photoOf(Later) == nullptr ? tr("%1, %2", "day, time").arg(dayText(photo->day), taken)
                 : half == Earlier ? tr("Earlier: %1, %2", "day, time").arg(dayText(photo->day), taken)
                                   : tr("Later: %1, %2", "day, time").arg(dayText(photo->day), taken);
    side.marked = photo->eyes.has_value();
    QStringList notes{putInText(*photo)};
    const auto& courses = m_workplace.state().courses;
    if (const auto course = courses.find(m_course); course != courses.end()) {
        notes << besideText(course->second, photo->entry, now);
        if (const auto eyes = course->second.eyes.find(photo->photo); eyes != course->second.eyes.end()) {
            notes << (eyes->second.by.empty() ? tr("Eyes marked %1").arg(whenText(eyes->second.at, now))
                                              : tr("Eyes marked by %1, %2", "person, time").arg(QString::fromStdString(eyes->second.by), whenText(eyes->second.at, now)));
        }
    }
    notes.removeAll(QString());
    side.note = notes.join(QStringLiteral(" · "));
    side.spoken = tr("%1. %2. %3", "which one and when, view, where the sides are").arg(side.title, poseName(m_pose), poseSides(m_pose));
    const auto at = m_chosen[static_cast<std::size_t>(half)];
    side.canStepBack = half == Earlier ? at > 0 : at > m_chosen[0] + 1;
    side.canStepOn = half == Earlier ? at + 1 < m_chosen[1] : at + 1 < m_shown.size();
    if (m_pictures.picture(photo->photo, PhotoPictures::Size::full).isNull()) {
        side.state = tr("Being opened");
    }
    return side;
}

void PhotoComparison::step(int half, int by)
{
    if (half != Earlier && half != Later) {
        return;
    }
    const auto side = sideOf(half);
    if ((by < 0 && side.canStepBack) || (by > 0 && side.canStepOn)) {
        leaveMarking();
        indexOf(half) += by < 0 ? std::size_t(-1) : 1;
        Q_EMIT changed();
    }
}

bool PhotoComparison::isAligned() const
{
    const auto* earlier = photoOf(Earlier);
    const auto* later = photoOf(Later);
    return !m_marking && earlier != nullptr && later != nullptr && earlier->eyes && later->eyes;
}

QString PhotoComparison::how() const
{
    const auto* earlier = photoOf(Earlier);
    const auto* later = photoOf(Later);
    if (earlier == nullptr || later == nullptr) {
        return {};
    }
    if (isAligned()) {
        return tr("Aligned by the eyes: the later one is turned, sized and moved, not stretched and not mirrored.");
    }
    return m_marking ? tr("While you mark, both are shown as they were taken.")
                     : tr("Shown as they were taken, perhaps not on one scale. Mark the eyes in both to align them.");
}

QString PhotoComparison::zoomText() const
{
    return charts::withPercent(QLocale().toString(static_cast<int>(std::lround(m_sight.zoom * 100))));
}

void PhotoComparison::look(const Sight& sight)
{
    if (const auto next = sight.bounded(); next != m_sight) {
        m_sight = next;
        Q_EMIT sightChanged();
    }
}

void PhotoComparison::zoom(double factor, const QPointF& towards)
{
    const double next = std::clamp(m_sight.zoom * factor, 1.0, Sight::nearest);
    // The place that is pointed at stays where it is.
    look({next, towards + (m_sight.centre - towards) * (m_sight.zoom / next)});
}

void PhotoComparison::zoomIn()
{
    zoom(zoomStep, m_marking ? m_cursor : m_sight.centre);
}

void PhotoComparison::zoomOut()
{
    zoom(1 / zoomStep, m_sight.centre);
}

void PhotoComparison::whole()
{
    look({});
}

void PhotoComparison::pan(const QPointF& by)
{
    look({m_sight.zoom, m_sight.centre + by / m_sight.zoom});
}

QImage PhotoComparison::imageOf(int half)
{
    const auto* photo = photoOf(half);
    return photo == nullptr ? QImage() : m_pictures.picture(photo->photo, PhotoPictures::Size::full);
}

std::optional<QTransform> PhotoComparison::toFrame(int half, const QRectF& frame)
{
    const auto own = imageOf(half);
    if (own.isNull()) {
        return std::nullopt;
    }
    if (half == Later && isAligned()) {
        const auto earlier = imageOf(Earlier);
        const auto laid = laidOver({own, photoOf(Later)->eyes}, {earlier, photoOf(Earlier)->eyes});
        return laid ? std::optional(*laid * fitted(earlier.size(), frame, m_sight)) : std::nullopt;
    }
    return fitted(own.size(), frame, m_sight);
}

}  // namespace ebbline::deskapp
