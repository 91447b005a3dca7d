#pragma once
/// \file
/// Waits at the hub until something lies there for this vault: a phone for its mailbox, a desk for all of them in one
/// question. What a hub says is a hint, and changes nothing; whoever hears it looks (sync::run()).

#include "core/sync/courier.h"
#include "core/vault/vault.h"

#include <memory>

namespace ebbline::sync {

struct Heard {
    Result<bool> news;                   ///< whether something new lies there; or the reason why that is not known
    std::chrono::seconds retryAfter{0};  ///< the hub asked to be left alone for so long; 0: it did not ask
};

class Listening {
public:
    /// Vault and courier outlive it. Letting go of it ends the waiting: nobody is called any more. The request itself
    /// ends with its courier.
    Listening(const vault::Vault& vault, Courier& courier);
    ~Listening();
    Listening(const Listening&) = delete;
    Listening& operator=(const Listening&) = delete;

    bool isWaiting() const;

    /// Asks once; errors as HubClient, and Reason::notFound if there is no mailbox yet. Does nothing while it waits already.
    /// \param atMost  1 s to mailbox::longestWait
    void wait(std::chrono::seconds atMost, std::function<void(Heard)> answered);

private:
    struct Inside;
    std::shared_ptr<Inside> m_inside;
};

}  // namespace ebbline::sync
