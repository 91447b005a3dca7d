#include "app/desk/photos/clinic_photos.h"

#include "app/charts/curve_words.h"
#include "app/desk/model/file_choice.h"
#include "app/desk/model/words.h"
#include "app/desk/photos/photo_rows.h"
#include "platform/camera/photo_intake.h"


#include <algorithm>
#include <array>

namespace ebbline::deskapp {

namespace {

constexpr std::array poses{photos::Pose::front, photos::Pose::leftOblique, photos::Pose::rightOblique};
constexpr int previewSide = 1280;  ///< px; our own choice

QString intakeText(const Error& error)
{
    switch (error.reason) {
    case Reason::notFound:
        return ClinicPhotos::tr("This picture does not open. Choose another.");
    case Reason::tooLarge:
        return ClinicPhotos::tr("This picture is too large. Choose a smaller one.");
    case Reason::unsupported:
        return ClinicPhotos::tr("The desk reads JPEG and PNG pictures. Choose one of these.");
    case Reason::outOfRange:
        return ClinicPhotos::tr("This picture is too small. Choose a larger one.");
    default:
        return ClinicPhotos::tr("This picture is damaged. Choose another.");
    }
}

}  // namespace

ClinicPhotos::ClinicPhotos(Workplace& workplace, QObject* parent) : QObject(parent), m_workplace(workplace)
{
    m_pool.setMaxThreadCount(1);
    connect(&workplace, &Workplace::changed, this, &ClinicPhotos::changed);
    connect(&workplace, &Workplace::openChanged, this, [this] {
        if (!m_workplace.isOpen()) {
            show({});
        }
    });
}

ClinicPhotos::~ClinicPhotos()
{
    m_pool.clear();
    m_pool.waitForDone();
}

void ClinicPhotos::show(const recovery::CourseId& course)
{
    if (course != m_course) {
        m_course = course;
        leave();
    }
}

void ClinicPhotos::turnTo(Stage stage)
{
    ++m_round;
    m_jpeg.clear();
    m_preview = {};
    m_problem.clear();
    m_stage = stage;
    Q_EMIT changed();
}

void ClinicPhotos::begin()
{
    if (m_course.isNull() || !m_workplace.isOpen()) {
        return;
    }
    m_pose = photos::Pose::front;
    chooseNextView();
    Q_EMIT viewsChanged();
    turnTo(Stage::Choose);
}

void ClinicPhotos::leave()
{
    m_last = {};
    m_undoText.clear();
    turnTo(Stage::Away);
}

QStringList ClinicPhotos::views() const
{
    QStringList names;
    for (const auto pose : poses) {
        names << poseName(pose);
    }
    return names;
}

QString ClinicPhotos::viewName() const
{
    return poseName(m_pose);
}

QString ClinicPhotos::sides() const
{
    return poseSides(m_pose);
}

std::set<photos::Pose> ClinicPhotos::posesThere() const
{
    std::set<photos::Pose> there;
    if (m_workplace.isOpen() && !m_course.isNull()) {
        for (const auto& photo : m_workplace.desk().photos(m_course)) {
            if (photo.putInBy) {
                there.insert(photo.pose);
            }
        }
    }
    return there;
}

/// The one that is chosen stays if there is none of it yet, or if there is one of each.
void ClinicPhotos::chooseNextView()
{
    const auto there = posesThere();
    if (!there.contains(m_pose)) {
        return;
    }
    if (const auto* open = std::ranges::find_if(poses, [&](photos::Pose pose) { return !there.contains(pose); }); open != poses.end()) {
        m_pose = *open;
    }
}

QString ClinicPhotos::full() const
{
    if (!m_workplace.isOpen() || m_course.isNull()) {
        return {};
    }
    const auto photos = m_workplace.desk().photos(m_course);
    const auto own = std::ranges::count_if(photos, [](const auto& photo) { return photo.putInBy.has_value(); });
    return static_cast<std::size_t>(own) < desk::Desk::mostClinicPhotos
               ? QString()
               : tr("There are %1 from right after the treatment. That is the most. Take one back to add another.")
                     .arg(charts::digits(static_cast<int>(desk::Desk::mostClinicPhotos)));
}

void ClinicPhotos::choose(int view)
{
    if (view >= 0 && view < static_cast<int>(poses.size())) {
        m_pose = poses[static_cast<std::size_t>(view)];
        Q_EMIT changed();
    }
}

void ClinicPhotos::chooseFile()
{
    askForFile(*this, tr("A photograph from right after the treatment"), {tr("Pictures (*.png *.jpg *.jpeg)")},
        [this, course = m_course](const QString& path) {
            if (course == m_course) {
                useFile(QUrl::fromLocalFile(path));
            }
        });
}

void ClinicPhotos::useFile(const QUrl& file)
{
    if (m_stage == Stage::Away || !m_workplace.isOpen()) {
        return;
    }
    turnTo(Stage::Working);
    m_pool.start([this, round = m_round, file] {
        Taken taken{camera::photoFromFile(file), {}};
        if (taken.jpeg) {
            taken.shown = camera::photoPicture(*taken.jpeg, previewSide);
        }
        // The destructor waits for this thread, and an object that is gone receives nothing.
        QMetaObject::invokeMethod(
            this,
            [this, round, taken = std::move(taken)] {
                if (round == m_round) {
                    take(taken);
                }
            },
            Qt::QueuedConnection);
    });
}

void ClinicPhotos::take(const Taken& taken)
{
    turnTo(taken.jpeg ? Stage::Look : Stage::Choose);
    if (taken.jpeg) {
        m_jpeg = *taken.jpeg;
        m_preview = taken.shown;
    } else {
        m_problem = intakeText(taken.jpeg.error());
    }
    Q_EMIT changed();
}

void ClinicPhotos::keep()
{
    if (m_stage != Stage::Look || !m_workplace.isOpen()) {
        return;
    }
    const auto added = m_workplace.desk().addClinicPhoto(m_course, m_jpeg, m_pose);
    if (!added) {
        // It stays on the page, so that it can be kept once there is room.
        m_problem = full().isEmpty() ? errorText(added.error()) : full();
        Q_EMIT changed();
        return;
    }
    m_last = *added;
    m_undoText = tr("Kept: %1, right after the treatment.", "view").arg(viewName());
    chooseNextView();
    turnTo(Stage::Choose);
    m_workplace.settle({});
}

void ClinicPhotos::again()
{
    if (m_stage == Stage::Look) {
        turnTo(Stage::Choose);
    }
}

void ClinicPhotos::undo()
{
    if (m_undoText.isEmpty() || !m_workplace.isOpen()) {
        return;
    }
    const auto photo = m_last;
    forgetUndo();
    m_workplace.settle(m_workplace.desk().takeBackPhoto(m_course, photo));
}

void ClinicPhotos::forgetUndo()
{
    m_last = {};
    m_undoText.clear();
    Q_EMIT changed();
}

}  // namespace ebbline::deskapp
