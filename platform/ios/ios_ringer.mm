#include "platform/ios/ios_ringer.h"

#include "platform/ios/bell_requests.h"

#import <UIKit/UIKit.h>
#import <UserNotifications/UserNotifications.h>

#include <algorithm>

using ebbline::notifications::RingerEvent;

/// Hears the notification centre from the first moment of the program on, before anybody listens: a touch
/// that starts the program is told at once. What is told before somebody listens waits.
@interface EBBellDelegate : NSObject <UNUserNotificationCenterDelegate>
+ (EBBellDelegate*)shared;
- (void)listen:(void (^)(RingerEvent))hear;
- (void)tell:(RingerEvent)event;
@end

@implementation EBBellDelegate {
    void (^_hear)(RingerEvent);
    BOOL _openWaits;
}

+ (EBBellDelegate*)shared
{
    static EBBellDelegate* one = [[EBBellDelegate alloc] init];
    return one;
}

/// The delegate has to be there before the program has finished launching (UNUserNotificationCenterDelegate).
+ (void)load
{
    [UNUserNotificationCenter currentNotificationCenter].delegate = [EBBellDelegate shared];
}

- (void)listen:(void (^)(RingerEvent))hear
{
    _hear = [hear copy];
    if (_hear != nil && _openWaits) {
        _openWaits = NO;
        [self tell:RingerEvent::openTouched];
    }
}

/// From any thread; heard on the main one, which is the program's.
- (void)tell:(RingerEvent)event
{
    dispatch_async(dispatch_get_main_queue(), ^{
        if (self->_hear != nil)
            self->_hear(event);
        else if (event == RingerEvent::openTouched)
            self->_openWaits = YES;
    });
}

/// The program is in sight: the bell is shown all the same.
- (void)userNotificationCenter:(UNUserNotificationCenter*)center
       willPresentNotification:(UNNotification*)notification
         withCompletionHandler:(void (^)(UNNotificationPresentationOptions))done
{
    (void)center;
    (void)notification;
    [self tell:RingerEvent::rang];
    done(UNNotificationPresentationOptionBanner | UNNotificationPresentationOptionList | UNNotificationPresentationOptionSound);
}

- (void)userNotificationCenter:(UNUserNotificationCenter*)center
    didReceiveNotificationResponse:(UNNotificationResponse*)response
             withCompletionHandler:(void (^)(void))done
{
    (void)center;
    if ([response.actionIdentifier isEqualToString:ebbline::ios::laterAct()]) {
        // The open diary knows what is due and moves each; otherwise the bell itself moves, with its own
        // words, because the files of the program may be sealed while the phone is locked.
        if ([UIApplication sharedApplication].applicationState == UIApplicationStateActive && _hear != nil)
            [self tell:RingerEvent::laterTouched];
        else
            (void)ebbline::ios::add(ebbline::ios::putOff([NSDate date]), response.notification.request.content);
    } else if (![response.actionIdentifier isEqualToString:UNNotificationDismissActionIdentifier]) {
        [self tell:RingerEvent::openTouched];
    }
    done();
}

/// The person comes back, perhaps from the settings.
- (void)cameBack:(NSNotification*)notification
{
    (void)notification;
    [self tell:RingerEvent::leaveChanged];
}

- (void)zoneChanged:(NSNotification*)notification
{
    (void)notification;
    [NSTimeZone resetSystemTimeZone];  // it is remembered otherwise
    [self tell:RingerEvent::zoneChanged];
}

@end

namespace ebbline::ios {

namespace {

using notifications::SystemLeave;

/// "the system keeps the soonest-firing 64 notifications [...] and discards the rest": Apple, class reference
/// of UILocalNotification. That of UNUserNotificationCenter says only that the system limits the number, and
/// developers report that it keeps the 64 set last: so never more than that are set, and what is really
/// pending is read back.
constexpr std::size_t mostPending = 64;

class IosRinger final : public notifications::Ringer {
public:
    IosRinger()
    {
        NSNotificationCenter* centre = [NSNotificationCenter defaultCenter];
        EBBellDelegate* delegate = [EBBellDelegate shared];
        [centre addObserver:delegate selector:@selector(cameBack:) name:UIApplicationDidBecomeActiveNotification object:nil];
        [centre addObserver:delegate selector:@selector(zoneChanged:) name:NSSystemTimeZoneDidChangeNotification object:nil];
        [centre addObserver:delegate selector:@selector(zoneChanged:) name:UIApplicationSignificantTimeChangeNotification object:nil];
    }
    ~IosRinger() override
    {
        [[EBBellDelegate shared] listen:nil];
        [[NSNotificationCenter defaultCenter] removeObserver:[EBBellDelegate shared]];
    }

    void listen(std::function<void(RingerEvent)> hear) override
    {
        [[EBBellDelegate shared] listen:^(RingerEvent event) {
            hear(event);
        }];
    }

    SystemLeave leave() const override
    {
        UNNotificationSettings* settings = currentSettings();
        if (settings == nil)
            return SystemLeave::denied;  // no answer: nothing is promised
        switch (settings.authorizationStatus) {
        case UNAuthorizationStatusNotDetermined: return SystemLeave::notAsked;
        case UNAuthorizationStatusDenied: return SystemLeave::denied;
        default: break;
        }
        const bool seen = settings.alertSetting == UNNotificationSettingEnabled
                          || settings.lockScreenSetting == UNNotificationSettingEnabled
                          || settings.notificationCenterSetting == UNNotificationSettingEnabled;
        return seen ? SystemLeave::granted : SystemLeave::denied;
    }

    void ask() override
    {
        [[UNUserNotificationCenter currentNotificationCenter]
            requestAuthorizationWithOptions:UNAuthorizationOptionAlert | UNAuthorizationOptionSound
                          completionHandler:^(BOOL granted, NSError* error) {
                              (void)granted;
                              (void)error;
                              [[EBBellDelegate shared] tell:RingerEvent::leaveChanged];
                          }];
    }

    void openSettings() override
    {
        NSURL* page = [NSURL URLWithString:UIApplicationOpenSettingsURLString];
        [[UIApplication sharedApplication] openURL:page options:@{} completionHandler:nil];
    }

    /// iOS rings at the moment it was given; there is no leave for it to ask.
    bool isPunctual() const override { return true; }
    void openPunctualSettings() override {}

    std::size_t capacity() const override { return mostPending; }

    Result<std::vector<aftercare::Booking>> pending() const override
    {
        NSArray<UNNotificationRequest*>* requests = pendingRequests();
        if (requests == nil)
            return fail(Reason::storageFailed, "bells: the phone did not say what it holds");
        std::vector<aftercare::Booking> bookings;
        for (UNNotificationRequest* request in requests)
            if (const auto booking = bookingOf(request.identifier))
                bookings.push_back(*booking);
        std::sort(bookings.begin(), bookings.end());
        return bookings;
    }

    Done book(const aftercare::Booking& booking) override
    {
        if (!add(booking, contentOf(m_words, booking.asksToOpen)))
            return fail(Reason::refused, "bells: the phone did not take it");
        return {};
    }

    Done cancel(const aftercare::Booking& booking) override
    {
        [[UNUserNotificationCenter currentNotificationCenter]
            removePendingNotificationRequestsWithIdentifiers:@[ identifierOf(booking) ]];
        return {};
    }

    /// A bell carries its words from the day it was booked: other words are put into those that wait.
    void setWords(const notifications::BellWords& words) override
    {
        const bool same = words.title == m_words.title && words.text == m_words.text && words.asksToOpen == m_words.asksToOpen;
        m_words = words;
        setActs(words);
        if (same)
            return;
        if (const auto held = pending())
            for (const aftercare::Booking& booking : *held)
                (void)add(booking, contentOf(words, booking.asksToOpen));
    }

    bool ringNow() override { return showNow(contentOf(m_words, false)); }

private:
    notifications::BellWords m_words;
};

}  // namespace

std::unique_ptr<notifications::Ringer> makeRinger()
{
    return std::make_unique<IosRinger>();
}

}  // namespace ebbline::ios
