// Declarations from the public reference of the platform, only of what the bridges call; no behaviour.
#pragma once
#include <cstddef>
#include <cstdint>

#define NS_OPTIONS(type, name) type name; enum : type
#define YES __objc_yes
#define NO __objc_no
#define nil nullptr

typedef bool BOOL;
typedef long NSInteger;
typedef unsigned long NSUInteger;
typedef double NSTimeInterval;
typedef const struct __attribute__((objc_bridge(id))) __CFType* CFTypeRef;
typedef const struct __attribute__((objc_bridge(NSString))) __CFString* CFStringRef;
typedef const struct __attribute__((objc_bridge(NSDictionary))) __CFDictionary* CFDictionaryRef;

typedef struct _NSZone NSZone;
typedef struct {
    unsigned long state;
    __unsafe_unretained id* itemsPtr;
    unsigned long* mutationsPtr;
    unsigned long extra[5];
} NSFastEnumerationState;

@class NSString;

@protocol NSObject
- (BOOL)isKindOfClass:(Class)aClass;
@end
@protocol NSCopying
@end
@protocol NSFastEnumeration
- (NSUInteger)countByEnumeratingWithState:(NSFastEnumerationState*)state objects:(__unsafe_unretained id[])buffer count:(NSUInteger)count;
@end

__attribute__((objc_root_class))
@interface NSObject <NSObject>
+ (instancetype)alloc;
+ (Class)class;
- (instancetype)init;
- (id)copy;
- (id)mutableCopy;
@end

@interface NSString : NSObject <NSCopying>
@property (readonly) const char* UTF8String;
@property (readonly) NSUInteger length;
+ (instancetype)stringWithUTF8String:(const char*)text;
- (NSString*)stringByAppendingString:(NSString*)other;
- (NSString*)substringFromIndex:(NSUInteger)from;
- (BOOL)hasPrefix:(NSString*)prefix;
- (BOOL)isEqualToString:(NSString*)other;
@end

@interface NSNumber : NSObject <NSCopying>
+ (NSNumber*)numberWithBool:(BOOL)value;
@end

@interface NSData : NSObject
@property (readonly) NSUInteger length;
@property (readonly) const void* bytes;
+ (instancetype)dataWithBytes:(const void*)bytes length:(NSUInteger)length;
@end

@interface NSError : NSObject
@end

@interface NSArray<__covariant Element> : NSObject <NSFastEnumeration>
@property (readonly) NSUInteger count;
+ (instancetype)arrayWithObjects:(const Element[])objects count:(NSUInteger)count;
@end
@interface NSMutableArray<Element> : NSArray<Element>
+ (instancetype)array;
- (void)addObject:(Element)object;
- (void)removeAllObjects;
@end

@interface NSSet<__covariant Element> : NSObject <NSFastEnumeration>
+ (instancetype)setWithObject:(Element)object;
@end

@interface NSDictionary<__covariant Key, __covariant Value> : NSObject
+ (instancetype)dictionaryWithObjects:(const Value[])objects forKeys:(const Key<NSCopying>[])keys count:(NSUInteger)count;
@end
@interface NSMutableDictionary<Key, Value> : NSDictionary<Key, Value>
- (void)setObject:(Value)object forKeyedSubscript:(Key<NSCopying>)key;
@end

@interface NSURL : NSObject
+ (instancetype)URLWithString:(NSString*)text;
+ (NSURL*)fileURLWithPath:(NSString*)path isDirectory:(BOOL)isDirectory;
- (BOOL)setResourceValue:(id)value forKey:(NSString*)key error:(NSError**)error;
@end
extern NSString* const NSURLIsExcludedFromBackupKey;

@interface NSFileManager : NSObject
@property (class, readonly) NSFileManager* defaultManager;
- (BOOL)createDirectoryAtPath:(NSString*)path
    withIntermediateDirectories:(BOOL)parents
                     attributes:(NSDictionary<NSString*, id>*)attributes
                          error:(NSError**)error;
- (BOOL)setAttributes:(NSDictionary<NSString*, id>*)attributes ofItemAtPath:(NSString*)path error:(NSError**)error;
@end
extern NSString* const NSFileProtectionKey;
extern NSString* const NSFileProtectionComplete;

@interface NSDate : NSObject
@property (readonly) NSTimeInterval timeIntervalSince1970;
+ (instancetype)date;
+ (instancetype)dateWithTimeIntervalSince1970:(NSTimeInterval)seconds;
@end
@interface NSTimeZone : NSObject
+ (void)resetSystemTimeZone;
@end
@interface NSDateComponents : NSObject
@end
typedef NS_OPTIONS(NSUInteger, NSCalendarUnit) {
    NSCalendarUnitYear = 1UL << 2,
    NSCalendarUnitMonth = 1UL << 3,
    NSCalendarUnitDay = 1UL << 4,
    NSCalendarUnitHour = 1UL << 5,
    NSCalendarUnitMinute = 1UL << 6,
    NSCalendarUnitSecond = 1UL << 7,
};
extern NSString* const NSCalendarIdentifierGregorian;
@interface NSCalendar : NSObject
+ (NSCalendar*)calendarWithIdentifier:(NSString*)identifier;
- (NSDateComponents*)components:(NSCalendarUnit)units fromDate:(NSDate*)date;
@end
extern NSString* const NSSystemTimeZoneDidChangeNotification;

@interface NSNotification : NSObject
@end
@interface NSNotificationCenter : NSObject
@property (class, readonly) NSNotificationCenter* defaultCenter;
- (void)addObserver:(id)observer selector:(SEL)selector name:(NSString*)name object:(id)object;
- (void)removeObserver:(id)observer;
@end

// libdispatch
@interface OS_dispatch_semaphore : NSObject
@end
@interface OS_dispatch_queue : NSObject
@end
typedef OS_dispatch_semaphore* dispatch_semaphore_t;
typedef OS_dispatch_queue* dispatch_queue_t;
typedef std::uint64_t dispatch_time_t;
#define DISPATCH_TIME_NOW (0ull)
#define NSEC_PER_SEC 1000000000ull
extern "C" {
dispatch_semaphore_t dispatch_semaphore_create(long value);
long dispatch_semaphore_signal(dispatch_semaphore_t semaphore);
long dispatch_semaphore_wait(dispatch_semaphore_t semaphore, dispatch_time_t timeout);
dispatch_time_t dispatch_time(dispatch_time_t when, std::int64_t nanoseconds);
dispatch_queue_t dispatch_get_main_queue(void);
void dispatch_async(dispatch_queue_t queue, void (^block)(void));
}
