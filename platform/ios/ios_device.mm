#include "platform/device/device.h"
#include "platform/ios/cover.h"
#include "platform/ios/ios_ringer.h"
#include "platform/ios/keychain_keeper.h"
#include "platform/ios/protection.h"
#include "platform/notifications/ringer_bells.h"

#include <QFileInfo>

#include <cstdio>

namespace ebbline::device {

Device openDevice(const clock::Clock&, const QString& folder)
{
    ios::installCover();
    // Not a reason to keep a patient from her diary: everything in it is sealed by the program itself.
    if (!ios::protectFolder(QFileInfo(folder).absolutePath().toStdString()))
        std::fprintf(stderr, "ebbline-diary: the folder keeps the system's own protection only\n");
    return {std::make_unique<notifications::RingerBells>(ios::makeRinger()), ios::makeKeeper()};
}

}  // namespace ebbline::device
