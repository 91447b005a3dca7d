#include "core/sync/packed.h"

#include "core/sync/messages.h"

#include <zstd.h>

#include <algorithm>
#include <array>
#include <memory>

namespace ebbline::sync {

namespace {

constexpr std::array<std::uint8_t, 4> frameBegins{0x28, 0xb5, 0x2f, 0xfd};

bytes::Bytes unpackedFrom(ZSTD_DCtx* context, bytes::View frame)
{
    ZSTD_DCtx_reset(context, ZSTD_reset_session_only);
    bytes::Bytes plain(maximumUnpacked);
    ZSTD_inBuffer in{frame.data(), frame.size(), 0};
    ZSTD_outBuffer out{plain.data(), plain.size(), 0};
    for (;;) {
        const std::size_t before = in.pos + out.pos;
        const std::size_t left = ZSTD_decompressStream(context, &out, &in);
        if (ZSTD_isError(left) != 0U || left == 0 || in.pos + out.pos == before)
            break;
    }
    plain.resize(out.pos);
    return plain;
}

}  // namespace

std::vector<bytes::Bytes> unpackedWithin(bytes::View bytes)
{
    const std::unique_ptr<ZSTD_DCtx, decltype(&ZSTD_freeDCtx)> context(ZSTD_createDCtx(), &ZSTD_freeDCtx);
    std::vector<bytes::Bytes> found;
    auto from = bytes.begin();
    while (context && (from = std::search(from, bytes.end(), frameBegins.begin(), frameBegins.end())) != bytes.end()) {
        bytes::Bytes plain = unpackedFrom(context.get(), bytes.subspan(static_cast<std::size_t>(from - bytes.begin())));
        if (!plain.empty())
            found.push_back(std::move(plain));
        ++from;
    }
    return found;
}

}  // namespace ebbline::sync
