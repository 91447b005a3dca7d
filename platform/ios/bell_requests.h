#pragma once
/// \file
/// Bells as requests to the notification centre of iOS. Objective-C++: inside of platform/ios only.
///
/// A request waits for a reading of the clock, without a zone: iOS rings it at that reading wherever the
/// phone is by then, so reminders keep the wall clock also while the program does not run. Of two equal
/// readings on the night when the clocks go back, the first rings.

#include "platform/notifications/bells.h"

#import <Foundation/Foundation.h>
#import <UserNotifications/UserNotifications.h>

#include <optional>

namespace ebbline::ios {

/// The name of a request says its moment: "bell-1803891600000", with "+" if it asks to open the diary.
NSString* identifierOf(const aftercare::Booking& booking);
/// Empty for a request that is none of these.
std::optional<aftercare::Booking> bookingOf(NSString* identifier);

/// The act of the person that puts a bell off.
NSString* laterAct();
/// Half an hour from now, as in the diary itself.
aftercare::Booking putOff(NSDate* now);

UNNotificationContent* contentOf(const notifications::BellWords& words, bool asksToOpen);
/// What can be done with a bell without opening the program first.
void setActs(const notifications::BellWords& words);

// The notification centre answers on threads of its own. These wait for it, no longer than a moment.
bool add(const aftercare::Booking& booking, UNNotificationContent* content);
bool showNow(UNNotificationContent* content);
NSArray<UNNotificationRequest*>* pendingRequests();  ///< nil: no answer
UNNotificationSettings* currentSettings();           ///< nil: no answer

}  // namespace ebbline::ios
