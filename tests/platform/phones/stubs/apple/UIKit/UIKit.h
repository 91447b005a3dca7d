// Declarations from the public reference of the platform, only of what the bridges call; no behaviour.
#pragma once
#import <Foundation/Foundation.h>

struct CGRect {
    double x, y, width, height;
};
typedef NS_OPTIONS(NSUInteger, UIViewAutoresizing) {
    UIViewAutoresizingFlexibleWidth = 1UL << 1,
    UIViewAutoresizingFlexibleHeight = 1UL << 4,
};

@interface UIColor : NSObject
@property (class, readonly) UIColor* systemBackgroundColor;
@end
@interface UIView : NSObject
@property (readonly) CGRect bounds;
@property (copy) UIColor* backgroundColor;
@property UIViewAutoresizing autoresizingMask;
@property BOOL accessibilityViewIsModal;
- (instancetype)initWithFrame:(CGRect)frame;
- (void)addSubview:(UIView*)view;
- (void)removeFromSuperview;
@end
@interface UIWindow : UIView
@end
@interface UIScene : NSObject
@end
@interface UIWindowScene : UIScene
@property (readonly) NSArray<UIWindow*>* windows;
@end
enum UIApplicationState : NSInteger { UIApplicationStateActive, UIApplicationStateInactive, UIApplicationStateBackground };
@interface UIApplication : NSObject
@property (class, readonly) UIApplication* sharedApplication;
@property (readonly) UIApplicationState applicationState;
@property (readonly) NSSet<UIScene*>* connectedScenes;
- (void)openURL:(NSURL*)url options:(NSDictionary<NSString*, id>*)options completionHandler:(void (^)(BOOL success))completion;
@end
extern NSString* const UIApplicationOpenSettingsURLString;
extern NSString* const UIApplicationDidBecomeActiveNotification;
extern NSString* const UIApplicationWillResignActiveNotification;
extern NSString* const UIApplicationSignificantTimeChangeNotification;
