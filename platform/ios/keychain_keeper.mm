#include "platform/ios/keychain_keeper.h"

#import <Foundation/Foundation.h>
#import <Security/Security.h>

namespace ebbline::ios {

namespace {

/// Names the item. It stays on this phone, also in an encrypted backup, and is closed while the phone is
/// locked (kSecAttrAccessibleWhenUnlockedThisDeviceOnly, Apple: "Items with this attribute do not migrate to
/// a new device"). Not the class that needs a passcode: Apple deletes its items when the passcode is switched
/// off, and a patient would be locked out for a change of her phone's settings.
NSMutableDictionary* item()
{
    return [@{
        (__bridge id)kSecClass : (__bridge id)kSecClassGenericPassword,
        (__bridge id)kSecAttrService : @"invalid.ebbline.diary",
        (__bridge id)kSecAttrAccount : @"diary-secret",
        (__bridge id)kSecAttrSynchronizable : @NO,
    } mutableCopy];
}

class KeychainKeeper final : public keystore::SecretKeeper {
public:
    bool isThere() const override { return true; }

    Result<crypto::Secret> fetch() override
    {
        NSMutableDictionary* query = item();
        query[(__bridge id)kSecReturnData] = @YES;
        query[(__bridge id)kSecMatchLimit] = (__bridge id)kSecMatchLimitOne;
        CFTypeRef found = nullptr;
        const OSStatus status = SecItemCopyMatching((__bridge CFDictionaryRef)query, &found);
        if (status == errSecItemNotFound)
            return fail(Reason::notFound, "key store: no secret was made, or it is lost");
        if (status != errSecSuccess)
            return fail(Reason::storageFailed, "key store: it does not answer now");
        NSData* data = (__bridge_transfer NSData*)found;
        if (data.length != crypto::Secret::size)
            return fail(Reason::damaged, "key store: the secret has another length");
        return crypto::Secret::from({static_cast<const std::uint8_t*>(data.bytes), crypto::Secret::size});
    }

    Result<crypto::Secret> make() override
    {
        const crypto::Secret fresh = crypto::Secret::random();
        NSMutableDictionary* attributes = item();
        attributes[(__bridge id)kSecAttrAccessible] = (__bridge id)kSecAttrAccessibleWhenUnlockedThisDeviceOnly;
        attributes[(__bridge id)kSecValueData] = [NSData dataWithBytes:fresh.view().data() length:fresh.view().size()];
        const OSStatus status = SecItemAdd((__bridge CFDictionaryRef)attributes, nullptr);
        if (status == errSecDuplicateItem)
            return fail(Reason::alreadyExists, "key store: there is a secret");
        if (status != errSecSuccess)
            return fail(Reason::storageFailed, "key store: the secret could not be kept");
        Result<crypto::Secret> back = fetch();
        if (back && !crypto::equal(back->view(), fresh.view()))
            return fail(Reason::storageFailed, "key store: it gives back another secret");
        return back;
    }

    Done forget() override
    {
        const OSStatus status = SecItemDelete((__bridge CFDictionaryRef)item());
        if (status != errSecSuccess && status != errSecItemNotFound)
            return fail(Reason::storageFailed, "key store: the secret is still there");
        return {};
    }
};

}  // namespace

std::unique_ptr<keystore::SecretKeeper> makeKeeper()
{
    return std::make_unique<KeychainKeeper>();
}

}  // namespace ebbline::ios
