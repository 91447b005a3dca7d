#pragma once
/// \file
/// Every page of the desk and how to bring it up, for checks and pictures alike.

#include "tests/screens/demo_clinic.h"
#include "tests/screens/other_protocol.h"

#include <QCoreApplication>

#include <functional>

namespace ebbline::screens {

struct DeskPage {
    QString name;
    std::function<void(app::DeskProgram&, DemoClinic&)> show;
};

/// Enough courses of the past for every figure of the practice page.
inline constexpr int pastCourses = 56;

/// Until what is worked out beside the interface is there.
inline void await(app::DeskProgram& program)
{
    while (program.practice()->isWorking() || program.bands()->isLearning() || program.protocolEditor()->isRehearsing()
           || program.keep()->isBusy() || program.photos()->pictures()->isWorking() || program.sheet()->isWorking()) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    }
}

inline QList<DeskPage> deskPages()
{
    const auto practice = [](deskapp::PracticeBoard::Part part) {
        return [part](app::DeskProgram& program, DemoClinic&) {
            program.openPractice();
            await(program);
            program.practice()->setPart(part);
        };
    };
    const auto tomas = [](DemoClinic& clinic) { return deskapp::keyOf(clinic.course("Tomas Reyl")); };
    const auto written = [](app::DeskProgram& program) {
        program.openTreatment();
        auto* editor = program.treatment();
        editor->startOver();
        editor->registerPatient(QStringLiteral("Lea Fontaine"), QStringLiteral("+00 555 0150"), 1);
        editor->draw({296, 170}, {252, 262});
        editor->setLot(QStringLiteral("TH-4417"));
        editor->setExpiry(QStringLiteral("2029-06-30"));
        editor->setTrackMl(0.6);
        editor->mirrorSelected();
        editor->keepAsPlan();
        editor->draw({300, 190}, {230, 330});
        editor->setWeight(QStringLiteral("61"));
    };
    return {
        {QStringLiteral("queue"), [](auto& program, auto&) { program.openQueue(); }},
        {QStringLiteral("queue_rest"), [](auto& program, auto& clinic) {
             program.openQueue();
             program.queue()->setUrgencyFilter(0);
             program.openCourse(deskapp::keyOf(clinic.course("Noor Castellan")));
             const auto findings = program.course()->findings()->rows();
             for (const auto& row : findings) {
                 program.course()->startClosing(row.key);
                 program.course()->close(4, QStringLiteral("Ambulance on its way."));
             }
             program.openQueue();
         }},
        {QStringLiteral("queue_closing"), [](auto& program, auto&) {
             program.openQueue();
             program.queue()->startClosing(program.queue()->rows()->keyAt(0));
         }},
        {QStringLiteral("queue_call"), [](auto& program, auto&) {
             program.queue()->cancelClosing();
             program.call()->start(program.queue()->rows()->keyAt(0));
         }},
        {QStringLiteral("queue_visit"), [](auto& program, auto&) {
             program.call()->startVisit(program.queue()->rows()->keyAt(0));
             program.call()->setVisitDay(QStringLiteral("2027-03-24"));
             program.call()->setVisitTime(QStringLiteral("16:30"));
         }},
        {QStringLiteral("handOver"), [](auto& program, auto&) {
             program.call()->leave();
             program.openHandOver();
             program.handOver()->setWord(QStringLiteral("Odile: her sister is with her. Call again at six."));
             program.handOver()->pin();
         }},
        {QStringLiteral("courses"), [](auto& program, auto&) {
             program.openCourses();
         }},
        {QStringLiteral("course"), [tomas](auto& program, auto& clinic) { program.openCourse(tomas(clinic)); }},
        {QStringLiteral("course_table"), [tomas](auto& program, auto& clinic) {
             program.openCourse(tomas(clinic));
             program.course()->curves()->setTableShown(true);
         }},
        {QStringLiteral("course_correcting"), [tomas](auto& program, auto& clinic) {
             program.openCourse(tomas(clinic));
             program.patient()->open(program.course()->patientKey());
             program.patient()->setPhone(QStringLiteral("+00 555 0199"));
         }},
        {QStringLiteral("course_corrected"), [](auto& program, auto&) { program.patient()->save(); }},
        {QStringLiteral("course_quiet"), [](auto& program, auto& clinic) {
             program.openCourse(deskapp::keyOf(clinic.course("Mirela Sand")));
             program.course()->curves()->setSymptom(static_cast<int>(recovery::Symptom::puckering));
         }},
        {QStringLiteral("course_clinic_photos"), [](auto& program, auto& clinic) {
             program.openCourse(deskapp::keyOf(clinic.course("Mirela Sand")));
             program.photos()->intake()->begin();
         }},
        {QStringLiteral("photos_unmarked"), [tomas](auto& program, auto& clinic) {
             program.openCourse(tomas(clinic));
             program.openPhotos(tomas(clinic));
             await(program);
         }},
        {QStringLiteral("photos_marking"), [](auto& program, auto& clinic) {
             auto& comparison = *program.photos()->comparison();
             comparison.startMarking(deskapp::PhotoComparison::Later);
             comparison.putAtCursor();
             comparison.moveCursor({0.3, 0.1});
             comparison.putAtCursor();
             Q_UNUSED(clinic)
         }},
        {QStringLiteral("photos"), [tomas](auto& program, auto& clinic) {
             auto& desk = program.workplace().desk();
             for (const auto& photo : desk.photos(clinic.course("Tomas Reyl"))) {
                 if (photo.isHere()) {
                     program.workplace().settle(desk.markEyes(clinic.course("Tomas Reyl"), photo.photo, clinic.eyesIn(photo.photo)));
                 }
             }
             program.openPhotos(tomas(clinic));
             await(program);
         }},
        {QStringLiteral("photos_only_one"), [](auto& program, auto& clinic) {
             program.openCourse(deskapp::keyOf(clinic.course("Ines Varga")));
             program.openPhotos(deskapp::keyOf(clinic.course("Ines Varga")));
             await(program);
         }},
        {QStringLiteral("treatment_patient"), [written](auto& program, auto&) {
             written(program);
             program.treatment()->setStep(0);
         }},
        {QStringLiteral("treatment_threads"), [](auto& program, auto&) { program.treatment()->setStep(1); }},
        {QStringLiteral("treatment_anaesthetic"), [](auto& program, auto&) { program.treatment()->setStep(2); }},
        {QStringLiteral("treatment_care"), [](auto& program, auto&) { program.treatment()->setStep(3); }},
        {QStringLiteral("pairing"), [](auto& program, auto& clinic) {
             program.openPairing(deskapp::keyOf(clinic.course("Petra Halden")));
         }},
        {QStringLiteral("pairing_code"), [](auto& program, auto&) { program.pairing()->start(); }},
        {QStringLiteral("pairing_compare"), [](auto& program, auto& clinic) { clinic.bringPhone(program); }},
        {QStringLiteral("pairing_used_twice"), [](auto& program, auto& clinic) {
             program.pairing()->again();
             program.pairing()->start();
             const auto code = program.pairing()->typedCode();
             clinic.bringPhone(program, code);
             clinic.bringPhone(program, code);
         }},
        {QStringLiteral("pairing_expired"), [](auto& program, auto& clinic) {
             program.pairing()->again();
             program.pairing()->start();
             clinic.clock().advance(std::chrono::minutes(11));
             program.pairing()->poll();
             clinic.clock().advance(-std::chrono::minutes(11));
         }},
        {QStringLiteral("followUp"), [](auto& program, auto& clinic) {
             program.openFollowUp(deskapp::keyOf(clinic.course("Mirela Sand")));
             program.followUp()->tick(QStringLiteral("lasting puckering"), true);
         }},
        {QStringLiteral("sheet"), [tomas](auto& program, auto& clinic) { program.openSheet(tomas(clinic)); }},
        {QStringLiteral("sheet_photos"), [](auto& program, auto&) {
             program.sheet()->setPhotos(true);
             await(program);
         }},
        {QStringLiteral("practice_complications"), practice(deskapp::PracticeBoard::Complications)},
        {QStringLiteral("practice_settling"), practice(deskapp::PracticeBoard::Settling)},
        {QStringLiteral("practice_comparison"), practice(deskapp::PracticeBoard::Comparison)},
        {QStringLiteral("practice_over_time"), practice(deskapp::PracticeBoard::OverTime)},
        {QStringLiteral("practice_alerts"), practice(deskapp::PracticeBoard::Alerts)},
        {QStringLiteral("practice_adherence"), practice(deskapp::PracticeBoard::Adherence)},
        {QStringLiteral("practice_lots"), [practice](auto& program, auto& clinic) {
             practice(deskapp::PracticeBoard::Lots)(program, clinic);
             program.lots()->choose(QStringLiteral("QN2208"));
         }},
        {QStringLiteral("practice_band"), practice(deskapp::PracticeBoard::UsualRange)},
        {QStringLiteral("protocols"), [](auto& program, auto&) { program.openProtocols(); }},
        {QStringLiteral("protocol_plan"), [](auto& program, auto&) {
             program.openProtocols();
             program.openProtocolEdit();
             auto* editor = program.protocolEditor();
             editor->choose(editor->plan()->keyAt(0));
             editor->setLastDay(1);
             editor->setClinicText(QStringLiteral("Bring the old dressings to the visit."));
         }},
        {QStringLiteral("protocol_rules"), [](auto& program, auto&) {
             program.protocolEditor()->setStep(1);
             program.protocolEditor()->setRule(0, 2);
         }},
        {QStringLiteral("protocol_rehearsed"), [](auto& program, auto&) {
             program.protocolEditor()->setStep(2);
             program.protocolEditor()->rehearse();
             await(program);
         }},
        {QStringLiteral("protocol_signed"), [](auto& program, auto&) {
             program.protocolEditor()->sign();
             program.protocolEditor()->setStep(2);
         }},
        {QStringLiteral("protocol_file"), [](auto& program, auto& clinic) {
             program.openProtocols();
             program.protocolTaking()->read(protocolFileOf(clinic.folder().parent_path(), exchange::protocolText(otherProtocol())));
         }},
        {QStringLiteral("protocol_drafted"), [](auto& program, auto&) { program.protocolTaking()->makeDraft(); }},
        {QStringLiteral("protocols_refused"), [](auto& program, auto& clinic) {
             program.openProtocols();
             program.protocolTaking()->read(protocolFileOf(clinic.folder().parent_path(), "{\"format\": \"another\"}"));
         }},
        {QStringLiteral("clinic"), [](auto& program, auto&) { program.openClinic(); }},
        {QStringLiteral("desks"), [](auto& program, auto&) { program.openDesks(); }},
        {QStringLiteral("desks_asking"), [](auto& program, auto&) { program.desks()->askFreshKey(); }},
        {QStringLiteral("desk_inviting"), [](auto& program, auto&) {
             program.desks()->cancel();
             program.openDeskPairing();
         }},
        {QStringLiteral("desk_code"), [](auto& program, auto&) {
             program.pairing()->start(QString::fromLatin1(DemoClinic::passphrase), 0);
         }},
        {QStringLiteral("keep"), [](auto& program, auto&) { program.openKeep(); }},
        {QStringLiteral("keep_code"), [](auto& program, auto&) {
             program.keep()->makeCode(QString::fromLatin1(DemoClinic::passphrase));
             await(program);
         }},
        {QStringLiteral("keep_code_asked"), [](auto& program, auto&) {
             program.keep()->askBack();
             program.keep()->readBack(QStringLiteral("2222"));
         }},
        {QStringLiteral("keep_wrong"), [](auto& program, auto&) {
             program.keep()->makeCode(QStringLiteral("another sea altogether"));
             await(program);
         }},
        {QStringLiteral("traces"), [](auto& program, auto&) { program.openTraces(); }},
        {QStringLiteral("traces_none"), [](auto& program, auto&) { program.traces()->setSearch(QStringLiteral("nobody did this")); }},
        {QStringLiteral("settings"), [](auto& program, auto&) { program.openSettings(); }},
        {QStringLiteral("notices"), [](auto& program, auto&) { program.openNotices(); }},
        {QStringLiteral("licence"), [](auto& program, auto&) {
             program.openLicence(program.notices()->licences().first());
         }},
        {QStringLiteral("queue_unheard"), [](auto& program, auto& clinic) {
             clinic.clock().advance(std::chrono::hours(27));
             program.queue()->refresh();
             program.hub()->refresh();
             program.openQueue();
         }},
        {QStringLiteral("clinic_unheard"), [](auto& program, auto&) { program.openClinic(); }},
        {QStringLiteral("clinic_role_question"), [](auto& program, auto&) {
             for (const auto* person : {"Dr Mara Lindqvist", "Ilan Osei"}) {
                 program.roles()->give(QString::fromLatin1(person), static_cast<int>(records::Role::inCharge) - 1);
             }
             program.roles()->give(QStringLiteral("Dr Mara Lindqvist"), static_cast<int>(records::Role::assistant) - 1);
         }},
        {QStringLiteral("ending"), [](auto& program, auto& clinic) {
             program.openSettings();
             program.idle()->watch(true);
             clinic.clock().advance(std::chrono::minutes(program.settings()->lockMinutes()) - std::chrono::seconds(20));
             program.idle()->look();
         }},
        {QStringLiteral("person"), [](auto& program, auto&) {
             program.idle()->watch(false);
             program.whoAmI();
         }},
        {QStringLiteral("help"), [](auto& program, auto&) {
             program.openQueue();
             program.setHelpShown(true);
         }},
        {QStringLiteral("queue_backup_due"), [](auto& program, auto& clinic) {
             program.setHelpShown(false);
             clinic.clock().advance(std::chrono::hours(8 * 24));
             program.workplace().settle({});
             program.openQueue();
         }},
        {QStringLiteral("last"), [](auto& program, auto&) {
             program.setHelpShown(false);
             program.openQueue();
         }},
    };
}

/// Of a desk that has no clinic yet, beside a colleague's that has; in order.
struct DeskDoorPage {
    QString name;
    std::function<void(app::DeskProgram& fresh, app::DeskProgram& colleague)> show;
};

inline QList<DeskDoorPage> deskDoorPages()
{
    const auto passphrase = QString::fromLatin1(DemoClinic::passphrase);
    const auto poll = [](app::DeskProgram& fresh, app::DeskProgram& colleague) {
        for (int i = 0; i < 4; ++i) {
            fresh.applying()->poll();
            colleague.pairing()->poll();
        }
    };
    return {
        {QStringLiteral("unlock"), [](auto&, auto&) {}},
        {QStringLiteral("unlock_short"), [](auto& fresh, auto&) { fresh.unlocking()->create(QStringLiteral("short"), {}); }},
        {QStringLiteral("clinic_empty"), [passphrase](auto& fresh, auto&) { fresh.unlocking()->create(passphrase, passphrase); }},
        {QStringLiteral("apply"), [](auto& fresh, auto&) { fresh.openApply(); }},
        {QStringLiteral("apply_malformed"), [](auto& fresh, auto&) {
             fresh.applying()->start(QStringLiteral("ABCD"), QStringLiteral("hub.example:8443"));
         }},
        {QStringLiteral("apply_compare"), [poll](auto& fresh, auto& colleague) {
             colleague.openDeskPairing();
             colleague.pairing()->start(QString::fromLatin1(DemoClinic::passphrase), 0);
             fresh.applying()->start(colleague.pairing()->typedCode(), QStringLiteral("127.0.0.1:1"));
             poll(fresh, colleague);
         }},
        {QStringLiteral("apply_joined"), [poll](auto& fresh, auto& colleague) {
             colleague.pairing()->confirm();
             poll(fresh, colleague);
         }},
        {QStringLiteral("locked_wrong"), [](auto& fresh, auto&) {
             fresh.lock();
             fresh.unlocking()->unlock(QStringLiteral("another sea altogether"));
         }},
    };
}

}  // namespace ebbline::screens
