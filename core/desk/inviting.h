#pragma once
/// \file
/// Pairing from the desk's side: showing a code, and, for a new desk, reading a colleague's.

#include "core/desk/desk.h"
#include "core/sync/enrolling.h"

namespace ebbline::desk {

/// Pairing as the desk lives it: one offer for one course, or for another desk. A course that has a phone gets
/// the new one in its place: the old one is told, and the new one is sent everything that the two shared.
class Inviting {
public:
    enum class Step : std::uint8_t { idle, publishing, shown, compare, linking, linked, usedTwice, expired, failed };

    /// Of a phone that the new one replaces: it is at hand and may still say what it holds; or it is lost, and the hub is told
    /// to refuse it at once.
    enum class OldPhone : std::uint8_t { atHand, lost };
    Inviting(Desk& desk, const clock::Clock& clock, const recovery::CourseId& course,
             const triggers::Protocol& protocol, const clock::Moment& followUp, OldPhone old = OldPhone::atHand);
    /// For another desk; an owner's holds the root key as well.
    enum class NewDesk : std::uint8_t { plain, owner };
    Inviting(Desk& desk, const clock::Clock& clock, NewDesk kind);

    /// Makes the offer and gives it to the hub. For another desk it is a grave step, and for two; for a phone in another's place it is for two.
    void start(sync::Courier& courier, std::function<void()> changed);
    /// Asks the hub once.
    void poll(sync::Courier& courier, std::function<void()> changed);
    /// Both read the same number: sign the link and open the course.
    void confirm(sync::Courier& courier, std::function<void()> changed);
    /// The numbers differ, or it is called off: nothing is linked, and no answer of the hub that is still on its way changes what is said.
    void refuse();
    bool hasDiffered() const { return m_differed; }  ///< refuse() was called while the numbers were compared

    Step step() const { return m_step; }
    std::string qrText() const;
    std::string typedCode() const;
    std::string confirmationNumber() const;  ///< from compare on
    std::int64_t secondsLeft() const;
    const std::optional<Error>& problem() const { return m_problem; }
    /// The hub has not admitted this clinic: whoever runs it adds the clinic by its root key first.
    bool isClinicUnknown() const { return m_clinicUnknown; }

private:
    void failWith(const Error& error);
    bool isOver() const;
    Done mayInvite();
    void publish(std::function<void()> changed);
    void takeEnrolment(const bytes::Bytes& body, std::function<void()> changed);
    void sendNonce(std::function<void()> changed);
    void sendLink(std::function<void()> changed);
    void announceDesk(std::function<void()> changed);
    Done linkHere();
    Done linkPhone();
    Done linkDesk();
    Done replaceOldPhone();

    Desk& m_desk;
    const clock::Clock& m_clock;
    Step m_step = Step::idle;
    std::optional<Error> m_problem;
    bool m_clinicUnknown = false;
    bool m_differed = false;
    struct Inside;
    std::shared_ptr<Inside> m_inside;
};

/// A new, empty desk joins its colleagues' clinic by the code that an owner's desk shows. A patient's code is refused.
class Applying : public sync::Enrolling {
public:
    /// \pre the desk outlives it
    Applying(Desk& desk, const clock::Clock& clock);
    Applying(const Applying&) = delete;
    Applying& operator=(const Applying&) = delete;

private:
    Done takeLink(const pairing::Offer& offer, bytes::View link);

    Desk& m_desk;
};

}  // namespace ebbline::desk
