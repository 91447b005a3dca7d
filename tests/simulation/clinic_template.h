#pragma once
/// \file
/// A clinic with paired phones, made once and copied for every run: one desk, one hub, one course a phone.

#include "core/desk/desk.h"
#include "core/mailbox/embedded_store.h"
#include "core/mailbox/service.h"
#include "core/patient/diary.h"

#include <filesystem>

namespace ebbline::simulation {

inline constexpr crypto::StretchCost cheap{1, 8 * 1024};
inline const bytes::View passphrase = bytes::viewOf("three calm herons wade");

/// Stops the program with a sentence: what a simulation stands on must hold.
void must(bool holds, const std::string& what);

aftercare::Zone zone();

/// Generous, so that a run is about sync and not about rates.
mailbox::Limits limits();

/// Hands requests straight to a hub.
class DirectCourier final : public sync::Courier {
public:
    DirectCourier(mailbox::Service& service, const clock::Clock& clock) : m_service(service), m_clock(clock) {}
    void send(const mailbox::Request& request, std::function<void(Result<mailbox::Response>)> answer) override
    {
        answer(m_service.handle(request, "127.0.0.1", m_clock.now()));
    }

private:
    mailbox::Service& m_service;
    const clock::Clock& m_clock;
};

struct ClinicTemplate {
    struct Phone {
        std::string folder;
        recovery::CourseId course;
        envelope::MailboxId mailbox;
    };
    std::filesystem::path home;  ///< with the folders hub, desk, and one for each phone
    clock::Instant ends;         ///< when the last thing in it happened
    std::vector<Phone> phones;

    /// `keysAge`: how long the programs were set up before the first treatment. \pre the folder is empty
    static ClinicTemplate make(const std::filesystem::path& home, std::size_t phones, std::chrono::hours keysAge = std::chrono::hours{0});
};

}  // namespace ebbline::simulation
