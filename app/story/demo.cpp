#include "app/story/demo.h"

#include "app/story/stage.h"
#include "app/story/story.h"

#include <QFile>

namespace ebbline::story {

Done seedDemo(const QString& out, const QString& hubProgram)
{
    const clock::SystemClock clock;
    const auto held = playStory({out, hubProgram, false, clock.now()});
    if (!held)
        return fail(held.error());
    if (const Done written = writeWhole(out + QStringLiteral("/passphrase.txt"), QByteArray(Stage::passphrase) + '\n'); !written)
        return written;
    QFile port(out + QStringLiteral("/work/hub/port"));
    if (!port.open(QIODevice::ReadOnly))
        return fail(Reason::storageFailed, "demo: the hub's port cannot be read");
    return writeWhole(out + QStringLiteral("/hub.port"), port.readAll());
}

}  // namespace ebbline::story
