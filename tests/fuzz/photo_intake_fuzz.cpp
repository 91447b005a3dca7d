// A picture that somebody chose from his files: whatever it is, what comes of it is a plain JPEG or nothing.

#include "tests/fuzz/fuzz_target.h"

#include "core/photos/sealed_photo.h"
#include "platform/camera/photo_intake.h"

#include <QCoreApplication>

using namespace ebbline;

void fuzz::tryInput(bytes::View input)
{
    // The readers of pictures are found through an application.
    static int argc = 1;
    static char name[] = "photo_intake_fuzz";
    static char* argv[] = {name, nullptr};
    static const QCoreApplication application(argc, argv);

    const QByteArray source(reinterpret_cast<const char*>(input.data()), static_cast<qsizetype>(input.size()));
    const auto taken = camera::photoFromBytes(source);
    if (!taken)
        return;
    const auto facts = photos::scanJpeg(*taken);
    mustHold(facts.has_value(), "what is taken in passes the check that everybody makes who receives it");
    mustHold(facts->width <= photos::longestSide && facts->height <= photos::longestSide, "its sides keep their bounds");
    mustHold(photos::seal(*taken).has_value(), "it can be sealed");
    mustHold(!camera::photoPicture(*taken, 320).isNull(), "it can be shown");
}
