// Devices that a clinic says are over.

#include "core/mailbox/call.h"
#include "core/mailbox/ending.h"

namespace ebbline::mailbox {

/// root key 32 | each: an ending with length. A device that is unknown, or of another clinic, is passed over in silence:
/// the answer says nothing about it.
Response Service::endDevices(Call& call, const Device& desk)
{
    bytes::Reader reader(call.request.body);
    crypto::SigningPublicKey root;
    root.value = reader.array<32>();
    std::vector<bytes::View> sealed;
    while (reader.ok() && reader.left() > 0 && sealed.size() < mostEndings)
        sealed.push_back(reader.block(endingSize));
    if (!reader.atEnd() || sealed.empty())
        return answer(400);
    const Result<std::int64_t> clinic = m_store.clinicOf(root);
    if (!clinic && clinic.error().reason != Reason::notFound)
        return answerFor(clinic.error());
    if (!clinic || *clinic != desk.clinic)
        return refuse(call, 401, "another clinic's root");
    // All of them hold, or none is heard.
    std::vector<DeviceEnded> endings;
    for (const bytes::View each : sealed) {
        const auto ended = openEnding(each, root);
        if (!ended) {
            call.refused = "ending";
            return answerFor(ended.error());
        }
        endings.push_back(*ended);
    }
    for (const DeviceEnded& ended : endings) {
        const Result<Device> device = m_store.device(ended.device);
        if (!device && device.error().reason != Reason::notFound)
            return answerFor(device.error());
        if (!device || device->revoked || device->clinic != desk.clinic)
            continue;
        if (const Done revoked = m_store.revokeDevice(ended.device); !revoked)
            return answerFor(revoked);
    }
    return answer(200);
}

}  // namespace ebbline::mailbox
