#include "core/crypto/core_dumps.h"

#include <sys/resource.h>

namespace ebbline::crypto {

bool refuseCoreDumps()
{
    // The hard limit as well: nothing that runs in this program raises it again.
    const rlimit none{0, 0};
    return ::setrlimit(RLIMIT_CORE, &none) == 0;
}

}  // namespace ebbline::crypto
