#include "platform/device/notices.h"
#include "platform/notifications/desktop_bells.h"

namespace ebbline::device {

std::unique_ptr<notifications::Bells> openNotices(const clock::Clock& clock)
{
    return std::make_unique<notifications::DesktopBells>(clock, QString());
}

}  // namespace ebbline::device
