#include "platform/device/notices.h"

namespace ebbline::device {

std::unique_ptr<notifications::Bells> openNotices(const clock::Clock&)
{
    return nullptr;
}

}  // namespace ebbline::device
