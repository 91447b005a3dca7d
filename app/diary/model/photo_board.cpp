#include "app/diary/model/photo_board.h"

#include "app/diary/model/aside.h"
#include "app/diary/model/photo_lines.h"
#include "app/diary/model/times.h"
#include "app/diary/model/words.h"
#include "platform/camera/photo_intake.h"

#include <QCameraDevice>
#include <QMediaDevices>

namespace ebbline::diaryapp {

namespace {

using photos::Pose;

constexpr std::array poses{Pose::front, Pose::leftOblique, Pose::rightOblique};
constexpr int previewSide = 1280;  ///< px; our own choice

QString intakeText(const Error& error)
{
    switch (error.reason) {
    case Reason::notFound: return PhotoBoard::tr("This picture does not open. Choose another.");
    case Reason::tooLarge: return PhotoBoard::tr("This picture is too large. Choose a smaller one.");
    case Reason::unsupported: return PhotoBoard::tr("The diary reads JPEG and PNG pictures. Choose one of these.");
    case Reason::outOfRange: return PhotoBoard::tr("This picture is too small. Choose a larger one.");
    default: return PhotoBoard::tr("This picture is damaged. Choose another, or take a new one.");
    }
}

}  // namespace

PhotoBoard::PhotoBoard(Home& home, QObject* parent) : QObject(parent), m_home(home)
{
    connect(&home, &Home::openChanged, this, &PhotoBoard::clear);
    connect(&home, &Home::changed, this, &PhotoBoard::nameViews);
    connect(&home, &Home::changed, this, &PhotoBoard::changed);
    nameViews();
    connect(&m_watcher, &QFutureWatcherBase::finished, this, [this] {
        if (m_stage == Stage::Working && m_watcher.future().resultCount() > 0)
            take(m_watcher.result());
    });
}

/// Nothing of a picture outlives the lock.
void PhotoBoard::clear()
{
    begin({});
}

void PhotoBoard::begin(const recovery::EntryId& entry)
{
    m_entry = entry;
    m_kept.clear();
    m_pose = Pose::front;
    again();
}

void PhotoBoard::again()
{
    m_watcher.setFuture({});
    m_jpeg.clear();
    m_preview = {};
    m_problem.clear();
    m_stage = Stage::Aim;
    Q_EMIT changed();
}

void PhotoBoard::back()
{
    if (m_stage == Stage::Aim)
        return Q_EMIT left();
    again();
}

bool PhotoBoard::isCameraThere() const
{
    return !QMediaDevices::videoInputs().isEmpty();
}

/// Only when they are other words: a list that is set anew takes the keyboard from its choice.
void PhotoBoard::nameViews()
{
    QStringList names;
    for (const Pose pose : poses)
        names << poseName(pose);
    if (names == m_views)
        return;
    m_views = names;
    Q_EMIT viewsChanged();
}

QString PhotoBoard::viewName() const
{
    return poseName(m_pose);
}

QString PhotoBoard::task() const
{
    switch (m_pose) {
    case Pose::leftOblique: return tr("Turn your head to your right. The camera sees your left cheek.");
    case Pose::rightOblique: return tr("Turn your head to your left. The camera sees your right cheek.");
    case Pose::front: break;
    }
    return tr("Look straight at the camera, with your face at rest.");
}

QString PhotoBoard::standsUnder() const
{
    if (m_stage != Stage::Look || !m_home.isOpen() || !m_home.diary().joined())
        return {};
    const int day = std::max(0, clock::dayOfRecovery(m_home.diary().course().treated, m_at));
    //: %1 is "Day 2", %2 is "today 14:05"
    return tr("It will stand under %1, %2.").arg(dayText(day), whenText(m_at, m_home.now()));
}

QString PhotoBoard::saved() const
{
    QStringList names;
    for (const Pose pose : m_kept)
        names << poseName(pose);
    //: %1 names views: "From the front · Your left side"
    return names.isEmpty() ? QString() : tr("Saved on this phone: %1").arg(names.join(QStringLiteral(" · ")));
}

QString PhotoBoard::full() const
{
    if (!m_home.isOpen() || m_home.diary().photos().size() < patient::Diary::mostPhotos)
        return {};
    return tr("You have %1 photographs. That is the most. Take one back to add another.")
        .arg(digits(static_cast<int>(patient::Diary::mostPhotos)));
}

void PhotoBoard::setLive(bool live)
{
    if (m_live == live)
        return;
    m_live = live;
    Q_EMIT changed();
}

void PhotoBoard::shoot()
{
    if (m_stage == Stage::Aim && m_live && full().isEmpty())
        Q_EMIT wanted();
}

void PhotoBoard::choose(int view)
{
    if (view < 0 || view >= static_cast<int>(poses.size()))
        return;
    m_pose = poses[static_cast<std::size_t>(view)];
    m_problem.clear();
    Q_EMIT changed();
}

void PhotoBoard::useFile(const QUrl& file)
{
    work(aside([file] {
        Taken taken{camera::photoFromFile(file), {}};
        if (taken.jpeg)
            taken.shown = camera::photoPicture(*taken.jpeg, previewSide);
        return taken;
    }));
}

void PhotoBoard::useFrame(const QImage& frame)
{
    work(aside([frame] {
        Taken taken{camera::photoFromImage(frame), {}};
        if (taken.jpeg)
            taken.shown = camera::photoPicture(*taken.jpeg, previewSide);
        return taken;
    }));
}

void PhotoBoard::work(QFuture<Taken> future)
{
    if (!m_home.isOpen())
        return;
    m_at = m_home.now();
    m_problem.clear();
    m_preview = {};
    m_jpeg.clear();
    m_stage = Stage::Working;
    m_watcher.setFuture(future);
    Q_EMIT changed();
}

void PhotoBoard::take(const Taken& taken)
{
    m_stage = taken.jpeg ? Stage::Look : Stage::Aim;
    if (taken.jpeg) {
        m_jpeg = *taken.jpeg;
        m_preview = taken.shown;
    } else {
        m_problem = intakeText(taken.jpeg.error());
    }
    m_watcher.setFuture({});
    Q_EMIT changed();
}

void PhotoBoard::keep()
{
    if (m_stage != Stage::Look || !m_home.isOpen())
        return;
    const auto added = m_home.diary().addPhoto(m_jpeg, m_pose, m_entry, m_at);
    if (!added) {
        // It stays on the page, so that it can be kept once there is room.
        m_problem = added.error().reason != Reason::storageFull ? tr("This phone could not save it. Try again.")
                    : !full().isEmpty()                         ? full()
                                                                : tr("This phone is full. Free some space, then keep it.");
        Q_EMIT changed();
        return;
    }
    m_kept.insert(m_pose);
    const auto open = std::ranges::find_if(poses, [this](Pose pose) { return !m_kept.contains(pose); });
    const bool all = open == poses.end();
    if (!all)
        m_pose = *open;
    again();
    m_home.touch();
    Q_EMIT kept();
    if (all)
        Q_EMIT left();
}

}  // namespace ebbline::diaryapp
