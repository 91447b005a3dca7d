#pragma once
/// \file
/// The append-only operations of all devices; everything shown is folded from them.

#include "core/clock/hybrid_clock.h"
#include "core/envelope/envelope.h"
#include "core/records/bodies.h"

namespace ebbline::journal {

/// Names an operation for ever: its device, and that device's running number.
struct OperationId {
    envelope::DeviceId device;
    std::uint64_t number = 0;  ///< from 1, without gaps but where a vault was restored from a backup
    auto operator<=>(const OperationId&) const = default;
};

/// Who may receive an operation.
enum class Audience : std::uint8_t { clinic = 1, patientAndClinic = 2 };

struct Operation {
    OperationId id;
    clock::HybridTime stamp;
    clock::Moment entered;                   ///< the writer's wall clock, as shown
    std::uint16_t kind = 0;                  ///< records::Kind, or a newer one
    Audience audience = Audience::clinic;
    recovery::CourseId course;               ///< null for what belongs to no course
    std::optional<OperationId> supersedes;   ///< a correction: both stay, the newest shows
    bytes::Bytes body;                       ///< records::encode, or unknown bytes

    bool operator==(const Operation&) const = default;
};

/// Canonical bytes of one operation (docs/formats/operations.md).
bytes::Bytes encode(const Operation& operation);
/// Bounded: never trusts a length. \returns Reason::malformed, Reason::tooLarge.
Result<Operation> decode(bytes::View input);

/// Order of the fold: stamp, then device, then number. Total, and the same on every device.
bool before(const Operation& a, const Operation& b);

/// Of two operations with one name, which no honest device writes, the same one counts everywhere: the
/// earlier, and of two with one stamp the one whose bytes come first. True if it is `fresh`.
bool replaces(const Operation& fresh, const Operation& known);

}  // namespace ebbline::journal
