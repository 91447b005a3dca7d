#include "platform/ios/protection.h"

#import <Foundation/Foundation.h>

namespace ebbline::ios {

Done protectFolder(const std::string& folder)
{
    NSString* path = [NSString stringWithUTF8String:folder.c_str()];
    NSFileManager* files = [NSFileManager defaultManager];
    NSDictionary* sealed = @{NSFileProtectionKey : NSFileProtectionComplete};
    if (![files createDirectoryAtPath:path withIntermediateDirectories:YES attributes:sealed error:nil]
        || ![files setAttributes:sealed ofItemAtPath:path error:nil])
        return fail(Reason::storageFailed, "files: the folder could not be sealed");
    NSURL* address = [NSURL fileURLWithPath:path isDirectory:YES];
    if (![address setResourceValue:@YES forKey:NSURLIsExcludedFromBackupKey error:nil])
        return fail(Reason::storageFailed, "files: the folder could not be kept out of backups");
    return {};
}

}  // namespace ebbline::ios
