#include "core/store/durable_file.h"
#include "core/vault/vault.h"

#include "core/bytes/reader.h"

namespace ebbline::vault {

namespace {

constexpr const char* infoFile = "open.info";
constexpr std::string_view mark = "EBO1";
constexpr std::size_t maximumInfo = 2048;

std::string textOf(bytes::View view)
{
    return {view.begin(), view.end()};
}

}  // namespace

Done writeOpenInfo(const std::filesystem::path& folder, const OpenInfo& info)
{
    bytes::Writer out;
    out.raw(bytes::viewOf(mark));
    for (const std::string* text : {&info.contacts.clinicName, &info.contacts.clinicPhone, &info.contacts.onCallPhone,
                                    &info.contacts.emergencyNumber, &info.treated.zone})
        out.block(bytes::viewOf(*text));
    out.u64(static_cast<std::uint64_t>(info.treated.at.time_since_epoch().count()));
    out.u16(static_cast<std::uint16_t>(info.treated.offset.count()));
    // The checksum finds damage, not forgery: whoever can write here can replace the program too.
    const auto check = crypto::hash128(out.bytes());
    return store::writeDurably(folder / infoFile, out.raw(check).bytes());
}

Result<OpenInfo> readOpenInfo(const std::filesystem::path& folder)
{
    const auto contents = store::readWhole(folder / infoFile, maximumInfo);
    if (!contents)
        return fail(contents.error());
    if (contents->size() < 16
        || !crypto::equal(crypto::hash128(bytes::View(*contents).first(contents->size() - 16)),
                          bytes::View(*contents).last(16)))
        return fail(Reason::damaged, "open info: the checksum does not hold");
    bytes::Reader reader(bytes::View(*contents).first(contents->size() - 16));
    const std::string begin = textOf(reader.take(mark.size()));
    OpenInfo info;
    for (std::string* text : {&info.contacts.clinicName, &info.contacts.clinicPhone, &info.contacts.onCallPhone,
                              &info.contacts.emergencyNumber, &info.treated.zone})
        *text = textOf(reader.block(400));
    info.treated.at = clock::Instant{std::chrono::milliseconds{static_cast<std::int64_t>(reader.u64())}};
    info.treated.offset = std::chrono::minutes{static_cast<std::int16_t>(reader.u16())};
    if (begin != mark || !reader.atEnd())
        return fail(Reason::damaged, "open info: cannot be read");
    return info;
}

}  // namespace ebbline::vault
