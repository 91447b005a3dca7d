// Every page of either program, and how to bring it up.
#include "app/story/album.h"

#include "app/face/portrait.h"
#include "app/story/practitioner.h"

#include <algorithm>

namespace ebbline::story {

/// A photograph of a drawn face: taken, looked at, kept, and opened from the history.
void Album::addPhotographs(Drawings& drawings, Phone& teller, const QString& suffix)
{
    app::DiaryProgram& program = *teller.program;
    drawings.emplace_back([this, &program, suffix] {
        program.openPhoto();
        phone(program, QStringLiteral("photo") + suffix);
    });
    drawings.emplace_back([this, &program, suffix] {
        diaryapp::PhotoBoard& photo = *program.photo();
        photo.useFrame(face::portrait(recovery::ChartView::front, 720, 0.5));
        waitFor([&] { return photo.stage() != diaryapp::PhotoBoard::Stage::Working; });
        phone(program, QStringLiteral("photo-look") + suffix);
        photo.keep();
        program.dismissNotice();
    });
    drawings.emplace_back([this, &program, suffix] {
        program.openHistory();
        const QList<diaryapp::EntryLine> entries = program.history()->entries();
        const auto pictured = std::ranges::find_if(entries, [](const diaryapp::EntryLine& line) { return !line.photos.isEmpty(); });
        if (pictured == entries.end())
            return;
        const QString key = pictured->photos.last().key;
        program.openPicture(key);
        waitFor([&] { return !program.picture()->shelf()->picture(key, diaryapp::PhotoShelf::Size::Whole).isNull(); });
        phone(program, QStringLiteral("picture") + suffix);
    });
}

void Album::addPhonePages(Drawings& drawings, Phone& teller, const QString& suffix)
{
    using Program = app::DiaryProgram;
    Program& program = *teller.program;
    const auto add = [&](const char* name, const std::function<void(Program&)>& show) {
        drawings.emplace_back([this, &program, show, picture = QLatin1String(name) + suffix] {
            show(program);
            phone(program, picture);
        });
    };
    add("today", &Program::openToday);
    add("entry-scores", &Program::openEntry);
    add("entry-signs", [](Program& shown) {
        for (int i = 0; i < 5; ++i)
            shown.entry()->next();
    });
    add("entry-rest", [](Program& shown) { shown.entry()->next(); });
    add("call", &Program::openCall);
    add("history", &Program::openHistory);
    addPhotographs(drawings, teller, suffix);
    add("notes", &Program::openNotes);
    add("reminders", &Program::openReminders);
    add("mine", &Program::openMine);
    add("settings", &Program::openSettings);
    add("keys", &Program::openKeys);
    add("notices", &Program::openNotices);
    add("licence", [](Program& shown) { shown.openLicence(shown.notices()->licences().first()); });
}

/// Of a second treatment of the first patient, begun and not recorded: threads and dose stand on its page in every language.
void Album::beginTreatment(Stage& stage)
{
    app::DeskProgram& program = stage.desk();
    const Phone& teller = *stage.phones().front();
    const recovery::Treatment& treated = teller.patient->treatment;
    program.openTreatment();
    program.treatment()->choosePatient(deskapp::keyOf(program.workplace().state().courses.at(teller.course).treatment->treatment.patient));
    for (const auto write : {&writeThreads, &writeAnaesthetic, &writeCare})
        if (const Done written = write(program, treated); !written)
            m_failed << QStringLiteral("desk-treatment (%1)").arg(QString::fromStdString(written.error().detail));
}

void Album::writeSheet(app::DeskProgram& program, const QString& suffix)
{
    const QString pdf = QStringLiteral("follow-up-sheet") + suffix + QStringLiteral(".pdf");
    if (!program.sheet()->write(m_folder + QLatin1Char('/') + pdf))
        unwritten(pdf);
}

void Album::addDeskPages(Drawings& drawings, Stage& stage, const QString& suffix)
{
    using Program = app::DeskProgram;
    Program& program = stage.desk();
    const auto add = [&](const QString& name, const std::function<void(Program&)>& show) {
        drawings.emplace_back([this, &program, show, picture = name + suffix] {
            show(program);
            desk(program, picture);
        });
    };
    add(QStringLiteral("queue"), &Program::openQueue);
    add(QStringLiteral("courses"), &Program::openCourses);
    for (int step = 0; step < 4; ++step)
        add(QStringLiteral("treatment-%1").arg(step + 1), [step](Program& shown) {
            shown.openTreatment();
            shown.treatment()->choose(1);
            shown.treatment()->setStep(step);
        });
    for (const auto& each : stage.phones())
        add(QStringLiteral("course-") + QString::fromStdString(each->patient->kind),
            [course = deskapp::keyOf(each->course)](Program& shown) { shown.openCourse(course); });
    const QString first = deskapp::keyOf(stage.phones().front()->course);
    add(QStringLiteral("photos"), [first](Program& shown) { shown.openPhotos(first); });
    add(QStringLiteral("follow-up"), [first](Program& shown) { shown.openFollowUp(first); });
    add(QStringLiteral("sheet"), [second = deskapp::keyOf(stage.phones()[1]->course)](Program& shown) {
        shown.openSheet(second);
        shown.sheet()->setPhotos(true);
    });
    drawings.emplace_back([this, &program, suffix] {
        writeSheet(program, suffix);
        program.openHandOver();
        desk(program, QStringLiteral("hand-over") + suffix);
    });
    addDeskLists(drawings, stage, suffix);
}

void Album::addDeskLists(Drawings& drawings, Stage& stage, const QString& suffix)
{
    using Program = app::DeskProgram;
    Program& program = stage.desk();
    const auto add = [&](const char* name, const std::function<void(Program&)>& show) {
        drawings.emplace_back([this, &program, show, picture = QLatin1String(name) + suffix] {
            show(program);
            desk(program, picture);
        });
    };
    add("protocols", &Program::openProtocols);
    drawings.emplace_back([this, &program, suffix] {
        const QString file = QStringLiteral("protocol") + suffix + QStringLiteral(".json");
        if (program.protocolTaking()->write(m_folder + QLatin1Char('/') + file) && program.protocolTaking()->read(m_folder + QLatin1Char('/') + file))
            desk(program, QStringLiteral("protocol-file") + suffix);
        else
            unwritten(file);
    });
    add("protocol", &Program::openProtocolEdit);
    add("practice", [](Program& shown) {
        shown.openPractice();
        waitFor([&] { return !shown.practice()->isWorking(); });
    });
    add("clinic", &Program::openClinic);
    add("desks", &Program::openDesks);
    add("keys", &Program::openKeep);
    add("who-did-what", &Program::openTraces);
    add("settings", &Program::openSettings);
    add("notices", &Program::openNotices);
    add("licence", [](Program& shown) { shown.openLicence(shown.notices()->licences().first()); });
    add("person", &Program::whoAmI);
}

/// What somebody sees before there is a course: the door, joining, a desk that joins its colleagues.
void Album::addDoors(Drawings& drawings, Stage& stage, const QString& language)
{
    struct Doors {
        std::unique_ptr<app::DiaryProgram> phone;
        std::unique_ptr<app::DeskProgram> desk;
    };
    const auto doors = std::make_shared<Doors>();
    const QString suffix = QLatin1Char('-') + language;
    const auto passphrase = QString::fromLatin1(Stage::passphrase);
    drawings.emplace_back([=, this, &stage] {
        doors->phone = stage.freshPhone(QStringLiteral("door-phone") + suffix);
        doors->phone->settings()->setLanguageCode(language);
        phone(*doors->phone, QStringLiteral("lock") + suffix);
    });
    drawings.emplace_back([=, this] {
        doors->phone->locking()->create(passphrase, passphrase);
        phone(*doors->phone, QStringLiteral("join") + suffix);
        doors->phone.reset();
    });
    drawings.emplace_back([=, this, &stage] {
        doors->desk = stage.freshDesk(QStringLiteral("door-desk") + suffix);
        doors->desk->settings()->setLanguage(language);
        desk(*doors->desk, QStringLiteral("unlock") + suffix);
    });
    drawings.emplace_back([=, this] {
        doors->desk->unlocking()->create(passphrase, passphrase);
        doors->desk->openApply();
        desk(*doors->desk, QStringLiteral("apply") + suffix);
        doors->desk.reset();
    });
}

}  // namespace ebbline::story
