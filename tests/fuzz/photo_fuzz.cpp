// What a phone sends of a photograph: its manifest, and the picture once it is opened. The first byte picks which.

#include "tests/fuzz/fuzz_target.h"

#include "core/photos/jpeg_scan.h"
#include "core/photos/sealed_photo.h"

using namespace ebbline;

void fuzz::tryInput(bytes::View input)
{
    if (input.empty())
        return;
    const bytes::View rest = input.subspan(1);
    if (input.front() % 2 == 0) {
        const auto manifest = photos::decodeManifest(rest);
        if (!manifest)
            return;
        mustHold(photos::check(*manifest).has_value(), "what is read keeps its bounds");
        mustHold(std::ranges::equal(photos::encode(*manifest), rest), "a manifest has one form only");
        const auto shape = photos::Shape::of(manifest->size);
        mustHold(shape && shape->chunks() == manifest->chunkHashes.size(), "its chunks fit its size");
        const std::vector<bytes::Bytes> none(shape->chunks());
        mustHold(!photos::open(*manifest, none), "nothing opens from nothing");
        return;
    }
    if (const auto facts = photos::scanJpeg(rest)) {
        mustHold(facts->width <= photos::longestSide && facts->height <= photos::longestSide, "sides keep their bounds");
        mustHold(rest.size() <= photos::maximumJpeg, "bytes keep their bounds");
        const auto sealed = photos::seal(rest);
        mustHold(sealed.has_value(), "what passes the scan is sealed");
        const auto opened = photos::open(sealed->manifest, sealed->chunks);
        mustHold(opened && std::ranges::equal(*opened, rest), "and opens as it was");
    }
}
