// A course as a bundle: a file that somebody hands over.

#include "tests/fuzz/fuzz_target.h"

#include "core/exchange/fhir_bundle.h"

void ebbline::fuzz::tryInput(bytes::View input)
{
    const auto record = exchange::readBundle({reinterpret_cast<const char*>(input.data()), input.size()});
    if (!record) {
        mustHold(!record.error().detail.empty(), "a refusal says why");
        return;
    }
    const exchange::BundleOptions how{.patientName = "", .written = record->treated, .program = "fuzz"};
    const auto again = exchange::readBundle(exchange::writeBundle(*record, {}, how));
    mustHold(again.has_value() && *again == *record, "a course survives writing and reading");
}
