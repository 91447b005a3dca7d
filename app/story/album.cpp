#include "app/story/album.h"

#include "app/controls/shown_page.h"
#include "app/face/portrait.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QEvent>
#include <QMetaEnum>
#include <QQuickWindow>

namespace ebbline::story {

namespace {

constexpr QSize phoneSize{390, 844};
constexpr QSize deskSize{1280, 800};

void settle()
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < 120)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    // No loop runs that would do it: what was to be deleted would stay in the picture.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
}

template <typename Program>
QStringList unseen(const QString& program, const QSet<QString>& seen)
{
    QStringList names;
    const auto pages = QMetaEnum::fromType<typename Program::Page>();
    for (int i = 0; i < pages.keyCount(); ++i) {
        const auto name = QString::fromLatin1(pages.key(i));
        if (!seen.contains(name)) {
            names << program + QLatin1Char(' ') + name;
        }
    }
    return names;
}

}  // namespace

Album::Album(QString folder, bool on) : m_folder(std::move(folder)), m_on(on)
{
    if (m_on)
        QDir().mkpath(m_folder);
}

template <typename Program>
void Album::take(Program& program, const QString& name, QSet<QString>& pages)
{
    if (!controls::isPageThere(program.window())) {
        m_failed << name + QStringLiteral(" (its page does not load)");
        return;
    }
    const QString file = name + QStringLiteral(".png");
    if (!program.grab(m_folder + QLatin1Char('/') + file))
        return unwritten(file);
    pages << program.pageName();
    m_pictures << name;
}

void Album::unwritten(const QString& file)
{
    m_failed << file + QStringLiteral(" (cannot be written)");
}

void Album::phone(app::DiaryProgram& program, const QString& name)
{
    if (!program.window())
        program.show(phoneSize);
    settle();
    take(program, QStringLiteral("phone-") + name, m_phonePages);
}

void Album::desk(app::DeskProgram& program, const QString& name)
{
    if (!program.window())
        program.show(deskSize);
    settle();
    // Photographs come into sight as they are opened.
    if (program.photos()->pictures()->isWorking() || program.sheet()->isWorking()) {
        waitFor([&] { return !program.photos()->pictures()->isWorking() && !program.sheet()->isWorking(); });
        settle();
    }
    take(program, QStringLiteral("desk-") + name, m_deskPages);
}

QStringList Album::missing() const
{
    if (!m_on)
        return {};
    return unseen<app::DiaryProgram>(QStringLiteral("phone"), m_phonePages) + unseen<app::DeskProgram>(QStringLiteral("desk"), m_deskPages) + m_failed;
}

void Album::afterPairing(Stage& stage)
{
    if (!m_on)
        return;
    desk(stage.desk(), QStringLiteral("day0-linked"));
    app::DiaryProgram& program = *stage.phones().back()->program;
    program.openToday();
    phone(program, QStringLiteral("day0-care-plan"));
}

void Album::afterEntry(Stage&, Phone& teller, const Telling& telling, const std::vector<triage::Finding>& findings)
{
    if (!m_on)
        return;
    app::DiaryProgram& program = *teller.program;
    const bool loud = !findings.empty() && findings.front().urgency <= recovery::Urgency::callNow;
    if (loud && !m_warning) {
        m_warning = true;
        program.openToday();
        phone(program, QStringLiteral("day%1-warning").arg(telling.day));
    }
    if (teller.patient->kind == "plain" && telling.day == 0 && !m_firstEvening) {
        m_firstEvening = true;
        program.openToday();
        phone(program, QStringLiteral("day0-evening"));
        program.openHistory();
        phone(program, QStringLiteral("day0-history"));
    }
}

void Album::atTheQueue(Stage& stage)
{
    const std::size_t rows = stage.desk().workplace().desk().queue().size();
    if (!m_on || rows <= m_longestQueue)
        return;
    m_longestQueue = rows;
    stage.desk().openQueue();
    desk(stage.desk(), QStringLiteral("queue-longest"));
}

/// A photograph of a drawn face: taken, looked at, kept, and opened from the history.
void Album::theirPhotographs(app::DiaryProgram& program, const QString& suffix)
{
    diaryapp::PhotoBoard& photo = *program.photo();
    program.openPhoto();
    phone(program, QStringLiteral("photo") + suffix);
    photo.useFrame(face::portrait(recovery::ChartView::front, 720, 0.5));
    waitFor([&] { return photo.stage() != diaryapp::PhotoBoard::Stage::Working; });
    phone(program, QStringLiteral("photo-look") + suffix);
    photo.keep();
    program.dismissNotice();
    program.openHistory();
    for (const diaryapp::EntryLine& line : program.history()->entries())
        if (!line.photos.isEmpty()) {
            const QString key = line.photos.last().key;
            program.openPicture(key);
            waitFor([&] { return !program.picture()->shelf()->picture(key, diaryapp::PhotoShelf::Size::Whole).isNull(); });
            return phone(program, QStringLiteral("picture") + suffix);
        }
}

void Album::everyPhonePage(Phone& teller, const QString& suffix)
{
    app::DiaryProgram& program = *teller.program;
    program.openToday();
    phone(program, QStringLiteral("today") + suffix);
    program.openEntry();
    phone(program, QStringLiteral("entry-scores") + suffix);
    for (int i = 0; i < 5; ++i)
        program.entry()->next();
    phone(program, QStringLiteral("entry-signs") + suffix);
    program.entry()->next();
    phone(program, QStringLiteral("entry-rest") + suffix);
    program.openCall();
    phone(program, QStringLiteral("call") + suffix);
    program.openHistory();
    phone(program, QStringLiteral("history") + suffix);
    theirPhotographs(program, suffix);
    program.openNotes();
    phone(program, QStringLiteral("notes") + suffix);
    program.openReminders();
    phone(program, QStringLiteral("reminders") + suffix);
    program.openMine();
    phone(program, QStringLiteral("mine") + suffix);
    program.openSettings();
    phone(program, QStringLiteral("settings") + suffix);
    program.openKeys();
    phone(program, QStringLiteral("keys") + suffix);
    program.openNotices();
    phone(program, QStringLiteral("notices") + suffix);
    program.openLicence(program.notices()->licences().first());
    phone(program, QStringLiteral("licence") + suffix);
}

void Album::everyDeskPage(Stage& stage, const QString& suffix)
{
    app::DeskProgram& program = stage.desk();
    program.openQueue();
    desk(program, QStringLiteral("queue") + suffix);
    program.openCourses();
    desk(program, QStringLiteral("courses") + suffix);
    program.openTreatment();
    for (int step = 0; step < 4; ++step) {
        program.treatment()->setStep(step);
        desk(program, QStringLiteral("treatment-%1").arg(step + 1) + suffix);
    }
    for (auto& phone : stage.phones()) {
        program.openCourse(deskapp::keyOf(phone->course));
        desk(program, QStringLiteral("course-") + QString::fromStdString(phone->patient->kind) + suffix);
    }
    const QString first = deskapp::keyOf(stage.phones().front()->course);
    program.openPhotos(first);
    desk(program, QStringLiteral("photos") + suffix);
    program.openFollowUp(first);
    desk(program, QStringLiteral("follow-up") + suffix);
    program.openSheet(deskapp::keyOf(stage.phones()[1]->course));
    program.sheet()->setPhotos(true);
    desk(program, QStringLiteral("sheet") + suffix);
    const QString pdf = QStringLiteral("follow-up-sheet") + suffix + QStringLiteral(".pdf");
    if (!program.sheet()->write(m_folder + QLatin1Char('/') + pdf))
        unwritten(pdf);
    program.openHandOver();
    desk(program, QStringLiteral("hand-over") + suffix);
    program.openProtocols();
    desk(program, QStringLiteral("protocols") + suffix);
    const QString file = QStringLiteral("protocol") + suffix + QStringLiteral(".json");
    if (program.protocolTaking()->write(m_folder + QLatin1Char('/') + file) && program.protocolTaking()->read(m_folder + QLatin1Char('/') + file))
        desk(program, QStringLiteral("protocol-file") + suffix);
    else
        unwritten(file);
    program.openProtocolEdit();
    desk(program, QStringLiteral("protocol") + suffix);
    program.openPractice();
    waitFor([&] { return !program.practice()->isWorking(); });
    desk(program, QStringLiteral("practice") + suffix);
    program.openClinic();
    desk(program, QStringLiteral("clinic") + suffix);
    program.openDesks();
    desk(program, QStringLiteral("desks") + suffix);
    program.openKeep();
    desk(program, QStringLiteral("keys") + suffix);
    program.openTraces();
    desk(program, QStringLiteral("who-did-what") + suffix);
    program.openSettings();
    desk(program, QStringLiteral("settings") + suffix);
    program.openNotices();
    desk(program, QStringLiteral("notices") + suffix);
    program.openLicence(program.notices()->licences().first());
    desk(program, QStringLiteral("licence") + suffix);
    program.whoAmI();
    desk(program, QStringLiteral("person") + suffix);
}

/// What somebody sees before there is a course: the door, joining, a desk that joins its colleagues.
void Album::theDoors(Stage& stage, const QString& language)
{
    const QString suffix = QLatin1Char('-') + language;
    const auto passphrase = QString::fromLatin1(Stage::passphrase);
    const auto patient = stage.freshPhone(QStringLiteral("door-phone") + suffix);
    patient->settings()->setLanguageCode(language);
    phone(*patient, QStringLiteral("lock") + suffix);
    patient->locking()->create(passphrase, passphrase);
    phone(*patient, QStringLiteral("join") + suffix);
    const auto colleague = stage.freshDesk(QStringLiteral("door-desk") + suffix);
    colleague->settings()->setLanguage(language);
    desk(*colleague, QStringLiteral("unlock") + suffix);
    colleague->unlocking()->create(passphrase, passphrase);
    colleague->openApply();
    desk(*colleague, QStringLiteral("apply") + suffix);
}

void Album::atTheEnd(Stage& stage)
{
    if (!m_on)
        return;
    Phone& teller = *stage.phones().front();
    for (const char* language : {"en", "de", "ar"}) {
        const QString suffix = QLatin1Char('-') + QString::fromLatin1(language);
        teller.program->settings()->setLanguageCode(QString::fromLatin1(language));
        everyPhonePage(teller, suffix);
        stage.desk().settings()->setLanguage(QString::fromLatin1(language));
        everyDeskPage(stage, suffix);
        theDoors(stage, QString::fromLatin1(language));
    }
    teller.program->settings()->setLanguageCode(QStringLiteral("en"));
    stage.desk().settings()->setLanguage(QStringLiteral("en"));
    teller.program->settings()->setLook(1);
    stage.desk().settings()->setLook(1);
    everyPhonePage(teller, QStringLiteral("-dark"));
    stage.desk().openQueue();
    desk(stage.desk(), QStringLiteral("queue-dark"));
    teller.program->settings()->setLook(0);
    stage.desk().settings()->setLook(0);
    teller.program->settings()->setTextSize(2);
    everyPhonePage(teller, QStringLiteral("-200"));
    teller.program->settings()->setTextSize(0);
}

}  // namespace ebbline::story
