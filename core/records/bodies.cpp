#include "core/records/clinic_layouts.h"
#include "core/records/key_layouts.h"
#include "core/records/opening_layouts.h"
#include "core/records/photo_layouts.h"
#include "core/records/treatment_layouts.h"

#include <exception>

namespace ebbline::records {

namespace {

/// Of every other kind; what carries a protocol or a treatment goes by its form.
constexpr std::uint16_t bodyVersion = 1;

/// The alternatives of Body stand in the order of the kinds' numbers.
constexpr Kind kindAt(std::size_t index)
{
    return static_cast<Kind>(index + 1);
}

bool carriesProtocol(Kind kind)
{
    return kind == Kind::courseOpened || kind == Kind::protocolSigned || kind == Kind::bandLearned;
}

std::uint16_t newestVersion(Kind kind)
{
    if (kind == Kind::bandLearned)
        return broughtBandForm;
    return carriesProtocol(kind) ? newestProtocolForm : kind == Kind::treatmentRecorded ? newestTreatmentForm : bodyVersion;
}

std::uint16_t versionOf(const Body& body)
{
    if (const auto* recorded = std::get_if<TreatmentRecorded>(&body))
        return formOf(recorded->treatment);
    if (const auto* opened = std::get_if<CourseOpened>(&body))
        return formOf(opened->protocol);
    if (const auto* made = std::get_if<ProtocolSigned>(&body))
        return formOf(made->protocol);
    if (const auto* learned = std::get_if<BandLearned>(&body))
        return learned->learned.brought ? broughtBandForm : newestProtocolForm;
    return bodyVersion;
}

template <std::size_t... I>
Result<Body> decodeAs(Kind kind, BoundedInput& archive, std::index_sequence<I...>)
{
    Result<Body> result = fail(Reason::unsupported, "operation: a kind of a newer program");
    const auto attempt = [&]<std::size_t K>() {
        if (kindAt(K) != kind)
            return;
        std::variant_alternative_t<K, Body> body{};
        archive(body);
        result = Body(std::move(body));
    };
    (attempt.template operator()<I>(), ...);
    return result;
}

}  // namespace

Kind kindOf(const Body& body)
{
    return kindAt(body.index());
}

recovery::CourseId courseOf(const Body& body)
{
    return std::visit(
        []<typename T>(const T& value) {
            if constexpr (requires { value.course; })
                return value.course;
            else if constexpr (requires { value.entry.course; })
                return value.entry.course;
            else if constexpr (requires { value.treatment.course; })
                return value.treatment.course;
            else
                return recovery::CourseId{};
        },
        body);
}

bytes::Bytes encode(const Body& body)
{
    bytes::Bytes out;
    OutputBytes archive(out);
    archive(versionOf(body));
    std::visit([&](const auto& value) { archive(value); }, body);
    return out;
}

namespace {

Result<Body> decodeUnchecked(Kind kind, bytes::View input, KnownBands* known = nullptr)
{
    if (input.size() > maximumBody)
        return fail(Reason::tooLarge, "operation: its body is too large");
    try {
        BoundedInput archive(input);
        std::uint16_t version = 0;
        archive(version);
        if (version > newestVersion(kind))
            return fail(Reason::unsupported, "operation: a body of a newer program");
        if (version == 0)
            return fail(Reason::malformed, "operation: body version 0");
        archive.bodyForm = version;
        archive.knownBands = known;
        Result<Body> body = decodeAs(kind, archive,
                                     std::make_index_sequence<std::variant_size_v<Body>>());
        if (body && archive.left() != 0)
            return fail(Reason::malformed, "operation: bytes are left over");
        return body;
    } catch (const std::exception&) {
        return fail(Reason::malformed, "operation: its body cannot be read");
    }
}

}  // namespace

Result<Body> decode(Kind kind, bytes::View input, KnownBands* known)
{
    Result<Body> body = decodeUnchecked(kind, input, known);
    if (!body)
        return body;
    if (const Done checked = check(*body); !checked)
        return fail(checked.error());
    return body;
}

Result<recovery::Treatment> decodeDraft(bytes::View input)
{
    Result<Body> body = decodeUnchecked(Kind::treatmentRecorded, input);
    if (!body)
        return fail(body.error());
    return std::move(std::get<TreatmentRecorded>(*body).treatment);
}

Result<recovery::Entry> decodeEntryDraft(bytes::View input)
{
    Result<Body> body = decodeUnchecked(Kind::entryRecorded, input);
    if (!body)
        return fail(body.error());
    return std::move(std::get<EntryRecorded>(*body).entry);
}

}  // namespace ebbline::records
