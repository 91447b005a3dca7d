#pragma once
/// \file
/// Every page and state of the diary in the order of a course, for checks and pictures alike. They
/// build on each other: show all of them, in order, over one DemoPatient.

#include "tests/screens/demo_patient.h"

#include <functional>

namespace ebbline::screens {

struct DiaryPage {
    QString name;
    std::function<void(app::DiaryProgram&, DemoPatient&)> show;
};

/// Touches the first number where nothing can dial, as on the platform of the tests, which says so by itself.
inline void callInVain(app::DiaryProgram& program)
{
    const auto before = qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    program.warning()->call(program.warning()->calls().first().number);
    qInstallMessageHandler(before);
}

/// From the first start to the care plan on the phone.
inline QList<DiaryPage> doorPages()
{
    const auto passphrase = QString::fromLatin1(DemoPatient::passphrase);
    const auto hub = QString::fromLatin1(DemoPatient::hub);
    return {
        {QStringLiteral("lock_fresh"), [](auto&, auto&) {}},
        {QStringLiteral("lock_short"), [](auto& program, auto&) { program.locking()->create(QStringLiteral("short"), {}); }},
        {QStringLiteral("lock_unequal"), [passphrase](auto& program, auto&) {
             program.locking()->create(passphrase, QStringLiteral("three calm swans"));
         }},
        {QStringLiteral("lock_drawn"), [](auto& program, auto&) { program.locking()->draw(); }},
        {QStringLiteral("lock_asked"), [](auto& program, auto&) { program.locking()->askBack(); }},
        {QStringLiteral("call_before_joining"), [](auto& program, auto&) { program.openCall(); }},
        {QStringLiteral("join"), [passphrase](auto& program, auto&) {
             program.locking()->chooseOwn();
             program.locking()->create(passphrase, passphrase);
         }},
        {QStringLiteral("join_malformed"), [hub](auto& program, auto&) {
             program.joining()->useText(QStringLiteral("ABCD"), hub);
         }},
        {QStringLiteral("join_no_address"), [](auto& program, auto& patient) {
             program.joining()->useText(patient.showsCode(), {});
         }},
        {QStringLiteral("join_unprotected"), [](auto& program, auto& patient) {
             program.joining()->useText(patient.showsCode(), QStringLiteral("http://hub.example"));
         }},
        {QStringLiteral("join_stranger"), [hub](auto& program, auto& patient) {
             patient.setStranger(true);
             program.joining()->useText(patient.showsCode(), hub);
             program.joining()->poll();
             patient.setStranger(false);
         }},
        {QStringLiteral("join_place"), [](auto& program, auto& patient) {
             program.joining()->usePicture(patient.showsPicture());
         }},
        {QStringLiteral("join_not_there"), [](auto& program, auto&) { program.joining()->answerPlace(false); }},
        {QStringLiteral("join_waiting"), [hub](auto& program, auto& patient) {
             program.joining()->useText(patient.showsCode(), hub);
         }},
        {QStringLiteral("join_offline"), [](auto& program, auto& patient) {
             patient.setOffline(true);
             program.joining()->poll();
         }},
        {QStringLiteral("join_compare"), [](auto& program, auto& patient) {
             patient.setOffline(false);
             program.joining()->poll();
             patient.looks();
             program.joining()->poll();
         }},
        {QStringLiteral("join_arriving"), [](auto& program, auto& patient) {
             patient.confirms();
             program.joining()->poll();
         }},
        {QStringLiteral("today_empty"), [](auto& program, auto& patient) {
             patient.sends();
             program.joining()->poll();
         }},
        {QStringLiteral("today_silent"), [](auto& program, auto&) { program.reminders()->allow(false); }},
        {QStringLiteral("today_ringing"), [](auto& program, auto&) { program.reminders()->allow(true); }},
        {QStringLiteral("today_tried"), [](auto& program, auto&) { program.reminders()->tryBell(); }},
        {QStringLiteral("today_try_away"), [](auto& program, auto&) { program.reminders()->putTryAway(); }},
    };
}

/// From day 0 to the follow-up, and the locked diary at the end.
inline QList<DiaryPage> coursePages()
{
    using recovery::Sign;
    const auto passphrase = QString::fromLatin1(DemoPatient::passphrase);
    const auto tick = [](app::DiaryProgram& program, std::initializer_list<Sign> signs) {
        program.openEntry();
        while (program.entry()->step() == diaryapp::EntryBoard::Step::Score)
            program.entry()->next();
        for (const Sign sign : signs)
            program.entry()->tick(static_cast<int>(sign), true);
    };
    const auto finish = [](app::DiaryProgram& program) {
        program.entry()->signsDone();
        program.entry()->save();
    };
    return {
        {QStringLiteral("history_empty"), [](auto& program, auto&) { program.openHistory(); }},
        {QStringLiteral("notes_empty"), [](auto& program, auto&) { program.openNotes(); }},
        {QStringLiteral("call"), [](auto& program, auto&) { program.openCall(); }},
        {QStringLiteral("call_undialled"), [](auto& program, auto&) { callInVain(program); }},
        {QStringLiteral("settings"), [](auto& program, auto&) { program.openSettings(); }},
        {QStringLiteral("settings_ending"), [](auto& program, auto& patient) {
             program.idle()->watch(true);
             patient.clock().advance(std::chrono::minutes(program.settings()->lockMinutes()) - std::chrono::seconds(20));
             program.idle()->look();
         }},
        {QStringLiteral("reminders"), [](auto& program, auto&) {
             program.idle()->watch(false);
             program.openReminders();
         }},
        {QStringLiteral("reminders_tried"), [](auto& program, auto&) {
             program.reminders()->tryBell();
             program.reminders()->saveCalendar(QUrl::fromLocalFile(QStringLiteral("/proc/none")));
         }},
        {QStringLiteral("keys"), [](auto& program, auto&) { program.openKeys(); }},
        {QStringLiteral("keys_wrong"), [](auto& program, auto&) {
             program.keys()->change(QStringLiteral("wrong"), QStringLiteral("short"), {});
         }},
        {QStringLiteral("keys_code"), [passphrase](auto& program, auto&) { program.keys()->makeCode(passphrase); }},
        {QStringLiteral("keys_code_saved"), [](auto& program, auto&) {
             program.keys()->savePage(QUrl::fromLocalFile(QStringLiteral("/proc/none")));
         }},
        {QStringLiteral("keys_code_asked"), [](auto& program, auto&) {
             program.keys()->askBack();
             program.keys()->readBack(QStringLiteral("2222"));
         }},
        {QStringLiteral("keys_unread"), [](auto& program, auto& patient) {
             patient.keeper().there = true;
             program.openKeys();
         }},
        {QStringLiteral("mine"), [](auto& program, auto& patient) {
             patient.keeper().there = false;
             program.openMine();
         }},
        {QStringLiteral("mine_wrong"), [](auto& program, auto&) { program.mine()->allowTaking(QStringLiteral("a guess")); }},
        {QStringLiteral("mine_confirming"), [passphrase](auto& program, auto&) {
             program.mine()->allowTaking(passphrase);
             program.mine()->takeAlong(QUrl::fromLocalFile(QStringLiteral("/proc/none")));
             program.mine()->askDelete();
             program.mine()->deleteAll({});
         }},
        {QStringLiteral("notices"), [](auto& program, auto&) { program.openNotices(); }},
        {QStringLiteral("licence"), [](auto& program, auto&) {
             program.openLicence(program.notices()->licences().first());
         }},
        {QStringLiteral("today_due"), [](auto& program, auto& patient) {
             patient.goTo(0, 19, 40);
             program.openToday();
         }},
        {QStringLiteral("today_answered"), [](auto& program, auto&) { program.today()->done(program.today()->due().first().key); }},
        {QStringLiteral("entry_first"), [](auto& program, auto&) { program.openEntry(); }},
        {QStringLiteral("entry_answered"), [](auto& program, auto&) {
             program.entry()->answer(1, 4);
             program.entry()->answer(2, 3);
         }},
        {QStringLiteral("entry_signs"), [](auto& program, auto&) {
             while (program.entry()->step() == diaryapp::EntryBoard::Step::Score)
                 program.entry()->next();
         }},
        {QStringLiteral("entry_signs_ticked"), [](auto& program, auto&) {
             program.entry()->tick(static_cast<int>(Sign::threadLump), true);
         }},
        {QStringLiteral("entry_rest"), [](auto& program, auto&) { program.entry()->signsDone(); }},
        {QStringLiteral("entry_rest_problem"), [](auto& program, auto&) {
             program.entry()->writeTemperature(QStringLiteral("12"));
             program.entry()->writeNote(QStringLiteral("Slept on my back. Chewing feels odd on the left."));
         }},
        {QStringLiteral("entry_note_full"), [](auto& program, auto&) {
             program.entry()->writeNote(QStringLiteral("Slept on my back. ").repeated(recovery::Entry::maximumNote / 16));
         }},
        {QStringLiteral("entry_throwing"), [](auto& program, auto&) {
             program.entry()->writeNote(QStringLiteral("Slept on my back. Chewing feels odd on the left."));
             program.entry()->tick(static_cast<int>(Sign::breathing), true);
             program.entry()->askDiscard();
         }},
        {QStringLiteral("entry_more"), [](auto& program, auto&) {
             program.entry()->keepTyping();
             program.entry()->tick(static_cast<int>(Sign::breathing), false);
             program.entry()->writeTemperature(QStringLiteral("37"));
             program.entry()->askMore();
         }},
        {QStringLiteral("today_saved"), [](auto& program, auto&) {
             program.entry()->next();
             program.entry()->next();
             program.entry()->signsDone();
             program.entry()->save();
         }},
        {QStringLiteral("warning_unsaved"), [tick](auto& program, auto& patient) {
             program.today()->readAdvice();
             program.dismissNotice();
             patient.setOffline(true);
             patient.goTo(1, 8, 10);
             tick(program, {Sign::fastSwelling});
             program.entry()->signsDone();
         }},
        {QStringLiteral("warning_call_now"), [](auto& program, auto&) { program.entry()->save(); }},
        {QStringLiteral("warning_emergency"), [tick, finish](auto& program, auto& patient) {
             program.warning()->confirm();
             patient.goTo(1, 9, 0);
             tick(program, {Sign::breathing, Sign::neckSwelling});
             finish(program);
         }},
        {QStringLiteral("warning_undialled"), [](auto& program, auto&) { callInVain(program); }},
        {QStringLiteral("warning_everything"), [finish](auto& program, auto& patient) {
             program.warning()->confirm();
             patient.goTo(1, 9, 30);
             program.openEntry();
             program.entry()->answer(1, 10);
             program.entry()->answer(2, 2);
             while (program.entry()->step() == diaryapp::EntryBoard::Step::Score)
                 program.entry()->next();
             for (const auto sign : recovery::allSigns)
                 program.entry()->tick(static_cast<int>(sign), true);
             program.entry()->writeTemperature(QStringLiteral("39"));
             finish(program);
         }},
        {QStringLiteral("today_offline"), [](auto& program, auto& patient) {
             program.warning()->confirm();
             for (int day = 2; day <= 4; ++day) {
                 patient.goTo(day, 20);
                 DemoPatient::tell(program, 5 - day);
             }
             program.dismissNotice();
             program.openToday();
         }},
        {QStringLiteral("today_later"), [](auto& program, auto& patient) {
             patient.setOffline(false);
             program.syncNow();
             patient.opens();
             patient.writes("Please take your temperature this evening and write it down.");
             program.syncNow();
             patient.goTo(5, 20);
             DemoPatient::tell(program, 2);
             program.dismissNotice();
             patient.goTo(6, 9);
             program.openToday();
         }},
        {QStringLiteral("notes"), [](auto& program, auto&) {
             program.openNotes();
             program.history()->writeNote(QStringLiteral("I will. It was fine last night."));
         }},
        {QStringLiteral("history"), [](auto& program, auto& patient) {
             patient.setOffline(true);
             program.openHistory();
         }},
        {QStringLiteral("entry_earlier"), [](auto& program, auto&) { program.openEarlier(); }},
        {QStringLiteral("entry_amending"), [](auto& program, auto&) {
             program.entry()->discard();
             program.amend(program.history()->entries().first().key);
         }},
        {QStringLiteral("history_amended"), [](auto& program, auto&) {
             program.entry()->answer(1, 1);
             program.entry()->save();
             program.dismissNotice();
             program.openHistory();
         }},
        {QStringLiteral("photo"), [](auto& program, auto&) { program.openPhoto(); }},
        {QStringLiteral("photo_side"), [](auto& program, auto&) { program.photo()->choose(1); }},
        {QStringLiteral("photo_refused"), [](auto& program, auto&) {
             program.photo()->useFile(QUrl::fromLocalFile(QStringLiteral("/proc/none.jpg")));
             DemoPatient::waits([&] { return !program.photo()->problem().isEmpty(); });
         }},
        {QStringLiteral("photo_look"), [](auto& program, auto&) { DemoPatient::aims(program, 0.8); }},
        {QStringLiteral("photo_kept"), [](auto& program, auto&) {
             program.photo()->keep();
             program.dismissNotice();
         }},
        {QStringLiteral("history_photos"), [](auto& program, auto& patient) {
             for (int view = 0; view < 2; ++view) {
                 DemoPatient::aims(program, 0.8);
                 program.photo()->keep();
             }
             patient.goTo(7, 9);
             program.openEntry();
             while (program.entry()->step() != diaryapp::EntryBoard::Step::Rest)
                 program.entry()->next();
             program.entry()->writeNote(QStringLiteral("Much calmer today."));
             program.saveThenPhoto();
             DemoPatient::aims(program, 0.2);
             program.photo()->keep();
             program.dismissNotice();
             program.openHistory();
             DemoPatient::seesPhotos(program);
         }},
        {QStringLiteral("picture"), [](auto& program, auto&) {
             const QString key = program.history()->entries().first().photos.first().key;
             program.openPicture(key);
             DemoPatient::waits([&] { return !program.picture()->shelf()->picture(key, diaryapp::PhotoShelf::Size::Whole).isNull(); });
         }},
        {QStringLiteral("picture_arrived"), [](auto& program, auto& patient) {
             patient.setOffline(false);
             for (int round = 0; round < 2; ++round) {
                 program.syncNow();
                 patient.sends();
             }
             program.syncNow();
         }},
        {QStringLiteral("picture_asking"), [](auto& program, auto&) { program.picture()->askRemove(); }},
        {QStringLiteral("history_taken_back"), [](auto& program, auto& patient) {
             program.picture()->remove();
             patient.setOffline(true);
         }},
        {QStringLiteral("entry_asking"), [](auto& program, auto& patient) {
             patient.goTo(7, 21);
             program.openEntry();
             program.entry()->answer(1, 1);
             patient.goTo(8, 9);
             program.back();
             program.openEntry();
         }},
        {QStringLiteral("today_last_day"), [](auto& program, auto& patient) {
             program.entry()->discard();
             patient.goTo(20, 9);
             program.openToday();
         }},
        {QStringLiteral("today_visit_moved"), [](auto& program, auto& patient) {
             patient.setOffline(false);
             patient.agrees({program.home().diary().course().treated.day() + std::chrono::days(25), {}});
             program.syncNow();
             program.openToday();
             patient.setOffline(true);
         }},
        {QStringLiteral("locked"), [](auto& program, auto&) { program.lock(); }},
        {QStringLiteral("locked_wrong"), [](auto& program, auto&) {
             program.locking()->unlock(QStringLiteral("four calm herons wade"));
         }},
        {QStringLiteral("locked_code"), [](auto& program, auto&) { program.locking()->useCode(true); }},
        {QStringLiteral("locked_code_wrong"), [](auto& program, auto&) {
             program.locking()->recover(QStringLiteral("ABCD"), {}, {});
         }},
        {QStringLiteral("call_locked"), [](auto& program, auto&) { program.openCall(); }},
        {QStringLiteral("call_locked_warned"), [passphrase](auto& program, auto&) {
             program.locking()->unlock(passphrase);
             DemoPatient::tellSign(program, Sign::allergy);
             program.lockIdle();
         }},
        {QStringLiteral("today_replaced"), [passphrase](auto& program, auto& patient) {
             patient.setOffline(false);
             const auto other = patient.joinedOnAnotherPhone(program.settings()->languageCode());
             patient.sends();
             program.locking()->unlock(passphrase);
             program.warning()->confirm();
             program.syncNow();
             program.openToday();
         }},
    };
}

inline QList<DiaryPage> diaryPages()
{
    return doorPages() + coursePages();
}

}  // namespace ebbline::screens
