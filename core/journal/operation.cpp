#include "core/journal/operation.h"

#include "core/bytes/reader.h"

#include <tuple>

namespace ebbline::journal {

namespace {

constexpr std::uint8_t version = 1;
constexpr std::uint8_t hasSupersedes = 1;
constexpr std::size_t maximumZone = 64;

}  // namespace

bytes::Bytes encode(const Operation& operation)
{
    bytes::Writer out;
    out.u8(version).u8(operation.supersedes ? hasSupersedes : 0);
    out.raw(operation.id.device.view()).u64(operation.id.number).u64(operation.stamp.bits);
    out.u64(static_cast<std::uint64_t>(operation.entered.at.time_since_epoch().count()));
    out.u16(static_cast<std::uint16_t>(operation.entered.offset.count()));
    out.block(bytes::viewOf(operation.entered.zone));
    out.u16(operation.kind).u8(static_cast<std::uint8_t>(operation.audience)).raw(operation.course.view());
    if (operation.supersedes)
        out.raw(operation.supersedes->device.view()).u64(operation.supersedes->number);
    out.block(operation.body);
    return std::move(out).bytes();
}

Result<Operation> decode(bytes::View input)
{
    bytes::Reader reader(input);
    if (reader.u8() != version)
        return fail(Reason::malformed, "operation: unknown version");
    const std::uint8_t flags = reader.u8();
    Operation operation;
    operation.id.device = reader.id<envelope::DeviceTag>();
    operation.id.number = reader.u64();
    operation.stamp.bits = reader.u64();
    operation.entered.at = clock::Instant{std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())}};
    operation.entered.offset = std::chrono::minutes{static_cast<std::int16_t>(reader.u16())};
    const bytes::View zone = reader.block(maximumZone);
    operation.entered.zone.assign(zone.begin(), zone.end());
    operation.kind = reader.u16();
    const std::uint8_t audience = reader.u8();
    operation.course = reader.id<recovery::CourseTag>();
    if (flags == hasSupersedes) {
        OperationId old;
        old.device = reader.id<envelope::DeviceTag>();
        old.number = reader.u64();
        operation.supersedes = old;
    }
    const bytes::View body = reader.block(records::maximumBody);
    operation.body.assign(body.begin(), body.end());
    if (!reader.atEnd() || flags > hasSupersedes || audience < 1 || audience > 2 || operation.id.number == 0
        || operation.kind == 0)
        return fail(Reason::malformed, "operation: lengths or fields do not add up");
    operation.audience = static_cast<Audience>(audience);
    return operation;
}

bool before(const Operation& a, const Operation& b)
{
    return std::tie(a.stamp, a.id.device, a.id.number) < std::tie(b.stamp, b.id.device, b.id.number);
}

bool replaces(const Operation& fresh, const Operation& known)
{
    if (fresh.stamp != known.stamp)
        return fresh.stamp < known.stamp;
    return encode(fresh) < encode(known);
}

}  // namespace ebbline::journal
