#include "platform/ios/cover.h"

#import <UIKit/UIKit.h>

/// iOS takes its picture after the program went to the background (Apple, Technical Q&A QA1838). The cover
/// is there before, when the program is about to lose the person, and it is not animated.
@interface EBCover : NSObject
+ (EBCover*)shared;
@end

@implementation EBCover {
    NSMutableArray<UIView*>* _covers;
}

+ (EBCover*)shared
{
    static EBCover* one = [[EBCover alloc] init];
    return one;
}

- (instancetype)init
{
    self = [super init];
    if (self != nil)
        _covers = [NSMutableArray array];
    return self;
}

- (void)cover:(NSNotification*)notification
{
    (void)notification;
    if (_covers.count != 0)
        return;
    for (UIScene* scene in [UIApplication sharedApplication].connectedScenes) {
        if (![scene isKindOfClass:[UIWindowScene class]])
            continue;
        for (UIWindow* window in ((UIWindowScene*)scene).windows) {
            UIView* cover = [[UIView alloc] initWithFrame:window.bounds];
            cover.backgroundColor = [UIColor systemBackgroundColor];
            cover.autoresizingMask = UIViewAutoresizingFlexibleWidth | UIViewAutoresizingFlexibleHeight;
            cover.accessibilityViewIsModal = YES;
            [window addSubview:cover];
            [_covers addObject:cover];
        }
    }
}

- (void)uncover:(NSNotification*)notification
{
    (void)notification;
    for (UIView* cover in _covers)
        [cover removeFromSuperview];
    [_covers removeAllObjects];
}

@end

namespace ebbline::ios {

void installCover()
{
    NSNotificationCenter* centre = [NSNotificationCenter defaultCenter];
    EBCover* cover = [EBCover shared];
    [centre removeObserver:cover];
    [centre addObserver:cover selector:@selector(cover:) name:UIApplicationWillResignActiveNotification object:nil];
    [centre addObserver:cover selector:@selector(uncover:) name:UIApplicationDidBecomeActiveNotification object:nil];
}

}  // namespace ebbline::ios
