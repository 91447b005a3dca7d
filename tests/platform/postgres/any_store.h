#pragma once
/// \file
/// Either store behind the one interface, empty at first and reopened at will; two clinics in it.

#include "core/mailbox/embedded_store.h"
#include "platform/postgres/postgres_store.h"
#include "tests/core/vault/folder.h"
#include "tests/platform/postgres/cluster.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>

namespace ebbline::test {

enum class Kind { embedded, postgres };

class AnyStore {
public:
    explicit AnyStore(Kind kind)
    {
        if (kind == Kind::postgres && !Cluster::isAvailable())
            SKIP(Cluster::missing);
        if (kind == Kind::postgres) {
            // One server a program, one database a store.
            static Cluster cluster;
            static int number = 0;
            const std::string name = "store" + std::to_string(++number);
            (void)cluster.sql("CREATE DATABASE " + name + " OWNER hub", "postgres");
            m_address = cluster.address({}, name);
        }
        reopen();
    }

    mailbox::MailStore& operator*() const { return *m_store; }
    mailbox::MailStore* operator->() const { return m_store.get(); }
    const std::string& address() const { return m_address; }
    /// As for --store.
    std::string where() const { return m_address.empty() ? m_folder.path().string() : m_address; }

    void reopen()
    {
        m_store.reset();
        auto opened = m_address.empty() ? mailbox::openEmbeddedStore(m_folder.path()) : another();
        if (!opened)
            FAIL(opened.error().detail);
        m_store = std::move(*opened);
    }
    /// A second hub's view of the same database.
    Result<std::unique_ptr<mailbox::MailStore>> another() const
    {
        postgres::Settings settings;
        settings.address = m_address;
        return postgres::openPostgresStore(settings);
    }

private:
    Folder m_folder;
    std::string m_address;
    std::unique_ptr<mailbox::MailStore> m_store;
};

/// Devices without keys that sign: a store does not look at signatures.
inline mailbox::Device deviceOf(std::int64_t clinic, mailbox::Role role)
{
    crypto::SigningPublicKey key{crypto::randomArray<32>()};
    return {envelope::deviceIdOf(key), key, role, clinic, false};
}

struct ClinicInStore {
    std::int64_t clinic = 0;
    mailbox::Device desk, phone;
    envelope::MailboxId mailbox{crypto::randomArray<16>()};

    explicit ClinicInStore(mailbox::MailStore& store)
    {
        const auto added = store.addClinic({crypto::randomArray<32>()}, "");
        REQUIRE(added);
        clinic = *added;
        desk = deviceOf(clinic, mailbox::Role::desk);
        phone = deviceOf(clinic, mailbox::Role::phone);
        REQUIRE(store.putDevice(desk));
        join(store, phone, mailbox);
    }
    static void join(mailbox::MailStore& store, const mailbox::Device& phone, const envelope::MailboxId& mailbox)
    {
        mailbox::StoredOffer offer;
        offer.id = crypto::randomArray<8>();
        offer.clinic = phone.clinic;
        offer.locator = crypto::randomArray<4>();
        offer.expires = clock::Instant{std::chrono::hours(500'000)};
        REQUIRE(store.putOffer(offer));
        REQUIRE(store.linkOffer(offer.id, bytes::viewOf("link"), mailbox, phone));
    }
};

inline const clock::Instant noon{std::chrono::hours(500'004)};
inline const mailbox::Quota roomy{};

inline bytes::Bytes body(std::string_view text)
{
    const bytes::View view = bytes::viewOf(text);
    return {view.begin(), view.end()};
}

inline Reason reasonOf(const Done& done)
{
    return done ? Reason{} : done.error().reason;
}

}  // namespace ebbline::test
