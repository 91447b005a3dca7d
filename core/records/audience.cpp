#include "core/records/audience.h"

namespace ebbline::records {

bool goesBetween(Kind kind)
{
    switch (kind) {
    case Kind::courseOpened:
    case Kind::entryRecorded:
    case Kind::reminderAnswered:
    case Kind::warningShown:
    case Kind::entriesOpened:
    case Kind::versionsOpened:
    case Kind::messageWritten:
    case Kind::messageRead:
    case Kind::photoTaken:
    case Kind::photoRemoved:
    case Kind::photosReceived:
    case Kind::keyAnnounced: return true;
    default: return false;
    }
}

}  // namespace ebbline::records
