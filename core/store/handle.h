#pragma once
/// \file
/// Inside of core/store: the connection and its statements. Included by its two .cpp files only.

#include "core/store/database.h"

#include <map>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace ebbline::store {

struct Database::Handle {
    sqlite3* connection = nullptr;
    std::filesystem::path file;
    int version = 0;
    int depth = 0;  ///< of nested transactions
    /// Compiled statements that nobody uses at the moment, by text.
    std::multimap<std::string, sqlite3_stmt*, std::less<>> idle;

    ~Handle();
    Error error(std::string_view doing) const;
};

/// x'<64 hexadecimal digits>': a raw key, so that the library stretches nothing. The caller wipes it.
std::string rawKey(const crypto::Secret& key);

/// From here on SQLite overwrites memory that it frees. To be called before its first use.
void wipeFreedMemory();

/// One value of a pragma as text; empty if it gives none.
std::string pragma(sqlite3* connection, const char* sql);

struct Statement::Handle {
    Database::Handle* database = nullptr;
    std::string sql;
    sqlite3_stmt* statement = nullptr;
    int bound = 0;
    bool misbound = false;

    ~Handle();
};

}  // namespace ebbline::store
