// Declarations from the public reference of the platform, only of what the bridges call; no behaviour.
#pragma once
#import <Foundation/Foundation.h>

@class UNNotification, UNNotificationResponse, UNUserNotificationCenter;

typedef NS_OPTIONS(NSUInteger, UNAuthorizationOptions) {
    UNAuthorizationOptionBadge = 1UL << 0,
    UNAuthorizationOptionSound = 1UL << 1,
    UNAuthorizationOptionAlert = 1UL << 2,
};
typedef NS_OPTIONS(NSUInteger, UNNotificationPresentationOptions) {
    UNNotificationPresentationOptionBadge = 1UL << 0,
    UNNotificationPresentationOptionSound = 1UL << 1,
    UNNotificationPresentationOptionList = 1UL << 3,
    UNNotificationPresentationOptionBanner = 1UL << 4,
};
enum UNAuthorizationStatus : NSInteger {
    UNAuthorizationStatusNotDetermined = 0,
    UNAuthorizationStatusDenied,
    UNAuthorizationStatusAuthorized,
    UNAuthorizationStatusProvisional,
    UNAuthorizationStatusEphemeral,
};
enum UNNotificationSetting : NSInteger {
    UNNotificationSettingNotSupported = 0,
    UNNotificationSettingDisabled,
    UNNotificationSettingEnabled,
};
typedef NS_OPTIONS(NSUInteger, UNNotificationActionOptions) {
    UNNotificationActionOptionNone = 0,
    UNNotificationActionOptionForeground = 1UL << 2,
};
typedef NS_OPTIONS(NSUInteger, UNNotificationCategoryOptions) {
    UNNotificationCategoryOptionNone = 0,
};
extern NSString* const UNNotificationDefaultActionIdentifier;
extern NSString* const UNNotificationDismissActionIdentifier;

@interface UNNotificationSettings : NSObject
@property (readonly) UNAuthorizationStatus authorizationStatus;
@property (readonly) UNNotificationSetting alertSetting;
@property (readonly) UNNotificationSetting lockScreenSetting;
@property (readonly) UNNotificationSetting notificationCenterSetting;
@end
@interface UNNotificationSound : NSObject
@property (class, readonly) UNNotificationSound* defaultSound;
@end
@interface UNNotificationContent : NSObject
@end
@interface UNMutableNotificationContent : UNNotificationContent
@property (copy) NSString* title;
@property (copy) NSString* body;
@property (copy) NSString* categoryIdentifier;
@property (copy) UNNotificationSound* sound;
@end
@interface UNNotificationTrigger : NSObject
@end
@interface UNCalendarNotificationTrigger : UNNotificationTrigger
+ (instancetype)triggerWithDateMatchingComponents:(NSDateComponents*)components repeats:(BOOL)repeats;
@end
@interface UNNotificationRequest : NSObject
@property (readonly, copy) NSString* identifier;
@property (readonly, copy) UNNotificationContent* content;
+ (instancetype)requestWithIdentifier:(NSString*)identifier content:(UNNotificationContent*)content trigger:(UNNotificationTrigger*)trigger;
@end
@interface UNNotification : NSObject
@property (readonly, copy) UNNotificationRequest* request;
@end
@interface UNNotificationResponse : NSObject
@property (readonly, copy) NSString* actionIdentifier;
@property (readonly, copy) UNNotification* notification;
@end
@interface UNNotificationAction : NSObject
+ (instancetype)actionWithIdentifier:(NSString*)identifier title:(NSString*)title options:(UNNotificationActionOptions)options;
@end
@interface UNNotificationCategory : NSObject
+ (instancetype)categoryWithIdentifier:(NSString*)identifier
                               actions:(NSArray<UNNotificationAction*>*)actions
                     intentIdentifiers:(NSArray<NSString*>*)intents
         hiddenPreviewsBodyPlaceholder:(NSString*)placeholder
                               options:(UNNotificationCategoryOptions)options;
@end

@protocol UNUserNotificationCenterDelegate <NSObject>
@optional
- (void)userNotificationCenter:(UNUserNotificationCenter*)center
       willPresentNotification:(UNNotification*)notification
         withCompletionHandler:(void (^)(UNNotificationPresentationOptions options))completion;
- (void)userNotificationCenter:(UNUserNotificationCenter*)center
    didReceiveNotificationResponse:(UNNotificationResponse*)response
             withCompletionHandler:(void (^)(void))completion;
@end

@interface UNUserNotificationCenter : NSObject
@property (weak) id<UNUserNotificationCenterDelegate> delegate;
+ (UNUserNotificationCenter*)currentNotificationCenter;
- (void)requestAuthorizationWithOptions:(UNAuthorizationOptions)options completionHandler:(void (^)(BOOL granted, NSError* error))completion;
- (void)setNotificationCategories:(NSSet<UNNotificationCategory*>*)categories;
- (void)getNotificationSettingsWithCompletionHandler:(void (^)(UNNotificationSettings* settings))completion;
- (void)addNotificationRequest:(UNNotificationRequest*)request withCompletionHandler:(void (^)(NSError* error))completion;
- (void)getPendingNotificationRequestsWithCompletionHandler:(void (^)(NSArray<UNNotificationRequest*>* requests))completion;
- (void)removePendingNotificationRequestsWithIdentifiers:(NSArray<NSString*>*)identifiers;
@end
