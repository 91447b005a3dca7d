#include "platform/ios/bell_requests.h"

namespace ebbline::ios {

namespace {

NSString* const prefix = @"bell-";
NSString* const category = @"bell";
NSString* const tried = @"try";

/// Long enough for a busy phone, short enough for a person who waits. Our own choice.
constexpr std::int64_t patience = 2 * static_cast<std::int64_t>(NSEC_PER_SEC);

NSString* stringOf(const QString& text)
{
    return [NSString stringWithUTF8String:text.toUtf8().constData()];
}

bool request(NSString* identifier, UNNotificationContent* content, UNNotificationTrigger* trigger)
{
    dispatch_semaphore_t answered = dispatch_semaphore_create(0);
    __block bool taken = false;
    [[UNUserNotificationCenter currentNotificationCenter]
        addNotificationRequest:[UNNotificationRequest requestWithIdentifier:identifier content:content trigger:trigger]
         withCompletionHandler:^(NSError* error) {
             taken = error == nil;
             dispatch_semaphore_signal(answered);
         }];
    return dispatch_semaphore_wait(answered, dispatch_time(DISPATCH_TIME_NOW, patience)) == 0 && taken;
}

}  // namespace

NSString* identifierOf(const aftercare::Booking& booking)
{
    return [prefix stringByAppendingString:[NSString stringWithUTF8String:aftercare::writeBookings({booking}).c_str()]];
}

std::optional<aftercare::Booking> bookingOf(NSString* identifier)
{
    if (![identifier hasPrefix:prefix])
        return std::nullopt;
    const auto read = aftercare::readBookings([identifier substringFromIndex:prefix.length].UTF8String);
    return read && read->size() == 1 ? std::optional(read->front()) : std::nullopt;
}

NSString* laterAct()
{
    return @"later";
}

aftercare::Booking putOff(NSDate* now)
{
    const std::chrono::milliseconds since1970{static_cast<std::int64_t>(now.timeIntervalSince1970 * 1000)};
    return {clock::Instant{since1970 + std::chrono::minutes(30)}, false};
}

UNNotificationContent* contentOf(const notifications::BellWords& words, bool asksToOpen)
{
    UNMutableNotificationContent* content = [[UNMutableNotificationContent alloc] init];
    content.title = stringOf(words.title);
    content.body = stringOf(asksToOpen ? words.asksToOpen : words.text);
    content.sound = [UNNotificationSound defaultSound];
    content.categoryIdentifier = category;
    return content;
}

void setActs(const notifications::BellWords& words)
{
    UNNotificationAction* open = [UNNotificationAction actionWithIdentifier:@"open"
                                                                      title:stringOf(words.open)
                                                                    options:UNNotificationActionOptionForeground];
    UNNotificationAction* later = [UNNotificationAction actionWithIdentifier:laterAct()
                                                                       title:stringOf(words.later)
                                                                     options:UNNotificationActionOptionNone];
    UNNotificationCategory* acts = [UNNotificationCategory categoryWithIdentifier:category
                                                                          actions:@[ open, later ]
                                                                intentIdentifiers:@[]
                                                    hiddenPreviewsBodyPlaceholder:stringOf(words.title)
                                                                          options:UNNotificationCategoryOptionNone];
    [[UNUserNotificationCenter currentNotificationCenter] setNotificationCategories:[NSSet setWithObject:acts]];
}

bool add(const aftercare::Booking& booking, UNNotificationContent* content)
{
    const double seconds = static_cast<double>(booking.at.time_since_epoch().count()) / 1000;
    NSCalendar* calendar = [NSCalendar calendarWithIdentifier:NSCalendarIdentifierGregorian];
    NSDateComponents* reading = [calendar components:NSCalendarUnitYear | NSCalendarUnitMonth | NSCalendarUnitDay | NSCalendarUnitHour
                                                     | NSCalendarUnitMinute | NSCalendarUnitSecond
                                            fromDate:[NSDate dateWithTimeIntervalSince1970:seconds]];
    return request(identifierOf(booking), content,
                   [UNCalendarNotificationTrigger triggerWithDateMatchingComponents:reading repeats:NO]);
}

bool showNow(UNNotificationContent* content)
{
    return request(tried, content, nil);
}

NSArray<UNNotificationRequest*>* pendingRequests()
{
    dispatch_semaphore_t answered = dispatch_semaphore_create(0);
    __block NSArray<UNNotificationRequest*>* found = nil;
    [[UNUserNotificationCenter currentNotificationCenter]
        getPendingNotificationRequestsWithCompletionHandler:^(NSArray<UNNotificationRequest*>* requests) {
            found = requests;
            dispatch_semaphore_signal(answered);
        }];
    return dispatch_semaphore_wait(answered, dispatch_time(DISPATCH_TIME_NOW, patience)) == 0 ? found : nil;
}

UNNotificationSettings* currentSettings()
{
    dispatch_semaphore_t answered = dispatch_semaphore_create(0);
    __block UNNotificationSettings* found = nil;
    [[UNUserNotificationCenter currentNotificationCenter] getNotificationSettingsWithCompletionHandler:^(UNNotificationSettings* settings) {
        found = settings;
        dispatch_semaphore_signal(answered);
    }];
    return dispatch_semaphore_wait(answered, dispatch_time(DISPATCH_TIME_NOW, patience)) == 0 ? found : nil;
}

}  // namespace ebbline::ios
