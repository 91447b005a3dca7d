#pragma once
/// \file
/// The hub's store in a PostgreSQL server (15 or newer): any number of hubs over one database.
///
/// Nothing that counts is kept in a hub. A mailbox's row is locked while an envelope is put into it,
/// so what one mailbox takes is taken one after the other, by however many hubs. Rows of one
/// clinic are out of reach for a call made in another's name: row level security, in the database.
/// Decision 0015.

#include "core/mailbox/mail_store.h"

#include <memory>

namespace ebbline::postgres {

struct Settings {
    /// A libpq address, `postgres://…` or `key=value …`; several hosts may stand in it.
    std::string address;
    std::size_t connections = 8;  ///< besides the one that listens
    /// How long a call goes on trying to reach a server that takes writes.
    std::chrono::milliseconds patience{10'000};
    /// How often what waits is told to look by itself while nothing can be heard from other hubs.
    std::chrono::milliseconds lookAgain{2'000};
    mailbox::IfMissing ifMissing = mailbox::IfMissing::make;  ///< the tables, in a database that has none
};

/// Whether a store's name is an address of this kind rather than a folder. A folder whose name has an = in it is meant by a path
/// with a slash before it.
bool isAddress(const std::string& store);

/// Connects and runs the migrations that are missing, one hub at a time.
/// \returns Reason::unreachable; Reason::unsupported for a server before 15, a database that is newer
///          than this program, or one that would lose writes at a power cut (fsync, full_page_writes or
///          synchronous_commit off); Reason::refused if the role overrides row level security (a
///          superuser); Reason::notFound, with nothing made, where no tables are and none shall be; Reason::storageFailed.
Result<std::unique_ptr<mailbox::MailStore>> openPostgresStore(const Settings& settings);

}  // namespace ebbline::postgres
