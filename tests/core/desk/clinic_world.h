#pragma once
/// \file
/// A clinic, a phone and a hub in one process, on a clock that stands still until told.

#include "core/bytes/reader.h"
#include "core/desk/desk.h"
#include "core/desk/inviting.h"
#include "core/mailbox/embedded_store.h"
#include "core/mailbox/service.h"
#include "core/patient/diary.h"
#include "core/patient/joining.h"
#include "tests/core/records/sample_bodies.h"
#include "tests/core/vault/folder.h"

#include <catch2/catch_test_macros.hpp>

#include <functional>

namespace ebbline::test {

inline constexpr crypto::StretchCost cheap{1, 8 * 1024};
inline const bytes::View passphrase = bytes::viewOf("three calm herons wade");

/// Hands requests straight to the hub's rules; may lose, change or refuse them.
class LoopbackCourier final : public sync::Courier {
public:
    LoopbackCourier(mailbox::Service& service, const clock::Clock& clock) : m_service(service), m_clock(clock) {}

    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        ++requests;
        received.insert(received.end(), request.body.begin(), request.body.end());
        if (offline)
            return answer(fail(Reason::unreachable, "no network"));
        if (swallow && swallow(request))
            return answer(mailbox::Response{200, {}, 0, {}});
        if (const int status = refuse ? refuse(request) : 0; status != 0)
            return answer(mailbox::Response{status, {}, 0, {}});
        mailbox::Response response = m_service.handle(request, "127.0.0.1", m_clock.now());
        if (tamper)
            tamper(request, response);
        answer(response);
    }

    bool offline = false;
    int requests = 0;
    bytes::Bytes received;  ///< everything that the hub was given
    std::function<void(const mailbox::Request&, mailbox::Response&)> tamper;
    std::function<bool(const mailbox::Request&)> swallow;  ///< the hub says that it took these, and keeps nothing
    std::function<int(const mailbox::Request&)> refuse;  ///< the status with which the hub turns one down; 0: it does not

private:
    mailbox::Service& m_service;
    const clock::Clock& m_clock;
};

struct ClinicWorld {
    Folder folder;
    clock::ManualClock clock{momentAt("2027-03-01T09:00:00+01:00").at};
    aftercare::Zone zone = *aftercare::Zone::find("Europe/Berlin");
    std::unique_ptr<mailbox::MailStore> store = std::move(*mailbox::openEmbeddedStore(folder.path() / "hub"));
    mailbox::Service service{*store, limits()};
    LoopbackCourier courier{service, clock};
    desk::Desk desk = *desk::Desk::create(folder.path() / "desk", passphrase, cheap, clock, zone);
    std::vector<std::unique_ptr<patient::Diary>> phones;

    ClinicWorld()
    {
        REQUIRE(store->addClinic(desk.vault().clinicRoot().publicKey(), "Mole"));
        REQUIRE(desk.setHub("hub.example", true, {}));
        desk.setPerson("Dr. Ada Lund");
        REQUIRE(desk.describeClinic(
            {{"Practice on the Mole", "+00 555 0110", "+00 555 0119", "112"}, "Europe/Berlin", {"Dr. Ada Lund"}}));
    }

    static mailbox::Limits limits()
    {
        mailbox::Limits limits;
        limits.enrolPerAddress = {100, 1};
        return limits;
    }

    recovery::CourseId treat(const char* name = "Ines Varga")
    {
        const auto patient = desk.registerPatient(name, "+00 555 0101", "en");
        REQUIRE(patient);
        auto treatment = desk.blankTreatment(*patient);
        treatment.placements = sampleTreatment().placements;
        treatment.weightKg = 62;
        REQUIRE(desk.recordTreatment(treatment));
        return treatment.course;
    }

    clock::Moment now() const { return zone.moment(clock.now()); }
    clock::Moment inDays(int days) const { return zone.moment(clock.now() + std::chrono::hours(24 * days)); }

    patient::Diary& newPhone()
    {
        auto diary = patient::Diary::create(folder.path() / ("phone" + std::to_string(phones.size())), passphrase, cheap,
                                            clock, zone);
        REQUIRE(diary);
        phones.push_back(std::make_unique<patient::Diary>(std::move(*diary)));
        return *phones.back();
    }

    /// Pairs a fresh phone with a course and brings the course over.
    patient::Diary& join(const recovery::CourseId& course, bool typed = false)
    {
        patient::Diary& phone = newPhone();
        desk::Inviting inviting(desk, clock, course, triggers::defaultProtocol(), inDays(21));
        inviting.start(courier, [] {});
        REQUIRE(inviting.step() == desk::Inviting::Step::shown);
        patient::Joining joining(phone, clock);
        const Done started = typed ? joining.start(inviting.typedCode(), "hub.example") : joining.start(inviting.qrText());
        REQUIRE(started);
        for (int i = 0; i < 4; ++i) {
            joining.poll(courier, [] {});
            inviting.poll(courier, [] {});
        }
        REQUIRE(joining.step() == patient::Joining::Step::compare);
        REQUIRE(inviting.step() == desk::Inviting::Step::compare);
        CHECK(joining.confirmationNumber() == inviting.confirmationNumber());
        inviting.confirm(courier, [] {});
        joining.poll(courier, [] {});
        REQUIRE(joining.step() == patient::Joining::Step::linked);
        CHECK(inviting.step() == desk::Inviting::Step::linked);
        syncDesk();
        syncPhone(phone);
        REQUIRE(phone.joined());
        return phone;
    }

    sync::Report syncDesk()
    {
        sync::Report report;
        desk.syncNow(courier, [&](const sync::Report& done) { report = done; });
        return report;
    }

    sync::Report syncPhone(patient::Diary& phone)
    {
        sync::Report report;
        phone.syncNow(courier, [&](const sync::Report& done) { report = done; });
        return report;
    }

    recovery::Entry entryOf(patient::Diary& phone, int swellingLeft, int swellingRight)
    {
        auto entry = phone.blankEntry();
        entry.scores = {{{recovery::Symptom::swelling, recovery::Side::left}, *recovery::Score::of(swellingLeft)},
                        {{recovery::Symptom::swelling, recovery::Side::right}, *recovery::Score::of(swellingRight)}};
        return entry;
    }

    /// Thirty hours after the treatment she tells of thick fluid, and the desk has heard of it.
    void tellOfFluid(patient::Diary& phone)
    {
        clock.advance(std::chrono::hours(30));
        auto entry = entryOf(phone, 3, 3);
        entry.present = {recovery::Sign::thickFluid};
        REQUIRE(phone.record(entry));
        syncPhone(phone);
        syncDesk();
    }
};

}  // namespace ebbline::test
