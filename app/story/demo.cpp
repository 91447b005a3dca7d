#include "app/story/demo.h"

#include "app/story/stage.h"
#include "app/story/story.h"

#include <QDir>
#include <QFile>

namespace ebbline::story {

Done seedDemo(const QString& out, const QString& hubProgram)
{
    const clock::SystemClock clock;
    if (const Done played = playStory({out, hubProgram, false, clock.now()}); !played)
        return played;
    QFile passphrase(out + QStringLiteral("/passphrase.txt"));
    const QByteArray words = Stage::passphrase;
    if (!passphrase.open(QIODevice::WriteOnly) || passphrase.write(words + '\n') < 0)
        return fail(Reason::storageFailed, "demo: the passphrase cannot be written");
    if (!QFile::copy(out + QStringLiteral("/work/hub/port"), out + QStringLiteral("/hub.port")))
        return fail(Reason::storageFailed, "demo: the port cannot be written");
    return {};
}

}  // namespace ebbline::story
